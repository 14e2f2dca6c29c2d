package org.ohmloom.remedy;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ohmloom.graph.Branch;
import org.ohmloom.graph.BranchId;
import org.ohmloom.graph.BranchKind;
import org.ohmloom.ground.Attribution;
import org.ohmloom.ground.CarryLimits;
import org.ohmloom.heat.Ampacity;
import org.ohmloom.model.ElementId;
import org.ohmloom.model.StateId;
import org.ohmloom.model.WireId;

/**
 * How many times what it may carry goes through a member when a return or a fuse opens.
 *
 * @param opened     id of what opens
 * @param member     who is overloaded then
 * @param states     the states, worst first
 * @param ampacities what wires may carry
 */
record LossTarget(String opened, ElementId member, List<StateId> states, Map<WireId, Ampacity> ampacities)
        implements Target {

    @Override
    public double limit() {
        return 1;
    }

    @Override
    public Reading in(ChangedState state) {
        Optional<Branch> branch = state.network()
                .branch(new BranchId(opened))
                .or(() -> state.network().branch(new BranchId(opened + ".joint")))
                .or(() -> state.network().branches().values().stream()
                        .filter(each -> each.kind() == BranchKind.FUSE || each.kind() == BranchKind.BREAKER)
                        .filter(each -> each.element()
                                .map(ElementId::value)
                                .filter(opened::equals)
                                .isPresent())
                        .findFirst());
        if (branch.isEmpty()) {
            return Reading.NOTHING;
        }
        Attribution attribution = state.opened(branch.get().id());
        Reading worst = Reading.NOTHING;
        for (CarryLimits.Limit limit : CarryLimits.of(state.harness(), state.network(), ampacities)) {
            if (limit.member().equals(member)) {
                Reading amps = state.network()
                        .branch(limit.branch())
                        .flatMap(attribution::ofAmps)
                        .map(parts -> Reading.of(parts, state.causes()))
                        .orElse(Reading.NOTHING);
                double ratio = amps.value() / limit.amps();
                worst = ratio > worst.value() ? new Reading(ratio, amps.causes()) : worst;
            }
        }
        return worst;
    }
}
