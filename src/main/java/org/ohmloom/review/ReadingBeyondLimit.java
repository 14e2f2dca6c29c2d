package org.ohmloom.review;

import java.util.List;
import java.util.function.Consumer;
import org.ohmloom.bench.Judgement;
import org.ohmloom.bench.Verdict;
import org.ohmloom.model.Reading;
import org.ohmloom.units.Quantity;
import org.ohmloom.words.Text;

/**
 * What was measured on a built harness keeps the limits of its tests.
 * <p>A later reading of the same thing on the same harness takes the place of an earlier one, so a defect that was mended and measured
 * again is silent.
 */
final class ReadingBeyondLimit implements Rule {

    private static final RuleInfo INFO = new RuleInfo("reading-beyond-limit", Severity.WARNING);

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public void review(Evidence evidence, Consumer<Finding> report) {
        for (Judgement judgement : evidence.tests().record().judgements()) {
            if (judgement.verdict() == Verdict.FAILED && judgement.stands()) {
                report.accept(finding(judgement));
            }
        }
    }

    private static Finding finding(Judgement judgement) {
        Reading reading = judgement.reading();
        Text of = INFO.text("of", reading.measured().words(), reading.measured().place());
        Text what = reading.serialNumber()
                .map(serial -> INFO.text("serial-number", of, serial))
                .orElse(of);
        FindingDraft draft =
                new FindingDraft(INFO, judgement.limit().isEmpty() ? "failed" : judgement.atMost() ? "above" : "below");
        draft.word("reading", reading.id())
                .word("of", what)
                .word("because", judgement.why())
                .subject(reading.id());
        if (judgement.limit().isPresent()) {
            Quantity value = judgement.value().orElseThrow();
            Quantity limit = judgement.limit().get();
            draft.beyond("value", value.canonical(), "limit", limit.canonical(), limit.unit());
        }
        return draft.source(
                        judgement.source().isEmpty()
                                ? judgement.why()
                                : Text.joined("; ", List.of(judgement.why(), Text.of(judgement.source()))))
                .build();
    }
}
