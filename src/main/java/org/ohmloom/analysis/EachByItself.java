package org.ohmloom.analysis;

import java.util.SortedMap;
import java.util.TreeMap;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireId;
import org.ohmloom.size.ConductorChoice;
import org.ohmloom.size.ProvisionalSizes;
import org.ohmloom.size.SizeFreedom;
import org.ohmloom.units.Gauge;

/** The wire-by-wire answer: every wire that is too thin gets the size it needs by itself, until none needs more. */
final class EachByItself {
    private static final int MOST_ROUNDS = 4;

    private EachByItself() {}

    /** What has been entered, grown; the same instance when no size is too thin. */
    static SizesByWire of(
            Bench bench, Protection protection, SizesByWire entered, SortedMap<WireId, ConductorChoice> choices) {
        SizesByWire at = entered;
        SortedMap<WireId, ConductorChoice> wanted = choices;
        for (int round = 0; round < MOST_ROUNDS; round++) {
            SortedMap<WireId, Gauge> larger = larger(bench, at.sizes(), wanted);
            if (larger.isEmpty()) {
                return at;
            }
            ProvisionalSizes grown = at.sizes().grow(wanted).with(larger);
            at = new SizesByWire(grown, HeatedSolutions.solve(bench, grown));
            wanted = at.choices(bench, protection);
        }
        return at;
    }

    private static SortedMap<WireId, Gauge> larger(
            Bench bench, ProvisionalSizes sizes, SortedMap<WireId, ConductorChoice> wanted) {
        SortedMap<WireId, Gauge> larger = new TreeMap<>();
        wanted.forEach((id, choice) -> {
            Wire wire = bench.harness().wires().get(id);
            if (SizeFreedom.mayChange(wire) && wire.gauge().isPresent()) {
                choice.gauge()
                        .filter(gauge -> gauge.compareTo(sizes.gauge(wire)) > 0)
                        .ifPresent(gauge -> larger.put(id, gauge));
            }
        });
        return larger;
    }
}
