package org.ohmloom.review;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.function.Consumer;
import org.ohmloom.ground.Offset;
import org.ohmloom.ground.ReferencePoint;
import org.ohmloom.heat.ContinuousStates;
import org.ohmloom.model.GroundPointId;
import org.ohmloom.model.ReturnRules;
import org.ohmloom.model.StateId;
import org.ohmloom.tables.GroundLimit;
import org.ohmloom.units.Unit;
import org.ohmloom.words.Text;

/**
 * The ground points stay near the negative terminal of the first source.
 * <p>Largest magnitude of V(stack) - V(negative terminal), mean and ripple together, in the states that last. Ground points
 * on one chassis body share most of it, so each body has one finding: its worst ground point, and how many others are beyond
 * the limit too.
 */
final class GroundOffset implements Rule {

    private static final RuleInfo INFO = new RuleInfo("ground-offset", Severity.WARNING);

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public Set<StudyPart> needs() {
        return Set.of(StudyPart.OFFSETS);
    }

    @Override
    public void review(Evidence evidence, Consumer<Finding> report) {
        ReturnRules rules = evidence.harness().rules().returnRules();
        SortedSet<StateId> lasting = ContinuousStates.of(evidence.harness());
        Map<String, Map<ReferencePoint, Offset>> byBody = new TreeMap<>();
        for (Offset offset : evidence.returns().offsets()) {
            ReferencePoint point = offset.point();
            boolean beyond = Limits.exceeds(offset.worstVolts(), rules.groundLimitVolts());
            if (point.kind() == ReferencePoint.Kind.GROUND_POINT && beyond && lasting.contains(offset.state())) {
                byBody.computeIfAbsent(body(evidence, point), body -> new LinkedHashMap<>())
                        .merge(point, offset, (one, other) -> other.worstVolts() > one.worstVolts() ? other : one);
            }
        }
        byBody.values().forEach(points -> report.accept(finding(evidence, rules, points)));
    }

    private static String body(Evidence evidence, ReferencePoint point) {
        return evidence.harness()
                .grounds()
                .get((GroundPointId) point.owner())
                .body()
                .value();
    }

    private static Finding finding(Evidence evidence, ReturnRules rules, Map<ReferencePoint, Offset> points) {
        List<Offset> offsets = new ArrayList<>(points.values());
        offsets.sort(Comparator.comparingDouble(offset -> -offset.worstVolts()));
        Offset worst = offsets.get(0);
        Text others = offsets.size() == 1 ? Text.NONE : INFO.text("others", offsets.size() - 1);
        return new FindingDraft(INFO, "offset")
                .word("ground", worst.point().owner())
                .word("others", others)
                .word("source", worst.point().against())
                .word("state", StateNames.quoted(evidence.harness().states().get(worst.state())))
                .beyond("offset", worst.worstVolts(), "limit", rules.groundLimitVolts(), Unit.VOLT)
                .word("causes", OffsetCauses.words(worst.shares(), worst.volts()))
                .subjects(offsets.stream().map(each -> each.point().owner()).toList())
                .highlight(OffsetCauses.named(worst.shares(), worst.volts()))
                .source(OffsetCauses.source(evidence, rules.groundVolts().isPresent(), GroundLimit.OTHER))
                .build();
    }
}
