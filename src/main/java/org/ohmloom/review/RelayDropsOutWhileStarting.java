package org.ohmloom.review;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Consumer;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.OperatingState;
import org.ohmloom.solve.run.RelayDropOut;
import org.ohmloom.solve.run.StartUp;

/**
 * No relay that is pulled in drops out while something starts.
 * <p>Reported once for each relay, with the start that leaves its coil the least; starts of one thing alone before that of
 * a whole state at once. Most starts that make a relay drop out go through its own contacts: it then chatters and burns.
 */
final class RelayDropsOutWhileStarting implements Rule {

    private static final RuleInfo INFO = new RuleInfo("relay-drops-out-while-starting", Severity.WARNING);

    /** One start that lets a relay go. */
    private record Case(StartUp run, RelayDropOut dropOut) {}

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
            run.dropOuts().forEach(dropOut -> cases.computeIfAbsent(dropOut.relay(), id -> new ArrayList<>())
                    .add(new Case(run, dropOut)));
        }
        cases.forEach((id, each) -> report.accept(finding(evidence, id, each)));
    }

    private static Finding finding(Evidence evidence, ComponentId relay, List<Case> cases) {
        Case worst = cases.stream()
                .min(Comparator.comparing((Case each) -> each.run().kind())
                        .thenComparingDouble(each -> each.dropOut().lowestVolts()))
                .orElseThrow();
        OperatingState state = evidence.harness().states().get(worst.run().state());
        return new FindingDraft(INFO, "drops-out")
                .word("name", evidence.harness().components().get(relay).name())
                .word("relay", relay)
                .word("starter", SupplyLowWhileStarting.starts(evidence, worst.run()))
                .word("state", StateNames.quoted(state))
                .volts("volts", worst.dropOut().lowestVolts())
                .volts("limit", worst.dropOut().dropOutVolts())
                .subject(relay)
                .highlight(worst.run().starters().stream()
                        .map(starter -> starter.id())
                        .toList())
                .highlight(List.of(state.id()))
                .build();
    }
}
