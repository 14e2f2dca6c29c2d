package org.ohmloom.review;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.ohmloom.bench.Judgement;
import org.ohmloom.edit.TakeOut;
import org.ohmloom.model.Reading;
import org.ohmloom.tables.BenchLimit;
import org.ohmloom.units.Unit;

/**
 * A measured resistance is not far below what the listed conductor has.
 * <p>Listed resistances are the most a size may have, so a few per cent less is usual; much less is another way beside the wire, a
 * shorter or thicker wire, or a slip of the pen. Said of every reading that counts, and told apart where it stands in for the
 * calculated resistance.
 */
final class ReadingImplausible implements Rule {

    private static final RuleInfo INFO = new RuleInfo("reading-implausible", Severity.NOTE);

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public void review(Evidence evidence, Consumer<Finding> report) {
        for (Judgement judgement : evidence.tests().record().judgements()) {
            if (judgement.implausible().isPresent() && judgement.stands()) {
                report.accept(finding(evidence, judgement));
            }
        }
    }

    private static Finding finding(Evidence evidence, Judgement judgement) {
        Reading reading = judgement.reading();
        return new FindingDraft(INFO, "too-low")
                .word("reading", reading.id())
                .word(
                        "of",
                        INFO.text(
                                "of",
                                reading.measured().words(),
                                reading.measured().place()))
                .value("value", judgement.value().orElseThrow().canonical(), Unit.OHM)
                .value("least", judgement.implausible().orElseThrow().canonical(), Unit.OHM)
                .value(
                        "share",
                        evidence.tables()
                                .benchLimit(BenchLimit.PLAUSIBLE_FRACTION)
                                .value(),
                        Unit.FRACTION)
                .part("used", reading.replaces(), "used")
                .subject(reading.id())
                .fix(Optional.of(new TakeOut(List.of(reading.id()))))
                .build();
    }
}
