package org.ohmloom.review;

import java.util.OptionalDouble;
import java.util.function.Consumer;
import java.util.function.ToDoubleFunction;
import org.ohmloom.model.Driver;
import org.ohmloom.model.OperatingState;
import org.ohmloom.model.StateId;
import org.ohmloom.solve.ClampPulse;
import org.ohmloom.solve.Solution;
import org.ohmloom.units.Unit;

/**
 * No active clamp swallows more than it may: energy of a pulse, and mean power.
 * <p>The energy is that of the coil and what the supply adds while the current dies, worst of all states. Silent for a clamp
 * without entered limits.
 */
final class ClampOverLimit implements Rule {

    private static final RuleInfo INFO = new RuleInfo("clamp-over-limit", Severity.ERROR);

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public void review(Evidence evidence, Consumer<Finding> report) {
        for (DrivenOutput output : DrivenOutput.of(evidence.harness())) {
            output.driver().flatMap(Driver::clamp).ifPresent(clamp -> {
                judge(evidence, output, ClampPulse::pulseJoules, clamp.pulseJoules(), "pulse", Unit.JOULE, report);
                judge(evidence, output, ClampPulse::meanWatts, clamp.meanWatts(), "power", Unit.WATT, report);
            });
        }
    }

    private static void judge(
            Evidence evidence,
            DrivenOutput output,
            ToDoubleFunction<ClampPulse> quantity,
            OptionalDouble limit,
            String sentence,
            Unit unit,
            Consumer<Finding> report) {
        double most = 0;
        OperatingState worst = null;
        for (StateId id : evidence.harness().states().ids()) {
            Solution solution = evidence.solutions().get(id);
            double seen = solution == null
                    ? 0
                    : solution.duty().clamps().values().stream()
                            .filter(pulse -> pulse.output().equals(output.branch()))
                            .mapToDouble(quantity)
                            .max()
                            .orElse(0);
            if (seen > most) {
                most = seen;
                worst = evidence.harness().states().get(id);
            }
        }
        if (worst != null && limit.isPresent() && Limits.exceeds(most, limit.getAsDouble())) {
            report.accept(new FindingDraft(INFO, sentence)
                    .word("output", output.branch().value())
                    .word("state", StateNames.quoted(worst))
                    .beyond("load", most, "limit", limit.getAsDouble(), unit)
                    .subject(output.component().id())
                    .build());
        }
    }
}
