package org.ohmloom.review;

import java.util.function.Consumer;
import org.ohmloom.model.ElementId;
import org.ohmloom.signal.bus.wiring.BusProblem;
import org.ohmloom.signal.study.BusMending;
import org.ohmloom.signal.study.BusReading;

/** Turns what is wrong with the wiring of data buses into findings. */
final class BusFindings {

    private BusFindings() {}

    /** Reports all problems of a topic, bus by bus. */
    static void report(Evidence evidence, RuleInfo info, BusProblem.Topic topic, Consumer<Finding> report) {
        for (BusReading reading : evidence.signals().buses()) {
            BusMending mending =
                    new BusMending(evidence.harness(), evidence.tables().signals(), reading);
            for (BusProblem problem : reading.wiring().problems(topic)) {
                FindingDraft draft = new FindingDraft(info, "problem")
                        .word("words", problem.words())
                        .severity(severity(problem, info))
                        .source(problem.source())
                        .fix(mending.of(problem))
                        .subject(reading.bus().id());
                for (ElementId element : problem.elements()) {
                    draft.subject(element);
                }
                problem.value().ifPresent(value -> draft.value("value", value, problem.unit()));
                problem.limit().ifPresent(limit -> draft.value("limit", limit, problem.unit()));
                report.accept(draft.highlight(reading.wiring().wires()).build());
            }
        }
    }

    private static Severity severity(BusProblem problem, RuleInfo info) {
        return switch (problem.kind()) {
            case STUB_ON_STUB, RATE_NOT_LISTED -> Severity.WARNING;
            default -> info.severity();
        };
    }
}
