package org.ohmloom.review;

import java.util.OptionalDouble;
import java.util.SortedSet;
import java.util.function.Consumer;
import org.ohmloom.heat.ContinuousStates;
import org.ohmloom.model.OperatingState;
import org.ohmloom.model.StateId;
import org.ohmloom.solve.BranchFlow;
import org.ohmloom.solve.Solution;
import org.ohmloom.units.Unit;

/**
 * No output carries more than it may.
 * <p>Its peak current, ripple and the worst coincidence included, against its electronic limit where it has one; its RMS
 * current in the worst continuous state against its continuous limit. Starts last a moment and are left to the study of
 * starts.
 */
final class OutputOverLimit implements Rule {

    private static final RuleInfo INFO = new RuleInfo("output-over-limit", Severity.ERROR);

    private static final class Worst {
        private double amps;
        private OperatingState state;

        void take(double seenAmps, OperatingState seen) {
            if (seenAmps > amps) {
                amps = seenAmps;
                state = seen;
            }
        }
    }

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public void review(Evidence evidence, Consumer<Finding> report) {
        SortedSet<StateId> lasting = ContinuousStates.of(evidence.harness());
        for (DrivenOutput output : DrivenOutput.of(evidence.harness())) {
            Worst peak = new Worst();
            Worst rms = new Worst();
            for (StateId id : lasting) {
                Solution solution = evidence.solutions().get(id);
                OperatingState state = evidence.harness().states().get(id);
                if (solution != null) {
                    solution.flow(output.branch()).ifPresent(flow -> take(flow, state, peak, rms));
                }
            }
            OptionalDouble electronic = output.driver().stream()
                    .flatMap(driver -> driver.limit().stream())
                    .mapToDouble(limit -> limit.limitAmps())
                    .findFirst();
            judge(output, peak, electronic, "peak", report);
            judge(output, rms, output.limitAmps(), "carries", report);
        }
    }

    private static void take(BranchFlow flow, OperatingState state, Worst peak, Worst rms) {
        peak.take(Math.abs(flow.onAmps()), state);
        rms.take(flow.rmsAmps(), state);
    }

    private static void judge(
            DrivenOutput output, Worst worst, OptionalDouble limitAmps, String sentence, Consumer<Finding> report) {
        if (worst.state != null && limitAmps.isPresent() && Limits.exceeds(worst.amps, limitAmps.getAsDouble())) {
            report.accept(new FindingDraft(INFO, sentence)
                    .word("output", output.branch().value())
                    .word("state", StateNames.quoted(worst.state))
                    .beyond("current", worst.amps, "limit", limitAmps.getAsDouble(), Unit.AMP)
                    .subject(output.component().id())
                    .build());
        }
    }
}
