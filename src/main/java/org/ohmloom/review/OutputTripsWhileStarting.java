package org.ohmloom.review;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Consumer;
import org.ohmloom.graph.BranchId;
import org.ohmloom.model.OperatingState;
import org.ohmloom.solve.run.LimitedOutput;
import org.ohmloom.solve.run.StartUp;
import org.ohmloom.units.Unit;

/**
 * An output with an electronic limit does not switch off before what it feeds is running.
 * <p>The start is followed with the output giving no more than its limit, which makes it last longer. Reported once for each
 * output, with the start that keeps it longest at its limit. An output that holds its limit for good only makes the start
 * slower and is not reported.
 */
final class OutputTripsWhileStarting implements Rule {

    private static final RuleInfo INFO = new RuleInfo("output-trips-while-starting", Severity.ERROR);

    /** One start that switches an output off. */
    private record Case(StartUp run, LimitedOutput output) {}

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public Set<StudyPart> needs() {
        return Set.of(StudyPart.STARTS);
    }

    @Override
    public void review(Evidence evidence, Consumer<Finding> report) {
        SortedMap<BranchId, List<Case>> cases = new TreeMap<>();
        for (StartUp run : evidence.startUps().runs()) {
            run.limited().stream().filter(LimitedOutput::trips).forEach(output -> cases.computeIfAbsent(
                            output.branch(), id -> new ArrayList<>())
                    .add(new Case(run, output)));
        }
        cases.forEach((id, each) -> report.accept(finding(evidence, each)));
    }

    private static Finding finding(Evidence evidence, List<Case> cases) {
        Case worst = cases.stream()
                .min(Comparator.comparing((Case each) -> each.run().kind())
                        .thenComparingDouble(each -> -each.output().limitedSeconds()))
                .orElseThrow();
        OperatingState state = evidence.harness().states().get(worst.run().state());
        return new FindingDraft(INFO, "trips")
                .word(
                        "name",
                        evidence.harness()
                                .components()
                                .get(worst.output().component())
                                .name())
                .word("output", worst.output().branch())
                .word("starter", SupplyLowWhileStarting.starts(evidence, worst.run()))
                .word("state", StateNames.quoted(state))
                .amps("limit", worst.output().limit().limitAmps())
                .value("time", worst.output().limitedSeconds(), Unit.SECOND)
                .value("trip", worst.output().limit().tripSeconds().orElseThrow(), Unit.SECOND)
                .subject(worst.output().component())
                .highlight(worst.run().starters().stream()
                        .map(starter -> starter.id())
                        .toList())
                .highlight(List.of(state.id()))
                .build();
    }
}
