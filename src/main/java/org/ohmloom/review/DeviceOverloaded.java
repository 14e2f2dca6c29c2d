package org.ohmloom.review;

import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import org.ohmloom.edit.Edit;
import org.ohmloom.edit.SetDeviceRating;
import org.ohmloom.model.ComponentId;
import org.ohmloom.size.protection.Check;
import org.ohmloom.size.protection.DeviceProtection;
import org.ohmloom.units.Unit;

/**
 * A protective device carries what runs through it for good, in the air where it sits.
 * <p>Largest lasting RMS current against the rating, less the loss in hot air, times the continuous share (80 % of a blade
 * fuse's rating). Above the share is a warning, above the rating in that air an error.
 */
final class DeviceOverloaded implements Rule {

    private static final RuleInfo INFO = new RuleInfo("device-overloaded", Severity.ERROR);

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
            if (Limits.exceeds(device.loadAmps(), device.rating().continuousAmps())) {
                boolean beyondRating =
                        Limits.exceeds(device.loadAmps(), device.rating().carriesAmps());
                report.accept(new FindingDraft(INFO, "carries")
                        .word("device", device.device())
                        .word(
                                "state",
                                device.loadState()
                                        .map(id -> StateNames.quoted(
                                                evidence.harness().states().get(id)))
                                        .orElse(INFO.text("every-state")))
                        .amps("rating", device.ratingAmps())
                        .beyond(
                                "current",
                                device.loadAmps(),
                                "limit",
                                device.rating().continuousAmps(),
                                Unit.AMP)
                        .value("ambient", device.rating().ambientCelsius(), Unit.DEGREE_CELSIUS)
                        .severity(beyondRating ? Severity.ERROR : Severity.WARNING)
                        .source(device.rating().source())
                        .subject(device.device())
                        .fix(ProposedDevice.mending(evidence, device.device(), Check.Aspect.CARRIES)
                                .or(() -> larger(evidence, device.device(), device.ratingAmps())))
                        .build());
            }
        }
    }

    private static Optional<Edit> larger(Evidence evidence, ComponentId id, double ratingAmps) {
        return Optional.ofNullable(evidence.devices().get(id))
                .filter(choice -> !evidence.harness().components().get(id).existing())
                .filter(choice -> choice.ratingAmps().orElse(0) > ratingAmps)
                .map(choice -> new SetDeviceRating(id, choice.ratingAmps().getAsDouble()));
    }
}
