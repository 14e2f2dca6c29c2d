package org.ohmloom.review;

import java.util.function.Consumer;
import org.ohmloom.bench.Judgement;
import org.ohmloom.bench.Verdict;
import org.ohmloom.units.Quantity;

/**
 * What was measured on a built harness keeps the limits of its tests.
 * <p>A later reading of the same thing on the same harness takes the place of an earlier one, so a defect that was mended and measured
 * again is silent.
 */
final class ReadingBeyondLimit implements Rule {

    private static final RuleInfo INFO = new RuleInfo(
            "reading-beyond-limit",
            "A built harness measured beyond a limit",
            Severity.WARNING,
            "limit of the test as the as-built record tells it",
            "A resistance above what the listed conductor and its contacts have is a bad crimp, a wrong wire or a broken strand;"
                    + " isolation below its limit is a net joined to another.",
            "Mend the harness and measure again, or correct the reading.");

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
        String of = judgement.reading().measured().words() + " of "
                + judgement.reading().measured().place()
                + judgement
                        .reading()
                        .serialNumber()
                        .map(serial -> " on serial number " + serial)
                        .orElse("");
        FindingDraft draft = judgement.limit().isEmpty()
                ? new FindingDraft(INFO, "{reading}: {of} failed; {because}.")
                : new FindingDraft(INFO, "{reading}: {of} is {value}, {side} {limit}.");
        draft.word("reading", judgement.reading().id())
                .word("of", of)
                .word("because", judgement.because())
                .subject(judgement.reading().id());
        if (judgement.limit().isPresent()) {
            Quantity value = judgement.value().orElseThrow();
            Quantity limit = judgement.limit().get();
            draft.word("side", judgement.atMost() ? "more than" : "less than")
                    .beyond("value", value.canonical(), "limit", limit.canonical(), limit.unit());
        }
        return draft.source(
                        judgement.source().isEmpty()
                                ? judgement.because()
                                : judgement.because() + "; " + judgement.source())
                .build();
    }
}
