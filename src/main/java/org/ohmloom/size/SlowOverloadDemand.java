package org.ohmloom.size;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ohmloom.model.Wire;
import org.ohmloom.size.protection.BandAgainstConductor;
import org.ohmloom.size.protection.ConductorLimit;
import org.ohmloom.size.protection.FeedingDevices;
import org.ohmloom.size.protection.TimeCurrentBand;
import org.ohmloom.tables.Citation;
import org.ohmloom.tables.ConductorFamily;
import org.ohmloom.tables.ConductorRow;
import org.ohmloom.units.Formats;

/**
 * A conductor must stand an overload its protective device is slow to open, or never opens: at the largest current the device
 * may carry for ever it settles within its continuous limit, and just below each further row of the band it stands the longest
 * time of the row before (IEC 60364-4-43, clause 433.1).
 *
 * <p>Where it settles is the heat balance of its bundle with the neighbours at their largest lasting currents, as in the study
 * of protection, but without taking into account that a weak source may never bring that current: on the safe side. A thicker
 * size is taken to stand whatever a thinner one stands. Asks nothing where no opening times are published, and where no size
 * of the family does: then the device is too large, and the review says so.
 */
final class SlowOverloadDemand {

    /** One end that current comes in by. */
    private record End(Optional<TimeCurrentBand> band, double extraAmps) {
        BandAgainstConductor against(ConductorLimit limit) {
            return band.map(each -> BandAgainstConductor.of(each, limit, Double.POSITIVE_INFINITY, extraAmps))
                    .orElseGet(() -> BandAgainstConductor.steady(limit, extraAmps));
        }

        double foreverAmps() {
            return band.map(TimeCurrentBand::foreverAmps).orElse(0.0) + extraAmps;
        }
    }

    private final SizingFacts facts;
    private final Wire wire;
    private final List<ConductorRow> rows;

    private SlowOverloadDemand(SizingFacts facts, Wire wire) {
        this.facts = facts;
        this.wire = wire;
        this.rows = facts.family(wire).rows();
    }

    /** What a wire needs; the size to begin to search at is what other requirements ask for. */
    static Demand of(SizingFacts facts, Wire wire, Requirement likely) {
        return new SlowOverloadDemand(facts, wire).demand(likely);
    }

    private Demand demand(Requirement likely) {
        ConductorFamily family = facts.family(wire);
        if (facts.input().settling().isEmpty()) {
            return Demand.none(Governor.SLOW_OVERLOAD, family, "nobody says how it lies");
        }
        List<FeedingDevices> feeding = facts.feeding(wire);
        if (feeding.isEmpty()) {
            return Demand.none(Governor.SLOW_OVERLOAD, family, "relies on no protective device of its own");
        }
        List<End> ends = new ArrayList<>();
        for (FeedingDevices each : feeding) {
            Optional<TimeCurrentBand> band = OpeningDemand.band(facts, List.copyOf(each.devices()));
            if (band.isEmpty() && !each.devices().isEmpty()) {
                return Demand.none(
                        Governor.SLOW_OVERLOAD, family, "no opening times are published for what it relies on");
            }
            ends.add(new End(band, each.extraAmps()));
        }
        End largest = ends.stream()
                .reduce((one, other) -> other.foreverAmps() > one.foreverAmps() ? other : one)
                .orElseThrow();
        Citation citation = largest.band()
                .map(band -> band.firstOpening().citation())
                .orElse(rows.get(0).citation());
        int place = smallest(ends, likely);
        if (place == rows.size()) {
            return new Demand(
                    new Requirement(
                            Governor.SLOW_OVERLOAD,
                            Optional.empty(),
                            0,
                            lets(largest) + "; even the largest size does not stand that; " + citation.text(),
                            citation,
                            List.of()),
                    row -> true);
        }
        ConductorRow row = rows.get(place);
        return Demand.met(
                Governor.SLOW_OVERLOAD,
                row,
                lets(largest) + stands(row, largest) + "; " + citation.text(),
                citation,
                each -> each.copperAreaMm2() >= row.copperAreaMm2());
    }

    private static String lets(End end) {
        return end.band()
                        .map(band -> band.label() + " may carry " + Formats.amps(band.foreverAmps()) + " for ever")
                        .orElse("no battery feeds it")
                + (end.extraAmps() > 0
                        ? "; other sources add up to " + Formats.amps(end.extraAmps()) + " past it"
                        : "");
    }

    private String stands(ConductorRow row, End end) {
        Optional<ConductorLimit> limit = facts.overloadLimit(wire, row);
        if (limit.isEmpty()) {
            return "; no table says what " + row.gauge().text() + " stands";
        }
        BandAgainstConductor found = end.against(limit.get());
        return "; " + row.gauge().text() + " settles at " + Formats.celsius(found.steadyCelsius()) + " of "
                + Formats.celsius(limit.get().continuousCelsius()) + " by the heat balance of its bundle"
                + found.weakest()
                        .map(stretch -> ", and stands " + Formats.amps(stretch.amps()) + " "
                                + (stretch.damageSeconds().isPresent()
                                        ? Formats.seconds(
                                                stretch.damageSeconds().getAsDouble())
                                        : "for good")
                                + ", the device opens within " + Formats.seconds(stretch.openSeconds()))
                        .orElse("");
    }

    /** Place of the smallest size that stands it, searched both ways from a likely one; past the end when none does. */
    private int smallest(List<End> ends, Requirement likely) {
        int place = likely.smallest()
                .flatMap(facts.family(wire)::row)
                .map(rows::indexOf)
                .orElse(0);
        while (place < rows.size() && !stands(rows.get(place), ends)) {
            place++;
        }
        while (place > 0 && place <= rows.size() - 1 && stands(rows.get(place - 1), ends)) {
            place--;
        }
        return place;
    }

    private boolean stands(ConductorRow row, List<End> ends) {
        return facts.overloadLimit(wire, row)
                .map(limit -> ends.stream().allMatch(end -> end.against(limit).isProtected()))
                .orElse(true);
    }
}
