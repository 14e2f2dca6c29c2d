package org.ohmloom.review;

import java.util.LinkedHashSet;
import java.util.Set;
import java.util.function.Consumer;
import org.ohmloom.ground.Offset;
import org.ohmloom.ground.ReferencePoint;
import org.ohmloom.heat.ContinuousStates;
import org.ohmloom.model.ReturnRules;
import org.ohmloom.tables.GroundLimit;
import org.ohmloom.units.Unit;

/**
 * The ground of a control unit stays near the negative terminal of the first source.
 * <p>Largest magnitude of V(unit ground) - V(negative terminal), mean and ripple together, in the states that last: a workshop
 * limit is measured with the equipment running, not while the engine is cranked.
 */
final class UnitGroundOffset implements Rule {

    private static final RuleInfo INFO = new RuleInfo("unit-ground-offset", Severity.WARNING);

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
        Set<ReferencePoint> points = new LinkedHashSet<>();
        evidence.returns().offsets().stream()
                .map(Offset::point)
                .filter(point -> point.kind() == ReferencePoint.Kind.UNIT_GROUND)
                .forEach(points::add);
        for (ReferencePoint point : points) {
            OffsetCauses.worst(evidence, ContinuousStates.of(evidence.harness()), offset -> offset.point()
                            .equals(point))
                    .filter(offset -> Limits.exceeds(offset.worstVolts(), rules.unitGroundLimitVolts()))
                    .ifPresent(offset -> report.accept(new FindingDraft(INFO, "offset")
                            .word("unit", point.owner())
                            .beyond("offset", offset.worstVolts(), "limit", rules.unitGroundLimitVolts(), Unit.VOLT)
                            .word("source", point.against())
                            .word(
                                    "state",
                                    StateNames.quoted(
                                            evidence.harness().states().get(offset.state())))
                            .word("causes", OffsetCauses.words(offset.shares(), offset.volts()))
                            .subject(point.owner())
                            .highlight(OffsetCauses.named(offset.shares(), offset.volts()))
                            .source(OffsetCauses.source(
                                    evidence, rules.unitGroundVolts().isPresent(), GroundLimit.UNIT))
                            .build()));
        }
    }
}
