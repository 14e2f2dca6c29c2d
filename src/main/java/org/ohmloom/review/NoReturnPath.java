package org.ohmloom.review;

import java.util.function.Consumer;
import org.ohmloom.model.ComponentId;

/**
 * Every load has a way back to a source.
 * <p>From each load's negative terminal over wires, contacts, chassis and devices, the latter taken as closed, to the
 * negative terminal of any source. Silent when the harness has no source; {@link NotChecked} says so.
 */
final class NoReturnPath implements Rule {

    private static final RuleInfo INFO = new RuleInfo("no-return-path", Severity.ERROR);

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public void review(Evidence evidence, Consumer<Finding> report) {
        for (ComponentId component : ReturnWays.of(evidence.drawn()).stranded()) {
            report.accept(new FindingDraft(INFO, "stranded")
                    .word("name", evidence.harness().components().get(component).name())
                    .word("component", component)
                    .subject(component)
                    .build());
        }
    }
}
