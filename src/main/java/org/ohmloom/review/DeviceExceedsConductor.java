package org.ohmloom.review;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.ohmloom.heat.Ampacity;
import org.ohmloom.heat.WireRating;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.ProtectiveDevice;
import org.ohmloom.size.ConductorChoice;
import org.ohmloom.size.Governor;
import org.ohmloom.size.Requirement;
import org.ohmloom.units.Gauge;

/**
 * A protective device opens before the thinnest conductor behind it overheats.
 * <p>Compares each wire with the size its nearest protective devices ask for: rating against derated ampacity, with the
 * allowance of the design basis (33 CFR 183.455: 150 % below 50 V).
 */
final class DeviceExceedsConductor implements Rule {

    private static final RuleInfo INFO = new RuleInfo(
            "device-exceeds-conductor",
            "A protective device is larger than its conductor can carry",
            Severity.ERROR,
            "Device rating rule of the design basis",
            "The conductor burns before the device opens.",
            "Take a smaller device or a larger conductor.");

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public void review(Evidence evidence, Consumer<Finding> report) {
        for (WireRating rating : evidence.ratings().values()) {
            ConductorChoice choice = evidence.conductors().get(rating.wire().id());
            if (choice == null) {
                continue;
            }
            Optional<Requirement> protection = choice.requirements().stream()
                    .filter(requirement -> requirement.governor() == Governor.PROTECTION)
                    .findFirst();
            if (protection.isPresent() && tooThin(rating, protection.get())) {
                report.accept(finding(evidence, rating, protection.get()));
            }
        }
    }

    private static boolean tooThin(WireRating rating, Requirement protection) {
        Optional<Gauge> smallest = protection.smallest();
        return smallest.isEmpty() || smallest.get().compareTo(rating.gauge()) > 0;
    }

    private static Finding finding(Evidence evidence, WireRating rating, Requirement protection) {
        List<ComponentId> devices = protection.devices();
        double largest = devices.stream()
                .map(id -> evidence.harness().components().get(id).device())
                .filter(ProtectiveDevice.class::isInstance)
                .mapToDouble(device -> ((ProtectiveDevice) device).ratingAmps())
                .max()
                .orElse(0);
        double ampacity = rating.ampacity().map(Ampacity::limitAmps).orElse(0.0);
        return new FindingDraft(
                        INFO, "{devices} ({rating}) is too large for {wire} ({gauge}), which may carry {ampacity}.")
                .word(
                        "devices",
                        String.join(
                                ", ", devices.stream().map(ComponentId::value).toList()))
                .word("wire", rating.wire().id())
                .word("gauge", rating.gauge().text())
                .amps("rating", largest)
                .amps("ampacity", ampacity)
                .source(protection.citation().text())
                .subjects(devices)
                .subject(rating.wire().id())
                .fix(LargerConductor.fix(evidence, rating))
                .build();
    }
}
