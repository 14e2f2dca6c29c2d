package org.ohmloom.remedy;

import java.util.List;
import java.util.Optional;
import org.ohmloom.graph.BranchId;
import org.ohmloom.ground.Attribution;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.Sensor;
import org.ohmloom.model.StateId;

/**
 * The current of loads in a member meant for signals, A.
 *
 * @param member the member
 * @param states the states, worst first
 * @param limitAmps most amperes
 */
record StrayTarget(BranchId member, List<StateId> states, double limitAmps) implements Target {

    @Override
    public double limit() {
        return limitAmps;
    }

    @Override
    public Reading in(ChangedState state) {
        Attribution attribution = state.on();
        Optional<List<Attribution.Part>> parts = state.network().branch(member).flatMap(attribution::ofAmps);
        return parts.map(all -> Reading.of(
                        all.stream().filter(part -> !isOfSensor(part, state)).toList(), state.causes()))
                .orElse(Reading.NOTHING);
    }

    private static boolean isOfSensor(Attribution.Part part, ChangedState state) {
        return state.causes().of(part.branch()).stream()
                .anyMatch(cause -> cause.element() instanceof ComponentId id
                        && state.harness()
                                .components()
                                .find(id)
                                .filter(component -> component.device() instanceof Sensor)
                                .isPresent());
    }
}
