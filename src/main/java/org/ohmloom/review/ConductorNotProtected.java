package org.ohmloom.review;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import org.ohmloom.edit.Compound;
import org.ohmloom.edit.Edit;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.WireId;
import org.ohmloom.size.Governor;
import org.ohmloom.size.protection.BandAgainstConductor;
import org.ohmloom.size.protection.Check;
import org.ohmloom.size.protection.ConductorProtection;
import org.ohmloom.size.protection.DeviceProtection;
import org.ohmloom.units.Unit;
import org.ohmloom.words.Text;

/**
 * A conductor stands what its protective device lets through: for good, and until it opens.
 * <p>At the largest current the device may carry for ever (up to the first row of its band with a longest time) the conductor
 * must settle within its limit; above, it must not pass its short-time limit before the longest time of the row. A warning;
 * an error where it fails within a short circuit. A device too large by the basis is left to {@link DeviceExceedsConductor},
 * a conductor that carries too much as it is to {@link ConductorOverAmpacity}; where no times are published nothing is judged and {@link NotChecked} says so.
 */
final class ConductorNotProtected implements Rule {

    private static final RuleInfo INFO = new RuleInfo("conductor-not-protected", Severity.WARNING);

    /** Freezing point of copper: ITS-90 (1990), table 1. */
    private static final double COPPER_MELTS_CELSIUS = 1084.62;

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public Set<StudyPart> needs() {
        return Set.of(StudyPart.SIZES, StudyPart.PROTECTION);
    }

    @Override
    public void review(Evidence evidence, Consumer<Finding> report) {
        Map<WireId, ConductorProtection> seen = new LinkedHashMap<>();
        for (DeviceProtection device : evidence.protection().devices().values()) {
            List<ConductorProtection> failing = device.conductors().stream()
                    .filter(each -> each.isProtected().filter(safe -> !safe).isPresent())
                    .filter(each -> !tooLargeByBasis(evidence, each.wire()) && !overloaded(evidence, each.wire()))
                    .filter(each -> seen.putIfAbsent(each.wire(), each) == null)
                    .toList();
            if (!failing.isEmpty()) {
                report.accept(finding(evidence, device, failing));
            }
        }
    }

    /** Whether the conductor carries too much as it is. */
    private static boolean overloaded(Evidence evidence, WireId wire) {
        return evidence.rating(wire)
                .filter(rating -> rating.ampacity()
                        .filter(ampacity -> Limits.exceeds(rating.worstAmps(), ampacity.limitAmps()))
                        .isPresent())
                .isPresent();
    }

    private static boolean tooLargeByBasis(Evidence evidence, WireId wire) {
        return Optional.ofNullable(evidence.conductors().get(wire)).stream()
                .flatMap(choice -> choice.requirements().stream())
                .filter(requirement -> requirement.governor() == Governor.PROTECTION
                        && !requirement.devices().isEmpty())
                .anyMatch(requirement -> requirement
                        .smallest()
                        .map(smallest ->
                                smallest.compareTo(evidence.ratings().get(wire).gauge()) > 0)
                        .orElse(true));
    }

    private static Finding finding(Evidence evidence, DeviceProtection device, List<ConductorProtection> failing) {
        ConductorProtection weakest = failing.get(0);
        BandAgainstConductor against = weakest.against().orElseThrow();
        List<ComponentId> devices =
                evidence.protection().relying().getOrDefault(weakest.wire(), List.of(device.device()));
        FindingDraft draft = against.settles() ? late(weakest, against) : forEver(weakest, against);
        boolean shortCircuit = failing.stream()
                .anyMatch(each ->
                        each.against().filter(found -> !found.withstands()).isPresent());
        return draft.word("devices", Listing.of(devices, 30))
                .word("wire", weakest.wire())
                .word("size", weakest.limit().size())
                .word("more", failing.size() == 1 ? Text.NONE : INFO.text("and-more", failing.size() - 1))
                .severity(shortCircuit ? Severity.ERROR : Severity.WARNING)
                .source(device.band()
                        .map(band -> Text.of(band.firstOpening().citation().text()))
                        .orElse(INFO.source()))
                .subjects(devices)
                .subjects(failing.stream().map(ConductorProtection::wire).toList())
                .fix(fix(evidence, device, failing))
                .build();
    }

    private static FindingDraft forEver(ConductorProtection weakest, BandAgainstConductor against) {
        FindingDraft draft = new FindingDraft(INFO, "settles")
                .amps("current", against.foreverAmps())
                .value("limit", weakest.limit().continuousCelsius(), Unit.DEGREE_CELSIUS);
        return against.steadyCelsius() < COPPER_MELTS_CELSIUS
                ? draft.value("celsius", against.steadyCelsius(), Unit.DEGREE_CELSIUS)
                : draft.phrase("celsius", "no-temperature");
    }

    private static FindingDraft late(ConductorProtection weakest, BandAgainstConductor against) {
        BandAgainstConductor.Stretch stretch = against.weakest().orElseThrow();
        return new FindingDraft(INFO, "opens-late")
                .amps("current", stretch.amps())
                .value("time", stretch.openSeconds(), Unit.SECOND)
                .value("limit", stretch.damageSeconds().orElseThrow(), Unit.SECOND);
    }

    /** Larger conductors, if all can have them; otherwise another device, if one serves. */
    private static Optional<? extends Edit> fix(
            Evidence evidence, DeviceProtection device, List<ConductorProtection> failing) {
        List<Edit> larger = new ArrayList<>();
        failing.forEach(each -> evidence.rating(each.wire())
                .flatMap(rating -> LargerConductor.fix(evidence, rating, each.larger()))
                .ifPresent(larger::add));
        if (larger.size() < failing.size()) {
            return ProposedDevice.mending(evidence, device.device(), Check.Aspect.PROTECTS);
        }
        return Optional.of(
                larger.size() == 1 ? larger.get(0) : new Compound(INFO.text("set-behind", device.device()), larger));
    }
}
