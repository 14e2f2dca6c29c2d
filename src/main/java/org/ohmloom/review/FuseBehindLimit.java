package org.ohmloom.review;

import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import org.ohmloom.size.protection.OutputProtection;

/**
 * A fuse behind an output with an electronic limit can open.
 * <p>The limit caps every fault behind the output. Where the fuse may carry that for ever, or takes longer than the output
 * takes to trip (than the time asked of a smallest fault where it never trips), the fuse cannot clear anything.
 */
final class FuseBehindLimit implements Rule {

    private static final RuleInfo INFO = new RuleInfo("fuse-behind-limit", Severity.WARNING);

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
        for (OutputProtection output : evidence.protection().outputs()) {
            output.blindDevices()
                    .forEach(device -> report.accept(new FindingDraft(INFO, "cannot-clear")
                            .word("device", device)
                            .word("output", output.output())
                            .part("trip", output.limit().tripSeconds().isPresent(), "trips-first")
                            .amps("limit", output.limit().limitAmps())
                            .subject(device)
                            .highlight(List.of(output.component()))
                            .build()));
        }
    }
}
