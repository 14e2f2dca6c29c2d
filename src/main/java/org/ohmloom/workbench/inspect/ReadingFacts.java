package org.ohmloom.workbench.inspect;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.bench.BenchResults;
import org.ohmloom.bench.Judgement;
import org.ohmloom.bench.Replacement;
import org.ohmloom.bench.Task;
import org.ohmloom.bench.Verdict;
import org.ohmloom.model.Reading;
import org.ohmloom.model.ReadingId;
import org.ohmloom.words.Text;
import org.ohmloom.workbench.desk.Readout;
import org.ohmloom.workbench.inspect.Inspection.Reason;
import org.ohmloom.workbench.inspect.Inspection.Reasons;
import org.ohmloom.workbench.words.TradeWords;
import org.ohmloom.workbench.words.Words;

/** What was measured of an element on built harnesses, for the inspector: with limit, verdict, and whether it is calculated with. */
final class ReadingFacts {
    private static final Words WORDS = Words.of("inspector");

    private ReadingFacts() {}

    /** The readings about an element, or the reading itself; empty where nothing was measured. */
    static Optional<Reasons> of(Readout readout, String element) {
        Optional<Analysis> analysis = readout.analysis()
                .filter(each -> each.evidence().isSized())
                .filter(each -> !each.harness().readings().isEmpty());
        return analysis.flatMap(each -> of(each.evidence().tests(), element));
    }

    private static Optional<Reasons> of(BenchResults tests, String element) {
        List<Task> about = Task.of(tests.input(), tests.plan()).stream()
                .filter(task -> task.about().contains(element))
                .toList();
        Set<ReadingId> used = new HashSet<>();
        Replacement.of(tests.input()).forEach(each -> used.add(each.reading().id()));
        List<Reason> lines = new ArrayList<>();
        for (Judgement judgement : tests.record().judgements()) {
            Reading reading = judgement.reading();
            boolean isIt = reading.id().value().equals(element);
            if (isIt || about.stream().anyMatch(task -> task.asksFor(reading.measured()))) {
                lines.add(line(judgement, used.contains(reading.id())));
            }
        }
        return lines.isEmpty() ? Optional.empty() : Optional.of(new Reasons(WORDS.get("reading.measured"), lines));
    }

    private static Reason line(Judgement judgement, boolean used) {
        Reading reading = judgement.reading();
        String verdict = judgement
                .superseded()
                .map(later -> WORDS.get("reading.measured-again-see", later.id()))
                .orElseGet(() -> TradeWords.named(judgement.verdict()));
        String text = reading.id() + ", " + judgement.valueText() + ": " + verdict
                + (used ? WORDS.get("reading.the-calculation-uses-it") : "");
        String of = WORDS.get(
                "reading.of",
                TradeWords.capital(Words.said(reading.measured().words())),
                reading.measured().place(),
                reading.serialNumber()
                        .map(serial -> WORDS.get("reading.serial-number", serial))
                        .orElse(""));
        String limit = judgement.limit().isEmpty()
                ? Words.said(judgement.why())
                : Words.said(Text.joined(": ", List.of(judgement.limitTold(), judgement.why())));
        return new Reason(text, of + "; " + limit, judgement.source(), judgement.verdict() == Verdict.PASSED && used);
    }
}
