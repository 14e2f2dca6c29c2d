package org.ohmloom.size;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.ohmloom.heat.Ampacity;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.ProtectiveDevice;
import org.ohmloom.model.Wire;
import org.ohmloom.size.protection.DeviceAllowance;
import org.ohmloom.tables.Citation;
import org.ohmloom.tables.ConductorFamily;
import org.ohmloom.tables.ConductorRow;
import org.ohmloom.units.Formats;
import org.ohmloom.words.Text;

/** A conductor must be able to carry what the protective device it relies on lets through for good. */
final class ProtectionDemand {

    private ProtectionDemand() {}

    static Demand of(SizingFacts facts, DeviceAllowance allowance, Wire wire) {
        ConductorFamily family = facts.family(wire);
        List<ComponentId> devices = facts.devices(wire);
        Optional<ComponentId> largest = devices.stream().max(Comparator.comparingDouble(id -> rating(facts, id)));
        if (largest.isEmpty()) {
            return Demand.none(Governor.PROTECTION, family, "protection.none");
        }
        ComponentId id = largest.get();
        double together = facts.largestTogetherAmps(wire, each -> rating(facts, each));
        Predicate<ConductorRow> fits = row -> devices.stream()
                        .allMatch(each -> allowance.allows(
                                facts.device(each).orElseThrow(),
                                rating(facts, each),
                                row.gauge(),
                                facts.ampacityAmps(wire, row.gauge())))
                && (together <= rating(facts, id)
                        || allowance.allows(
                                facts.device(id).orElseThrow(),
                                together,
                                row.gauge(),
                                facts.ampacityAmps(wire, row.gauge())));
        Text relies = together > rating(facts, id)
                ? SizeTexts.text("protection.side-by-side", devices.size(), Formats.amps(together), allowance.text())
                : SizeTexts.text("protection.relies", id, Formats.amps(rating(facts, id)), allowance.text());
        return Demand.smallest(family, fits)
                .map(row -> met(facts, allowance, wire, row, id, relies, fits))
                .orElseGet(() -> Demand.unmet(
                        Governor.PROTECTION,
                        SizeTexts.text(
                                "protection.too-thin",
                                relies,
                                carries(facts, wire, Demand.largest(family)),
                                allowance.citation().text()),
                        allowance.citation()))
                .from(devices);
    }

    private static Demand met(
            SizingFacts facts,
            DeviceAllowance allowance,
            Wire wire,
            ConductorRow row,
            ComponentId id,
            Text relies,
            Predicate<ConductorRow> fits) {
        ProtectiveDevice device = facts.device(id).orElseThrow();
        Citation citation = facts.family(wire).rows().stream()
                .filter(each -> each.copperAreaMm2() < row.copperAreaMm2())
                .reduce((thinner, thicker) -> thicker)
                .map(next -> allowance.citation(
                        device, device.ratingAmps(), next.gauge(), facts.ampacityAmps(wire, next.gauge())))
                .orElse(allowance.citation());
        return Demand.met(
                Governor.PROTECTION,
                row,
                SizeTexts.text("protection.carries", relies, carries(facts, wire, row), citation.text()),
                citation,
                fits);
    }

    private static Text carries(SizingFacts facts, Wire wire, ConductorRow row) {
        return facts.ampacity(wire, row.gauge())
                .map(Ampacity::calculation)
                .map(calculation ->
                        SizeTexts.text("protection.may-carry", row.gauge().text(), calculation))
                .orElseGet(() -> SizeTexts.text("protection.no-row", row.gauge().text(), facts.insulation(wire)));
    }

    private static double rating(SizingFacts facts, ComponentId id) {
        return facts.device(id).map(ProtectiveDevice::ratingAmps).orElse(0.0);
    }
}
