package org.ohmloom.remedy;

import java.util.Comparator;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.ohmloom.graph.Branch;
import org.ohmloom.graph.BranchId;
import org.ohmloom.ground.LoopReading;
import org.ohmloom.ground.Offset;
import org.ohmloom.ground.ReturnStudy;
import org.ohmloom.ground.coupling.Coupling;
import org.ohmloom.ground.sensor.SensorBudget;
import org.ohmloom.model.ElementId;
import org.ohmloom.review.Evidence;
import org.ohmloom.review.Finding;

/** The number a finding is about, before and after: a sensor's error, an offset, a coupled voltage, a loop's current, a count. */
final class Effects {

    private Effects() {}

    /** What becomes of the number; empty for a finding without one that both sides know. */
    static Optional<Effect> of(Finding finding, Evidence before, Evidence after) {
        if (finding.rule().equals("ground-loop")) {
            return Optional.of(new Effect("stray current", loop(finding, before), loop(finding, after), "A"));
        }
        for (String subject : finding.subjects()) {
            Optional<SensorBudget> budget = budget(before.returns(), subject);
            ToDoubleFunction<ReturnStudy> error = study ->
                    budget(study, subject).map(SensorBudget::worstError).orElse(Double.NaN);
            Optional<Effect> effect = budget.isPresent()
                    ? effect(
                            "error of " + subject,
                            error,
                            before,
                            after,
                            budget.get().quantityUnit())
                    : Optional.empty();
            boolean isCount = finding.rule().contains("stud");
            effect = effect.or(() -> isCount
                            ? effect("terminals on " + subject, study -> stacked(study, subject), before, after, "")
                            : effect("offset of " + subject, study -> offset(study, subject), before, after, "V"))
                    .or(() -> effect("coupled into " + subject, study -> coupled(study, subject), before, after, "V"));
            if (effect.isPresent()) {
                return effect;
            }
        }
        return Optional.empty();
    }

    private static Optional<Effect> effect(
            String what, ToDoubleFunction<ReturnStudy> number, Evidence before, Evidence after, String unit) {
        double one = number.applyAsDouble(before.returns());
        double other = number.applyAsDouble(after.returns());
        return Double.isNaN(one) || Double.isNaN(other)
                ? Optional.empty()
                : Optional.of(new Effect(what, one, other, unit));
    }

    private static Optional<SensorBudget> budget(ReturnStudy study, String sensor) {
        return study.sensors().stream()
                .filter(each -> each.sensor().value().equals(sensor))
                .max(Comparator.comparingDouble(SensorBudget::worstError));
    }

    private static double offset(ReturnStudy study, String owner) {
        return study.offsets().stream()
                .filter(each -> each.point().owner().value().equals(owner))
                .mapToDouble(Offset::worstVolts)
                .max()
                .orElse(Double.NaN);
    }

    private static double coupled(ReturnStudy study, String victim) {
        return study.couplings().stream()
                .filter(each -> each.victim().value().equals(victim))
                .mapToDouble(Coupling::volts)
                .max()
                .orElse(study.couplings().isEmpty() ? Double.NaN : 0);
    }

    private static double stacked(ReturnStudy study, String ground) {
        return study.grounds().stream()
                .filter(each -> each.ground().value().equals(ground))
                .mapToDouble(each -> each.stacked().size())
                .max()
                .orElse(Double.NaN);
    }

    /** The largest load current in a signal member of the finding's loop, as far as it is still a member of one. */
    private static double loop(Finding finding, Evidence evidence) {
        return evidence.returns().loops().stream()
                .flatMap(loop -> loop.stray().stream())
                .filter(stray -> finding.subjects().contains(element(evidence, stray.member())))
                .mapToDouble(LoopReading.Stray::onAmps)
                .max()
                .orElse(0);
    }

    private static String element(Evidence evidence, BranchId member) {
        return evidence.drawn()
                .branch(member)
                .flatMap(Branch::element)
                .map(ElementId::value)
                .orElse(member.value());
    }
}
