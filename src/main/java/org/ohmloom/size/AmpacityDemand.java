package org.ohmloom.size;

import java.util.Optional;
import java.util.function.Predicate;
import org.ohmloom.heat.Ampacity;
import org.ohmloom.model.Wire;
import org.ohmloom.solve.envelope.Combination;
import org.ohmloom.tables.Citation;
import org.ohmloom.tables.ConductorFamily;
import org.ohmloom.tables.ConductorRow;
import org.ohmloom.units.Formats;
import org.ohmloom.words.Text;

/** A conductor must carry its largest lasting RMS current where it lies. */
final class AmpacityDemand {

    private AmpacityDemand() {}

    static Demand of(SizingFacts facts, Wire wire) {
        ConductorFamily family = facts.family(wire);
        WorstCurrents.Worst worst = facts.worst(wire);
        if (worst.amps() == 0) {
            return Demand.none(Governor.AMPACITY, family, "ampacity.nothing");
        }
        String amps = Formats.amps(worst.amps());
        Text carries = worst.state()
                .map(state -> Combination.isUnnamed(state)
                        ? SizeTexts.text("ampacity.carries-at-worst", amps)
                        : SizeTexts.text("ampacity.carries-in", amps, state))
                .orElseGet(() -> SizeTexts.text("ampacity.carries", amps));
        Predicate<ConductorRow> fits = row -> facts.ampacityAmps(wire, row.gauge()) >= worst.amps();
        return Demand.smallest(family, fits)
                .map(row -> met(facts, wire, carries, row, fits))
                .orElseGet(() -> unmet(facts, wire, carries, Demand.largest(family)));
    }

    private static Demand met(
            SizingFacts facts, Wire wire, Text carries, ConductorRow row, Predicate<ConductorRow> fits) {
        Ampacity ampacity = facts.ampacity(wire, row.gauge()).orElseThrow();
        Citation citation = ampacity.base().citation();
        Text reason = SizeTexts.text(
                "ampacity.may-carry", carries, row.gauge().text(), ampacity.calculation(), citation.text());
        return Demand.met(Governor.AMPACITY, row, reason, citation, fits);
    }

    private static Demand unmet(SizingFacts facts, Wire wire, Text carries, ConductorRow largest) {
        Optional<Ampacity> ampacity = facts.ampacity(wire, largest.gauge());
        Text reason = ampacity.map(each -> SizeTexts.text(
                        "ampacity.too-little",
                        carries,
                        largest.gauge().text(),
                        each.calculation(),
                        each.base().citation().text()))
                .orElseGet(() -> SizeTexts.text("ampacity.no-row", carries, facts.insulation(wire)));
        return Demand.unmet(
                Governor.AMPACITY,
                reason,
                ampacity.map(each -> each.base().citation()).orElse(largest.citation()));
    }
}
