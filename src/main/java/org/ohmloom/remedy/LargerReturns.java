package org.ohmloom.remedy;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.ohmloom.edit.PutElements;
import org.ohmloom.edit.SetWireGauge;
import org.ohmloom.graph.PointId;
import org.ohmloom.heat.WireRating;
import org.ohmloom.model.Strap;
import org.ohmloom.model.StrapId;
import org.ohmloom.model.Wire;
import org.ohmloom.review.Evidence;
import org.ohmloom.units.Gauge;

/** A larger conductor on the way from a point to its reference, and a second strap beside one. */
final class LargerReturns {

    /** Most wires of a way that are tried, those with the largest drop first. */
    private static final int MOST_WIRES = 2;

    /** Most sizes tried for one wire, each the next larger of its system. */
    private static final int MOST_SIZES = 3;

    private final Evidence evidence;
    private final ReturnPlaces places;

    LargerReturns(Evidence evidence, ReturnPlaces places) {
        this.evidence = evidence;
        this.places = places;
    }

    /** Larger wires between a point and the nearest of some. */
    List<Candidate> of(PointId point, List<PointId> references) {
        List<WireRating> way = places.way(point, references).stream()
                .filter(wire -> !wire.existing() && !wire.locked())
                .flatMap(wire -> evidence.rating(wire.id()).stream())
                .sorted(Comparator.comparingDouble(WireRating::worstDropVolts).reversed())
                .limit(MOST_WIRES)
                .toList();
        List<Candidate> found = new ArrayList<>();
        for (WireRating rating : way) {
            sizes(rating.wire(), rating.gauge())
                    .forEach(gauge -> found.add(new Candidate(
                            RemedyKind.LARGER_RETURN,
                            SetWireGauge.of(rating.wire().id(), gauge))));
        }
        return found;
    }

    private List<Gauge> sizes(Wire wire, Gauge present) {
        return evidence.tables().families().stream()
                .filter(family -> family.system() == present.system())
                .filter(family -> wire.family().map(family.id()::equals).orElse(isDefault(family.id())))
                .flatMap(family -> family.rows().stream())
                .map(row -> row.gauge())
                .filter(gauge -> gauge.compareTo(present) > 0)
                .sorted()
                .distinct()
                .limit(MOST_SIZES)
                .toList();
    }

    private boolean isDefault(String family) {
        return family.equals(evidence.basis().defaultMetricFamily())
                || family.equals(evidence.basis().defaultAwgFamily());
    }

    /** A strap of the same resistance beside each that there is. */
    List<Candidate> straps() {
        List<Candidate> found = new ArrayList<>();
        for (Strap strap : places.harness().straps().all()) {
            String id = strap.id() + "-2";
            if (places.harness().element(id).isEmpty()) {
                found.add(new Candidate(
                        RemedyKind.SECOND_RETURN,
                        PutElements.one(
                                RemedyTexts.text("second-strap", strap.id()),
                                new Strap(
                                        new StrapId(id),
                                        strap.name() + ", second",
                                        strap.from(),
                                        strap.to(),
                                        strap.ohms(),
                                        strap.part(),
                                        false,
                                        strap.assembly(),
                                        strap.lengthMetres(),
                                        strap.areaMm2()))));
            }
        }
        return found;
    }
}
