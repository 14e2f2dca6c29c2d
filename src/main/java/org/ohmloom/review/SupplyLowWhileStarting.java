package org.ohmloom.review;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Consumer;
import org.ohmloom.model.Component;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.OperatingState;
import org.ohmloom.solve.run.StartUp;
import org.ohmloom.solve.run.SupplySag;
import org.ohmloom.units.Unit;
import org.ohmloom.words.Text;

/**
 * No control unit and no load falls below the least voltage it works at while something else starts.
 * <p>Reported once for each, with the start that takes it lowest: a start of one thing alone before one of a whole state at
 * once, which is reported only where none alone does it. An error for a control unit, which restarts and lets go of all its
 * outputs; a warning for a load, and where it takes everything starting at the same instant. What has too little before
 * the start is not judged here. A start without any operating point is reported for what starts.
 */
final class SupplyLowWhileStarting implements Rule {

    private static final RuleInfo INFO = new RuleInfo("supply-low-while-starting", Severity.ERROR);

    /** One start that takes a supply too low. */
    private record Case(StartUp run, SupplySag sag) {

        double share() {
            return sag.lowestVolts() / sag.minimumVolts().orElseThrow();
        }
    }

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
        SortedMap<ComponentId, List<Case>> cases = new TreeMap<>();
        for (StartUp run : evidence.startUps().runs()) {
            run.sags().stream().filter(SupplySag::isTooLow).forEach(sag -> cases.computeIfAbsent(
                            sag.id(), id -> new ArrayList<>())
                    .add(new Case(run, sag)));
            if (run.outcome() == StartUp.Outcome.NO_OPERATING_POINT) {
                report.accept(collapse(evidence, run));
            }
        }
        cases.forEach((id, each) -> report.accept(finding(evidence, id, each)));
    }

    private static Finding finding(Evidence evidence, ComponentId id, List<Case> cases) {
        List<Case> alone = cases.stream()
                .filter(each -> each.run().kind() == StartUp.Kind.ONE)
                .toList();
        List<Case> judged = alone.isEmpty() ? cases : alone;
        Case worst =
                judged.stream().min(Comparator.comparingDouble(Case::share)).orElseThrow();
        OperatingState state = evidence.harness().states().get(worst.run().state());
        boolean grave = worst.sag().controlUnit() && !alone.isEmpty();
        return new FindingDraft(INFO, "gets")
                .word("name", evidence.harness().components().get(id).name())
                .word("unit", id)
                .word("starter", starts(evidence, worst.run()))
                .word("state", StateNames.quoted(state))
                .volts("volts", worst.sag().lowestVolts())
                .volts("minimum", worst.sag().minimumVolts().orElseThrow())
                .value("below", worst.sag().belowSeconds(), Unit.SECOND)
                .severity(grave ? Severity.ERROR : Severity.WARNING)
                .subject(id)
                .highlight(worst.run().starters().stream()
                        .map(starter -> starter.id())
                        .toList())
                .highlight(List.of(state.id()))
                .build();
    }

    private static Finding collapse(Evidence evidence, StartUp run) {
        OperatingState state = evidence.harness().states().get(run.state());
        return new FindingDraft(INFO, "collapses")
                .word("starter", starts(evidence, run))
                .word("state", StateNames.quoted(state))
                .severity(run.kind() == StartUp.Kind.ONE ? Severity.ERROR : Severity.WARNING)
                .subjects(run.starters().stream().map(starter -> starter.id()).toList())
                .highlight(List.of(state.id()))
                .build();
    }

    /** Words for what starts: {@code Fan (F1) starts}, {@code everything starts at once}. */
    static Text starts(Evidence evidence, StartUp run) {
        return run.starter()
                .map(id -> INFO.text(
                        "starts", named(evidence.harness().components().get(id))))
                .orElseGet(() -> INFO.text("all-start"));
    }

    private static String named(Component component) {
        return component.name() + " (" + component.id() + ")";
    }
}
