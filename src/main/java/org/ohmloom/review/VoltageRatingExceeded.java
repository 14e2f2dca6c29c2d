package org.ohmloom.review;

import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import org.ohmloom.edit.Edit;
import org.ohmloom.size.protection.Check;
import org.ohmloom.size.protection.VoltageRating;
import org.ohmloom.units.Unit;

/**
 * Every fuse, breaker, switch, relay, output and contact is made for the highest voltage of its system.
 * <p>A battery's open-circuit voltage, an alternator's set point in the cold, a supply's output, whichever of those that can
 * feed it is highest, and no less than the nominal voltage. Fuses without an entered rating have that of their type (32 V for
 * the usual vehicle fuse). Parts without any rating are not judged.
 */
final class VoltageRatingExceeded implements Rule {

    private static final RuleInfo INFO = new RuleInfo("voltage-rating-exceeded", Severity.ERROR);

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
        for (VoltageRating rating : evidence.protection().voltages()) {
            if (!rating.suits()) {
                report.accept(new FindingDraft(INFO, "reaches")
                        .word("part", rating.part())
                        .beyond("volts", rating.systemVolts(), "limit", rating.ratedVolts(), Unit.VOLT)
                        .source(rating.source())
                        .subject(rating.element())
                        .fix(fix(evidence, rating))
                        .build());
            }
        }
    }

    private static Optional<Edit> fix(Evidence evidence, VoltageRating rating) {
        return evidence.protection().devices().keySet().stream()
                .filter(device -> device.value().equals(rating.element()))
                .findFirst()
                .flatMap(device -> ProposedDevice.mending(evidence, device, Check.Aspect.VOLTAGE));
    }
}
