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

    private static final RuleInfo INFO = new RuleInfo(
            "fuse-behind-limit",
            "A fuse behind an electronic limit cannot clear a fault",
            Severity.WARNING,
            "Operating time limits of the device's type against the limit as entered",
            "The output limits or opens before the fuse does: the fuse is there for show, and a person who trusts it looks in"
                    + " the wrong place.",
            "Leave the fuse out, take a smaller one, or put it before the output.");

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
                    .forEach(device -> report.accept(new FindingDraft(
                                    INFO, "{device} cannot clear a fault: {output} before it limits to {limit}{trip}.")
                            .word("device", device)
                            .word("output", output.output())
                            .word("trip", output.limit().tripSeconds().isPresent() ? " and trips first" : "")
                            .amps("limit", output.limit().limitAmps())
                            .subject(device)
                            .highlight(List.of(output.component()))
                            .build()));
        }
    }
}
