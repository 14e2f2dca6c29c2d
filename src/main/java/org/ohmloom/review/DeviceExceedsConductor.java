package org.ohmloom.review;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import org.ohmloom.edit.Compound;
import org.ohmloom.edit.Edit;
import org.ohmloom.edit.SetDeviceRating;
import org.ohmloom.heat.Ampacity;
import org.ohmloom.heat.WireRating;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.ProtectiveDevice;
import org.ohmloom.size.ConductorChoice;
import org.ohmloom.size.Governor;
import org.ohmloom.size.Requirement;
import org.ohmloom.size.protection.Check;
import org.ohmloom.size.protection.DeviceAllowance;
import org.ohmloom.units.Gauge;
import org.ohmloom.words.Text;

/**
 * A protective device opens before the thinnest conductor behind it overheats. One finding for a device, with its weakest
 * conductor.
 * <p>Compares each wire with the size its nearest protective devices ask for: rating against derated ampacity, with the
 * allowance of the design basis (33 CFR 183.455: 150 % below 50 V). Silent where the ampacity is not known; {@link
 * NotChecked} says so.
 */
final class DeviceExceedsConductor implements Rule {

    private static final RuleInfo INFO = new RuleInfo("device-exceeds-conductor", Severity.ERROR);

    @Override
    public RuleInfo info() {
        return INFO;
    }

    /** A wire that is too thin, with what its devices ask for. */
    private record Thin(WireRating rating, Requirement protection) {
        double ampacityAmps() {
            return rating.ampacity().map(Ampacity::limitAmps).orElseThrow();
        }
    }

    @Override
    public Set<StudyPart> needs() {
        return Set.of(StudyPart.SIZES, StudyPart.PROTECTION);
    }

    @Override
    public void review(Evidence evidence, Consumer<Finding> report) {
        Map<List<ComponentId>, List<Thin>> byDevices = new LinkedHashMap<>();
        for (WireRating rating : evidence.ratings().values()) {
            ConductorChoice choice = evidence.conductors().get(rating.wire().id());
            if (choice != null && rating.ampacity().isPresent()) {
                choice.requirements().stream()
                        .filter(requirement -> requirement.governor() == Governor.PROTECTION)
                        .filter(requirement -> !requirement.devices().isEmpty() && tooThin(rating, requirement))
                        .forEach(protection -> byDevices
                                .computeIfAbsent(protection.devices(), key -> new ArrayList<>())
                                .add(new Thin(rating, protection)));
            }
        }
        byDevices.forEach((devices, thin) -> report.accept(finding(evidence, devices, thin)));
    }

    private static boolean tooThin(WireRating rating, Requirement protection) {
        Optional<Gauge> smallest = protection.smallest();
        return smallest.isEmpty() || smallest.get().compareTo(rating.gauge()) > 0;
    }

    private static Finding finding(Evidence evidence, List<ComponentId> devices, List<Thin> thin) {
        Thin weakest = thin.stream()
                .min(Comparator.comparingDouble(Thin::ampacityAmps))
                .orElseThrow();
        double largest = devices.stream()
                .mapToDouble(id -> ratingAmps(evidence, id))
                .max()
                .orElseThrow();
        Text allowed = DeviceAllowance.of(
                        evidence.tables(),
                        evidence.basis(),
                        evidence.harness().rules().nominalVolts())
                .text();
        return new FindingDraft(INFO, "too-large")
                .word("devices", Listing.of(devices, 30))
                .word("wire", weakest.rating().wire().id())
                .word("gauge", weakest.rating().gauge().text())
                .word("more", more(thin.size() - 1))
                .word("allowed", allowed)
                .amps("rating", largest)
                .amps("ampacity", weakest.ampacityAmps())
                .source(weakest.protection().citation().text())
                .subjects(devices)
                .subjects(thin.stream().map(each -> each.rating().wire().id()).toList())
                .fix(fix(evidence, devices, thin))
                .build();
    }

    private static Text more(int wires) {
        return wires == 0 ? Text.NONE : INFO.text("more-wires", wires, String.valueOf(wires));
    }

    /** Another device where one serves; otherwise larger conductors, if all can have them. */
    private static Optional<? extends Edit> fix(Evidence evidence, List<ComponentId> devices, List<Thin> thin) {
        Optional<Edit> other = devices.size() == 1
                ? ProposedDevice.mending(evidence, devices.get(0), Check.Aspect.RATED)
                        .or(() -> smaller(evidence, devices.get(0)))
                : Optional.empty();
        if (other.isPresent()) {
            return other;
        }
        List<Edit> larger = new ArrayList<>();
        thin.forEach(each -> LargerConductor.fix(evidence, each.rating()).ifPresent(larger::add));
        if (larger.size() < thin.size()) {
            return Optional.empty();
        }
        return Optional.of(
                larger.size() == 1
                        ? larger.get(0)
                        : new Compound(INFO.text("set-behind", Listing.of(devices, 30)), larger));
    }

    private static Optional<Edit> smaller(Evidence evidence, ComponentId device) {
        return Optional.ofNullable(evidence.devices().get(device))
                .filter(choice -> !evidence.harness().components().get(device).existing())
                .filter(choice -> choice.ratingAmps().isPresent()
                        && choice.ratingAmps().getAsDouble() < ratingAmps(evidence, device))
                .map(choice -> new SetDeviceRating(device, choice.ratingAmps().getAsDouble()));
    }

    private static double ratingAmps(Evidence evidence, ComponentId device) {
        return evidence.harness().components().get(device).device() instanceof ProtectiveDevice protective
                ? protective.ratingAmps()
                : 0;
    }
}
