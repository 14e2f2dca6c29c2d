package org.ohmloom.review;

import java.util.Set;
import java.util.function.Consumer;
import org.ohmloom.size.protection.Check;
import org.ohmloom.size.protection.DeviceProtection;
import org.ohmloom.size.protection.Fault;
import org.ohmloom.units.Unit;

/**
 * The smallest short circuit opens its protective device in the time asked.
 * <p>A short circuit at the far end, solved in the real network: battery cold and discharged, no alternator, conductors at
 * their limit, every contact and the return. The longest time of the band counts. Where every conductor behind the device
 * stands what it lets through anyway it is a note, or a warning if the device may never open; silent where no times are published, {@link NotChecked} says so, and behind
 * an electronic limit, which {@link FuseBehindLimit} judges.
 */
final class FaultNotCleared implements Rule {

    private static final RuleInfo INFO = new RuleInfo("fault-not-cleared", Severity.ERROR);

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
            boolean behindLimit = evidence.protection().outputs().stream()
                    .anyMatch(output -> output.blindDevices().contains(device.device()));
            if (device.fails(Check.Aspect.CLEARS_SMALLEST) && !behindLimit) {
                device.minimumFault().ifPresent(fault -> report.accept(finding(evidence, device, fault)));
            }
        }
    }

    private static Finding finding(Evidence evidence, DeviceProtection device, Fault fault) {
        boolean stands = !device.conductors().isEmpty()
                && device.conductors().stream()
                        .allMatch(each -> each.isProtected().orElse(false));
        boolean opens = device.openSeconds().isPresent();
        FindingDraft draft = new FindingDraft(INFO, opens ? "slow" : "never")
                .word("place", fault.at())
                .word("device", device.device())
                .part("stands", stands, "stands")
                .amps("current", fault.deviceAmps())
                .amps("rating", device.ratingAmps())
                .value("limit", device.askedSeconds(), Unit.SECOND)
                .severity(!stands ? Severity.ERROR : opens ? Severity.NOTE : Severity.WARNING)
                .source(device.check(Check.Aspect.CLEARS_SMALLEST).orElseThrow().source())
                .subject(device.device())
                .fix(ProposedDevice.mending(evidence, device.device(), Check.Aspect.CLEARS_SMALLEST));
        device.openSeconds().ifPresent(seconds -> draft.value("time", seconds, Unit.SECOND));
        return draft.build();
    }
}
