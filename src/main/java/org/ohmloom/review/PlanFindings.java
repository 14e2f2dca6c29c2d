package org.ohmloom.review;

import java.util.Set;
import java.util.function.Consumer;
import org.ohmloom.signal.plan.PlanProblem;

/** Turns what is wrong with the plans of pins into findings. */
final class PlanFindings {

    private PlanFindings() {}

    /** Reports all problems of some kinds; those of the kinds named are warnings whatever the rule says. */
    static void report(
            Evidence evidence,
            RuleInfo info,
            Set<PlanProblem.Kind> kinds,
            Set<PlanProblem.Kind> warnings,
            Consumer<Finding> report) {
        for (PlanProblem problem : evidence.signals().plan()) {
            if (kinds.contains(problem.kind())) {
                FindingDraft draft = new FindingDraft(info, "problem")
                        .word("words", problem.words())
                        .severity(warnings.contains(problem.kind()) ? Severity.WARNING : info.severity())
                        .subjects(problem.components())
                        .fix(problem.mending());
                problem.amps().ifPresent(amps -> draft.amps("amps", amps));
                problem.limitAmps().ifPresent(limit -> draft.amps("limit", limit));
                report.accept(draft.build());
            }
        }
    }
}
