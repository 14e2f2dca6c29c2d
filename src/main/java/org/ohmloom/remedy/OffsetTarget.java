package org.ohmloom.remedy;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.ohmloom.ground.Attribution;
import org.ohmloom.ground.ReferencePoint;
import org.ohmloom.ground.ReferencePoints;
import org.ohmloom.model.StateId;

/**
 * How far the grounds of one kind of some owners are from their reference, V: the farthest of them, or how far they are from each
 * other.
 *
 * @param kind       what they are
 * @param owners     ids of who they belong to
 * @param between    whether the distance between them counts; the reference belongs to one of them then
 * @param states     the states, worst first
 * @param limitVolts most volts
 * @param rippleVolts ripple of the worst in each state before the change, V
 */
record OffsetTarget(
        ReferencePoint.Kind kind,
        Set<String> owners,
        boolean between,
        List<StateId> states,
        double limitVolts,
        Map<StateId, Double> rippleVolts)
        implements Target {

    @Override
    public double limit() {
        return limitVolts;
    }

    @Override
    public Reading in(ChangedState state) {
        Attribution attribution = state.attribution();
        Reading worst = Reading.NOTHING;
        List<Double> volts = new ArrayList<>(between ? List.of(0.0) : List.of());
        for (ReferencePoint point : ReferencePoints.of(state.network(), state.harness())) {
            if (point.kind() == kind && owners.contains(point.owner().value())) {
                Optional<List<Attribution.Part>> parts = attribution.ofVolts(point.at(), point.reference());
                if (parts.isEmpty()) {
                    return new Reading(Double.POSITIVE_INFINITY, List.of());
                }
                Reading reading = Reading.of(parts.get(), state.causes());
                worst = reading.value() > worst.value() ? reading : worst;
                volts.add(parts.get().stream()
                        .mapToDouble(Attribution.Part::value)
                        .sum());
            }
        }
        double value = between
                ? volts.stream().mapToDouble(each -> each).max().orElse(0)
                        - volts.stream().mapToDouble(each -> each).min().orElse(0)
                : worst.value();
        return new Reading(value + rippleVolts.getOrDefault(state.network().state(), 0.0), worst.causes());
    }
}
