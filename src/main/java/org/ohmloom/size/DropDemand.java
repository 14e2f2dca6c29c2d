package org.ohmloom.size;

import java.util.Optional;
import java.util.function.Predicate;
import org.ohmloom.model.Wire;
import org.ohmloom.tables.ConductorFamily;
import org.ohmloom.tables.ConductorRow;
import org.ohmloom.units.Dimension;
import org.ohmloom.units.Formats;
import org.ohmloom.words.Text;

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
        Text words = words(share.get());
        if (share.get().leftVolts() <= 0) {
            return Demand.unmet(
                    Governor.VOLTAGE_DROP,
                    SizeTexts.text("drop.nothing-left", words),
                    Demand.largest(family).citation());
        }
        Predicate<ConductorRow> fits = row -> VoltageDrop.meets(facts.ohmsPerMetre(wire, row), allowed);
        return Demand.smallest(family, fits)
                .map(row -> Demand.met(
                        Governor.VOLTAGE_DROP,
                        row,
                        SizeTexts.text(
                                "drop.has",
                                words,
                                has(facts, wire, row),
                                row.citation().text()),
                        row.citation(),
                        fits))
                .orElseGet(() -> unmet(facts, wire, words, Demand.largest(family)));
    }

    private static Demand unmet(SizingFacts facts, Wire wire, Text words, ConductorRow largest) {
        Text reason = SizeTexts.text(
                "drop.too-thin",
                words,
                has(facts, wire, largest),
                largest.citation().text());
        return Demand.unmet(Governor.VOLTAGE_DROP, reason, largest.citation());
    }

    private static Text words(DropShare share) {
        Text budget = SizeTexts.text(
                "drop.budget",
                share.load(),
                Formats.volts(share.limitVolts()),
                SizeTexts.state(share.state()),
                Formats.volts(share.otherVolts()));
        if (share.leftVolts() <= 0) {
            return budget;
        }
        return SizeTexts.text(
                "drop.leaves",
                budget,
                Formats.volts(share.leftVolts()),
                Formats.metres(share.metres()),
                Formats.amps(share.amps()),
                Formats.volts(share.voltsPerMetre()),
                perMetre(share.ohmsPerMetre()));
    }

    private static Text has(SizingFacts facts, Wire wire, ConductorRow row) {
        return SizeTexts.text(
                "drop.size-has",
                row.gauge().text(),
                perMetre(facts.ohmsPerMetre(wire, row)),
                Formats.celsius(facts.celsius(wire, row.gauge())));
    }

    private static String perMetre(double ohmsPerMetre) {
        return Formats.quantity(ohmsPerMetre, Dimension.RESISTANCE_PER_LENGTH);
    }

    private static String whyNone(SizingFacts facts, Wire wire) {
        if (wire.measuredOhms().isPresent()) {
            return "drop.measured";
        }
        if (facts.input().routes().lengthMetres(wire).isEmpty()) {
            return "drop.no-length";
        }
        return "drop.none";
    }
}
