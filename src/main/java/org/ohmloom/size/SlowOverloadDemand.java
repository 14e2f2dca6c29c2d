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
import org.ohmloom.words.Text;

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
            return Demand.none(Governor.SLOW_OVERLOAD, family, "overload.not-laid");
        }
        List<FeedingDevices> feeding = facts.feeding(wire);
        if (feeding.isEmpty()) {
            return Demand.none(Governor.SLOW_OVERLOAD, family, "protection.none");
        }
        List<End> ends = new ArrayList<>();
        for (FeedingDevices each : feeding) {
            Optional<TimeCurrentBand> band = OpeningDemand.band(facts, List.copyOf(each.devices()));
            if (band.isEmpty() && !each.devices().isEmpty()) {
                return Demand.none(Governor.SLOW_OVERLOAD, family, "overload.no-times");
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
                            SizeTexts.text("overload.does-not", lets(largest), citation.text()),
                            citation,
                            List.of()),
                    row -> true);
        }
        ConductorRow row = rows.get(place);
        return Demand.met(
                Governor.SLOW_OVERLOAD,
                row,
                SizeTexts.text("overload.stands", lets(largest), stands(row, largest), citation.text()),
                citation,
                each -> each.copperAreaMm2() >= row.copperAreaMm2());
    }

    private static Text lets(End end) {
        Text lets = end.band()
                .map(band -> SizeTexts.text("overload.for-ever", band.label(), Formats.amps(band.foreverAmps())))
                .orElseGet(() -> SizeTexts.text("overload.no-battery"));
        return end.extraAmps() > 0 ? SizeTexts.text("overload.past-it", lets, Formats.amps(end.extraAmps())) : lets;
    }

    private Text stands(ConductorRow row, End end) {
        Optional<ConductorLimit> limit = facts.overloadLimit(wire, row);
        if (limit.isEmpty()) {
            return SizeTexts.text("overload.no-table", row.gauge().text());
        }
        BandAgainstConductor found = end.against(limit.get());
        Text settles = SizeTexts.text(
                "overload.settles",
                row.gauge().text(),
                Formats.celsius(found.steadyCelsius()),
                Formats.celsius(limit.get().continuousCelsius()));
        return found.weakest()
                .map(stretch -> SizeTexts.text(
                        "overload.opens-within",
                        settles,
                        Formats.amps(stretch.amps()),
                        stretch.damageSeconds().isPresent()
                                ? Text.of(
                                        Formats.seconds(stretch.damageSeconds().getAsDouble()))
                                : SizeTexts.text("overload.for-good"),
                        Formats.seconds(stretch.openSeconds())))
                .orElse(settles);
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
