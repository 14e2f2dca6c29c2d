package org.ohmloom.size;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.Wire;
import org.ohmloom.size.protection.BandAgainstConductor;
import org.ohmloom.size.protection.ConductorLimit;
import org.ohmloom.size.protection.TimeCurrentBand;
import org.ohmloom.tables.Citation;
import org.ohmloom.tables.ConductorFamily;
import org.ohmloom.tables.ConductorRow;
import org.ohmloom.units.Formats;
import org.ohmloom.words.Text;

/**
 * A conductor must withstand what its protective devices let through in a short circuit until they open (IEC 60364-4-43,
 * clause 434.5.2, up to 5 s), or what an electronic limit feeds a lasting fault with. Asks nothing where no opening times are
 * published. Slow overload is {@link SlowOverloadDemand}'s.
 */
final class OpeningDemand {

    private OpeningDemand() {}

    static Demand of(SizingFacts facts, Wire wire) {
        ConductorFamily family = facts.family(wire);
        OptionalDouble limited = facts.input().upstream().limitedAmps(wire.id());
        if (limited.isPresent()) {
            return limited(facts, wire, family, limited.getAsDouble());
        }
        List<List<ComponentId>> groups = facts.deviceGroups(wire);
        List<TimeCurrentBand> bands =
                groups.stream().flatMap(group -> band(facts, group).stream()).toList();
        if (bands.isEmpty()) {
            return Demand.none(Governor.OPENING_TIME, family, "opening.no-times");
        }
        TimeCurrentBand largest = bands.stream()
                .reduce((one, other) -> other.foreverAmps() > one.foreverAmps() ? other : one)
                .orElseThrow();
        Citation citation = largest.firstOpening().citation();
        Predicate<ConductorRow> fits = row -> limit(facts, wire, row)
                .map(limit -> bands.stream()
                        .allMatch(band -> BandAgainstConductor.of(band, limit, Double.POSITIVE_INFINITY, 0)
                                .withstands()))
                .orElse(true);
        Text carries = SizeTexts.text("opening.lets", largest.label());
        return Demand.smallest(family, fits)
                .map(row -> Demand.met(
                        Governor.OPENING_TIME,
                        row,
                        SizeTexts.text(
                                "opening.withstands", carries, row.gauge().text(), citation.text()),
                        citation,
                        fits))
                .orElseGet(() -> Demand.unmet(
                        Governor.OPENING_TIME, SizeTexts.text("opening.does-not", carries, citation.text()), citation));
    }

    /** Behind an output that limits: a conductor that may carry what heats it in a lasting fault. */
    private static Demand limited(SizingFacts facts, Wire wire, ConductorFamily family, double heatingAmps) {
        Predicate<ConductorRow> fits = row ->
                facts.ampacity(wire, row.gauge()).isEmpty() || facts.ampacityAmps(wire, row.gauge()) >= heatingAmps;
        Text heats = SizeTexts.text("opening.output", Formats.amps(heatingAmps));
        return Demand.smallest(family, fits)
                .map(row -> Demand.met(Governor.OPENING_TIME, row, heats, row.citation(), fits))
                .orElseGet(() -> Demand.unmet(
                        Governor.OPENING_TIME,
                        SizeTexts.text("opening.output-too-much", heats),
                        Demand.largest(family).citation()));
    }

    /** The band of devices whose currents add; empty when one of them has no published times. */
    static Optional<TimeCurrentBand> band(SizingFacts facts, List<ComponentId> group) {
        List<TimeCurrentBand> bands = group.stream()
                .flatMap(id -> facts.device(id).stream())
                .flatMap(device -> TimeCurrentBand.of(facts.input().tables(), device).stream())
                .toList();
        return bands.isEmpty() || bands.size() < group.size()
                ? Optional.empty()
                : Optional.of(TimeCurrentBand.together(bands));
    }

    /** What a wire with a size stands. */
    static Optional<ConductorLimit> limit(SizingFacts facts, Wire wire, ConductorRow row) {
        return facts.ampacity(wire, row.gauge())
                .flatMap(ampacity -> ConductorLimit.of(
                        facts.input().tables(),
                        wire.id(),
                        facts.insulation(wire),
                        row,
                        ampacity,
                        facts.celsius(wire, row.gauge())));
    }
}
