package org.ohmloom.review;

import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import org.ohmloom.edit.Edit;
import org.ohmloom.edit.SetDeviceRating;
import org.ohmloom.model.ComponentId;
import org.ohmloom.size.protection.Check;
import org.ohmloom.size.protection.DeviceProtection;
import org.ohmloom.size.protection.StartPulse;
import org.ohmloom.units.Unit;

/**
 * A protective device rides through the starts of its loads, as often as they happen.
 * <p>Start current from the real network, decaying as entered, against the shortest times of the band; short starts by I2t
 * against what melts the device, with the shares published for repeated pulses. Silent where no times are published or the
 * length of the start is not entered; {@link NotChecked} says so.
 */
final class StartOpensDevice implements Rule {

    private static final RuleInfo INFO = new RuleInfo("start-opens-device", Severity.WARNING);

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
        for (DeviceProtection device : evidence.protection().devices().values()) {
            device.starts().stream()
                    .filter(start -> !start.ridesThrough())
                    .forEach(start -> report.accept(finding(evidence, device, start)));
        }
    }

    private static Finding finding(Evidence evidence, DeviceProtection device, StartPulse start) {
        String sentence = start.mayOpen() ? "opens" : "ages";
        return new FindingDraft(INFO, sentence)
                .word("device", device.device())
                .word("load", start.load())
                .word("count", start.startsCount() > 0 ? start.startsCount() : INFO.text("few"))
                .amps("rating", device.ratingAmps())
                .amps("peak", start.peakAmps())
                .amps("running", start.runningAmps())
                .value("time", start.decaySeconds(), Unit.SECOND)
                .source(start.source())
                .subject(device.device())
                .subject(start.load())
                .fix(ProposedDevice.mending(evidence, device.device(), Check.Aspect.RIDES_THROUGH)
                        .or(() -> larger(evidence, device)))
                .build();
    }

    private static Optional<Edit> larger(Evidence evidence, DeviceProtection device) {
        ComponentId id = device.device();
        return Optional.ofNullable(evidence.devices().get(id))
                .filter(choice -> !evidence.harness().components().get(id).existing())
                .filter(choice -> choice.ratingAmps().orElse(0) > device.ratingAmps())
                .map(choice -> new SetDeviceRating(id, choice.ratingAmps().getAsDouble()));
    }
}
