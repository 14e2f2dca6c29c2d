package org.ohmloom.size;

import java.util.Optional;
import java.util.function.Predicate;
import org.ohmloom.model.Harness;
import org.ohmloom.tables.Citation;
import org.ohmloom.tables.ConductorFamily;
import org.ohmloom.tables.ConductorRow;
import org.ohmloom.tables.DesignBasis;
import org.ohmloom.tables.Status;
import org.ohmloom.tables.WireTables;
import org.ohmloom.units.Gauge;
import org.ohmloom.words.Text;

/** A conductor must survive handling: the design rules' own minimum, otherwise that of the design basis. */
final class MechanicalDemand {

    private static final double SAME = 1e-9;

    private static final Citation OWN_RULE =
            new Citation("none", "none", "design rules of this harness", "mechanical minimum", Status.COMMON_PRACTICE);

    private MechanicalDemand() {}

    static Demand of(Harness harness, WireTables tables, DesignBasis basis, ConductorFamily family) {
        Optional<Gauge> own = harness.rules().minimumGauge();
        if (own.isPresent()) {
            return of(
                    family,
                    own.get(),
                    SizeTexts.text("mechanical.rules", own.get().text()),
                    OWN_RULE);
        }
        return tables.mechanicalMinimum(basis.id())
                .map(minimum -> of(
                        family,
                        minimum.gauge(family.system()),
                        SizeTexts.text(
                                "mechanical.basis",
                                basis.title(),
                                minimum.gauge(family.system()).text(),
                                minimum.citation().text()),
                        minimum.citation()))
                .orElseGet(() -> Demand.none(Governor.MECHANICAL, family, "mechanical.none"));
    }

    private static Demand of(ConductorFamily family, Gauge minimum, Text reason, Citation citation) {
        double leastMm2 = minimum.nominalAreaMm2() * (1 - SAME);
        Predicate<ConductorRow> fits = row -> row.gauge().nominalAreaMm2() >= leastMm2;
        return Demand.smallest(family, fits)
                .map(row -> Demand.met(Governor.MECHANICAL, row, reason, citation, fits))
                .orElseGet(() ->
                        Demand.unmet(Governor.MECHANICAL, SizeTexts.text("mechanical.not-reached", reason), citation));
    }
}
