package org.ohmloom.size;

import java.util.Optional;
import java.util.function.Predicate;
import org.ohmloom.heat.Ampacity;
import org.ohmloom.model.StateId;
import org.ohmloom.model.Wire;
import org.ohmloom.solve.envelope.Combination;
import org.ohmloom.tables.Citation;
import org.ohmloom.tables.ConductorFamily;
import org.ohmloom.tables.ConductorRow;
import org.ohmloom.units.Formats;

/** A conductor must carry its largest lasting RMS current where it lies. */
final class AmpacityDemand {

    private AmpacityDemand() {}

    static Demand of(SizingFacts facts, Wire wire) {
        ConductorFamily family = facts.family(wire);
        WorstCurrents.Worst worst = facts.worst(wire);
        if (worst.amps() == 0) {
            return Demand.none(Governor.AMPACITY, family, "carries nothing in any operating state that lasts");
        }
        String carries = "carries " + Formats.amps(worst.amps()) + " RMS"
                + worst.state().map(AmpacityDemand::in).orElse("");
        Predicate<ConductorRow> fits = row -> facts.ampacityAmps(wire, row.gauge()) >= worst.amps();
        return Demand.smallest(family, fits)
                .map(row -> met(facts, wire, carries, row, fits))
                .orElseGet(() -> unmet(facts, wire, carries, Demand.largest(family)));
    }

    private static String in(StateId state) {
        return Combination.isUnnamed(state) ? " in the worst combination of loads" : " in state " + state;
    }

    private static Demand met(
            SizingFacts facts, Wire wire, String carries, ConductorRow row, Predicate<ConductorRow> fits) {
        Ampacity ampacity = facts.ampacity(wire, row.gauge()).orElseThrow();
        Citation citation = ampacity.base().citation();
        String reason = carries + "; " + row.gauge().text() + " may carry " + ampacity.words() + "; " + citation.text();
        return Demand.met(Governor.AMPACITY, row, reason, citation, fits);
    }

    private static Demand unmet(SizingFacts facts, Wire wire, String carries, ConductorRow largest) {
        Optional<Ampacity> ampacity = facts.ampacity(wire, largest.gauge());
        String reason = ampacity.map(each ->
                        carries + "; even " + largest.gauge().text() + ", the largest size, may only" + " carry "
                                + each.words() + "; " + each.base().citation().text())
                .orElse(carries + "; the ampacity table has no current for insulation " + facts.insulation(wire));
        return Demand.unmet(
                Governor.AMPACITY,
                reason,
                ampacity.map(each -> each.base().citation()).orElse(largest.citation()));
    }
}
