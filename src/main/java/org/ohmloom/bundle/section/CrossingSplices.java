package org.ohmloom.bundle.section;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.ohmloom.bundle.Diameters;
import org.ohmloom.model.BundleSegment;
import org.ohmloom.model.Place;
import org.ohmloom.model.Splice;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireEnd;
import org.ohmloom.tables.FabricationTables;

/** The splices along segments: how thick they are, and how many lie side by side where they are closer than the stagger. */
final class CrossingSplices {
    private final BundleInput input;
    private final Diameters diameters;
    private final FabricationTables tables;

    CrossingSplices(BundleInput input, Diameters diameters) {
        this.input = input;
        this.diameters = diameters;
        this.tables = input.tables().fabrication();
    }

    private record Along(double metres, double outsideMm) {}

    /** Diameters of the splices at the most crowded place of a segment, mm; none where no splice lies along it. */
    List<Double> mostCrowded(BundleSegment segment) {
        double stagger = input.harness()
                .rules()
                .fabricationRules()
                .spliceStaggerMetres()
                .orElse(tables.value("splice-stagger").value());
        List<Along> along = new ArrayList<>();
        for (Splice splice : input.harness().splices().all()) {
            if (splice.place().orElse(null) instanceof Place.OnSegment on
                    && on.segment().equals(segment.id())) {
                thickness(splice).ifPresent(outside -> along.add(new Along(on.distanceMetres(), outside)));
            }
        }
        along.sort(Comparator.comparingDouble(Along::metres));
        List<Double> worst = List.of();
        for (int k = 0; k < along.size(); k++) {
            List<Double> here = new ArrayList<>();
            for (int j = k;
                    j < along.size() && along.get(j).metres() - along.get(k).metres() < stagger;
                    j++) {
                here.add(along.get(j).outsideMm());
            }
            if (sum(here) > sum(worst)) {
                worst = here;
            }
        }
        return worst;
    }

    private static double sum(List<Double> values) {
        return values.stream().mapToDouble(Double::doubleValue).sum();
    }

    private Optional<Double> thickness(Splice splice) {
        WireEnd end = new WireEnd.AtSplice(splice.id());
        return input.harness().wires().all().stream()
                .filter((Wire wire) -> wire.ends().contains(end))
                .flatMap(wire -> diameters.of(wire).stream())
                .map(Diameters.Known::millimetres)
                .max(Comparator.naturalOrder())
                .map(thickest -> thickest * tables.value("splice-ratio").value());
    }
}
