package org.ohmloom.review;

import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Consumer;
import org.ohmloom.ground.Offset;
import org.ohmloom.ground.ReferencePoint;
import org.ohmloom.model.Component;
import org.ohmloom.model.ControlUnit;
import org.ohmloom.model.ElementId;
import org.ohmloom.tables.CitedValue;
import org.ohmloom.tables.GroundLimit;
import org.ohmloom.units.Unit;

/**
 * No control unit sees a ground offset beyond what units are tested to stand.
 * <p>Largest magnitude of V(unit ground) - V(negative terminal) in every state, cranking too. This says that a unit survives, not
 * that it measures well: {@link UnitGroundOffset} judges that.
 */
final class UnitOffsetSurvival implements Rule {

    private static final RuleInfo INFO = new RuleInfo("unit-offset-survival", Severity.ERROR);

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
        Optional<CitedValue> limit = evidence.tables().groundLimitVolts(GroundLimit.SURVIVAL);
        Set<ElementId> onBus = BusCommonMode.reported(evidence);
        for (Component unit : evidence.harness().components().all()) {
            if (limit.isPresent() && unit.device() instanceof ControlUnit && !onBus.contains(unit.id())) {
                OffsetCauses.worst(
                                evidence,
                                new TreeSet<>(evidence.harness().states().ids()),
                                offset -> offset.point().kind() == ReferencePoint.Kind.UNIT_GROUND
                                        && offset.point().owner().equals(unit.id()))
                        .filter(offset ->
                                Limits.exceeds(offset.worstVolts(), limit.get().value()))
                        .ifPresent(offset -> report.accept(finding(evidence, unit, offset, limit.get())));
            }
        }
    }

    private static Finding finding(Evidence evidence, Component unit, Offset offset, CitedValue limit) {
        return new FindingDraft(INFO, "offset")
                .word("unit", unit.id())
                .beyond("offset", offset.worstVolts(), "limit", limit.value(), Unit.VOLT)
                .word("source", offset.point().against())
                .word("state", StateNames.quoted(evidence.harness().states().get(offset.state())))
                .word("causes", OffsetCauses.words(offset.shares(), offset.volts()))
                .subject(unit.id())
                .highlight(OffsetCauses.named(offset.shares(), offset.volts()))
                .source(limit.citation().text())
                .build();
    }
}
