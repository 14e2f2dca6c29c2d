package org.ohmloom.review;

import java.util.Set;
import java.util.function.Consumer;
import org.ohmloom.size.protection.Check;
import org.ohmloom.size.protection.DeviceProtection;
import org.ohmloom.units.Unit;

/**
 * A protective device can interrupt the largest short circuit it may meet.
 * <p>A short circuit right behind the device, solved in the real network: battery full and warm, every other source running,
 * conductors at 20 C; against the breaking capacity at the device's voltage rating, entered or of its type. Silent where
 * nobody says what it can interrupt; {@link NotChecked} says so.
 */
final class BreakingCapacityExceeded implements Rule {

    private static final RuleInfo INFO = new RuleInfo("breaking-capacity-exceeded", Severity.ERROR);

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public Set<StudyPart> needs() {
        return Set.of(StudyPart.PROTECTION);
    }

    @Override
    public void review(Evidence evidence, Consumer<Finding> report) {
        for (DeviceProtection device : evidence.protection().devices().values()) {
            if (device.fails(Check.Aspect.BREAKS_LARGEST)) {
                report.accept(new FindingDraft(INFO, "reaches")
                        .word("device", device.device())
                        .amps("rating", device.ratingAmps())
                        .beyond(
                                "current",
                                device.maximumFault().orElseThrow().deviceAmps(),
                                "limit",
                                device.breakingAmps().getAsDouble(),
                                Unit.AMP)
                        .source(device.check(Check.Aspect.BREAKS_LARGEST)
                                .orElseThrow()
                                .source())
                        .subject(device.device())
                        .fix(ProposedDevice.mending(evidence, device.device(), Check.Aspect.BREAKS_LARGEST))
                        .build());
            }
        }
    }
}
