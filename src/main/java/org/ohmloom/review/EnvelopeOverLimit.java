package org.ohmloom.review;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.Consumer;
import org.ohmloom.model.ComponentId;
import org.ohmloom.solve.LoadVolts;
import org.ohmloom.solve.envelope.Combination;
import org.ohmloom.units.Unit;
import org.ohmloom.words.Text;

/**
 * No allowed combination of loads brings a wire, contact or device beyond what it may carry.
 * <p>Judges the envelope where a harness has load groups: only then has its builder said what may run together; without
 * any, every load at once would be allowed. Reports what the named states do not show; what they show has rules of its
 * own. One finding for each thing that is at fault.
 */
final class EnvelopeOverLimit implements Rule {

    private static final RuleInfo INFO = new RuleInfo("envelope-over-limit", Severity.WARNING);

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public Set<StudyPart> needs() {
        return Set.of(StudyPart.ENVELOPE);
    }

    @Override
    public void review(Evidence evidence, Consumer<Finding> report) {
        if (!evidence.envelope().hasGroups()) {
            return;
        }
        Map<Text, List<EnvelopeComparison.Current>> byThing = new LinkedHashMap<>();
        for (EnvelopeComparison.Current current : EnvelopeComparison.currents(evidence)) {
            if (current.isOverLimitUnnamed()) {
                byThing.computeIfAbsent(current.limit().orElseThrow().words(), words -> new ArrayList<>())
                        .add(current);
            }
        }
        byThing.values().forEach(currents -> report.accept(finding(currents.get(0))));
    }

    /** The loads of the combination whose current passes there; all of them where no way leads over it. */
    private static SortedSet<ComponentId> concerned(EnvelopeComparison.Current current) {
        SortedSet<ComponentId> concerned = new TreeSet<>();
        for (LoadVolts load : current.combination().solution().loads().values()) {
            boolean passes = load.feedPath().contains(current.branch().id())
                    || load.returnPath().contains(current.branch().id());
            if (passes && current.combination().loads().contains(load.load())) {
                concerned.add(load.load());
            }
        }
        return concerned.isEmpty() ? current.combination().loads() : concerned;
    }

    private static Finding finding(EnvelopeComparison.Current current) {
        Combination combination = current.combination();
        BranchLimit limit = current.limit().orElseThrow();
        return new FindingDraft(INFO, "carries")
                .word("thing", limit.words())
                .word("loads", Listing.of(concerned(current), 40))
                .word("situation", current.situation().named())
                .amps("named", current.namedAmps())
                .beyond("current", current.worst().rmsAmps(), "limit", limit.amps(), Unit.AMP)
                .source(limit.source())
                .subjects(limit.subjects())
                .highlight(combination.loads())
                .build();
    }
}
