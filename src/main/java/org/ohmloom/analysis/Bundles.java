package org.ohmloom.analysis;

import java.util.Optional;
import java.util.SortedMap;
import java.util.concurrent.atomic.AtomicBoolean;
import org.ohmloom.bundle.ConductorRows;
import org.ohmloom.bundle.section.BundleInput;
import org.ohmloom.bundle.section.BundleStudy;
import org.ohmloom.bundle.section.Sections;
import org.ohmloom.bundle.splice.SplicePlacing;
import org.ohmloom.heat.WireHeat;
import org.ohmloom.heat.WireRating;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireId;
import org.ohmloom.size.ProvisionalSizes;

/** The cross-sections of the segments with the sizes of an analysis and the warmth of its wires. */
final class Bundles {

    private Bundles() {}

    static BundleStudy study(Bench bench, ProvisionalSizes sizes, SortedMap<WireId, WireRating> ratings) {
        AtomicBoolean done = new AtomicBoolean();
        ConductorRows rows = wire -> {
            if (!done.get()) {
                bench.cancel().check();
            }
            return Optional.of(bench.resistance().row(wire, sizes.gauge(wire)));
        };
        BundleStudy study = Sections.of(new BundleInput(
                        bench.harness(),
                        bench.tables(),
                        bench.basis().id(),
                        rows,
                        bench.routes(),
                        wire -> riseKelvins(ratings, wire)))
                .withSplices(SplicePlacing.of(bench.harness(), bench.tables(), rows));
        // What is looked up in the study later is nobody's to stop.
        done.set(true);
        return study;
    }

    /** How much warmer than the air a wire's conductor gets where it is hottest: nothing inside its covering gets hotter. */
    private static double riseKelvins(SortedMap<WireId, WireRating> ratings, Wire wire) {
        WireRating rating = ratings.get(wire.id());
        if (rating == null) {
            return 0;
        }
        WireHeat heat = rating.temperature().heat();
        return Math.max(0, heat.celsius() - heat.ambientCelsius());
    }
}
