package org.ohmloom.size;

import java.util.Optional;
import java.util.function.Predicate;
import org.ohmloom.model.Wire;
import org.ohmloom.tables.ConductorFamily;
import org.ohmloom.tables.ConductorRow;
import org.ohmloom.units.Dimension;
import org.ohmloom.units.Formats;

/** A conductor must leave the loads on whose way it lies the voltage they need. */
final class DropDemand {

    private DropDemand() {}

    static Demand of(SizingFacts facts, DropShares shares, Wire wire) {
        ConductorFamily family = facts.family(wire);
        Optional<DropShare> share = shares.of(wire);
        if (share.isEmpty()) {
            return Demand.none(Governor.VOLTAGE_DROP, family, whyNone(facts, wire));
        }
        double allowed = share.get().ohmsPerMetre();
        String words = words(share.get());
        if (share.get().leftVolts() <= 0) {
            return Demand.unmet(
                    Governor.VOLTAGE_DROP,
                    words + ", so nothing is left for any size",
                    Demand.largest(family).citation());
        }
        Predicate<ConductorRow> fits = row -> VoltageDrop.meets(facts.ohmsPerMetre(wire, row), allowed);
        return Demand.smallest(family, fits)
                .map(row -> Demand.met(
                        Governor.VOLTAGE_DROP,
                        row,
                        words + has(facts, wire, row) + "; " + row.citation().text(),
                        row.citation(),
                        fits))
                .orElseGet(() -> unmet(facts, wire, words, Demand.largest(family)));
    }

    private static Demand unmet(SizingFacts facts, Wire wire, String words, ConductorRow largest) {
        String reason = words + "; even the largest size is too thin" + has(facts, wire, largest) + "; "
                + largest.citation().text();
        return Demand.unmet(Governor.VOLTAGE_DROP, reason, largest.citation());
    }

    private static String words(DropShare share) {
        String budget = share.load() + " may lose " + Formats.volts(share.limitVolts()) + " (state " + share.state()
                + "); contacts, devices and other wires lose " + Formats.volts(share.otherVolts());
        if (share.leftVolts() <= 0) {
            return budget;
        }
        return budget + ", which leaves " + Formats.volts(share.leftVolts()) + " for " + Formats.metres(share.metres())
                + " of wire; at " + Formats.amps(share.amps()) + " this wire may lose "
                + Formats.volts(share.voltsPerMetre()) + " per metre, so have "
                + perMetre(share.ohmsPerMetre());
    }

    private static String has(SizingFacts facts, Wire wire, ConductorRow row) {
        return "; " + row.gauge().text() + " has " + perMetre(facts.ohmsPerMetre(wire, row)) + " at "
                + Formats.celsius(facts.celsius(wire, row.gauge()));
    }

    private static String perMetre(double ohmsPerMetre) {
        return Formats.quantity(ohmsPerMetre, Dimension.RESISTANCE_PER_LENGTH);
    }

    private static String whyNone(SizingFacts facts, Wire wire) {
        if (wire.measuredOhms().isPresent()) {
            return "its resistance is measured, so its drop is taken as it is";
        }
        if (facts.input().routes().lengthMetres(wire).isEmpty()) {
            return "its length is not known, so its drop was not checked";
        }
        return "no load's drop hangs on it";
    }
}
