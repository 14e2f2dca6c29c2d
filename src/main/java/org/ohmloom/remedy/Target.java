package org.ohmloom.remedy;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.ohmloom.ground.Attribution;
import org.ohmloom.ground.Causes;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.StateId;

/** The number a finding is about, as it can be foreseen for a changed harness: what makes a change worth trying. */
interface Target {

    /** The states it is judged in, that of the finding first. */
    List<StateId> states();

    /** The most it may be. */
    double limit();

    /** What it will be in a state. */
    Reading in(ChangedState state);

    /**
     * A foreseen number.
     *
     * @param value  the number, 0 or more; infinite where nothing joins its two ends any more
     * @param causes components whose current makes it, the largest part first; those that lessen it are left out
     */
    record Reading(double value, List<ComponentId> causes) {

        /** Nothing there any more. */
        static final Reading NOTHING = new Reading(0, List.of());

        static Reading of(List<Attribution.Part> parts, Causes causes) {
            double sum = parts.stream().mapToDouble(Attribution.Part::value).sum();
            Map<ComponentId, Double> by = new LinkedHashMap<>();
            for (Attribution.Part part : parts) {
                for (Causes.Cause cause : causes.of(part.branch())) {
                    if (cause.element() instanceof ComponentId component) {
                        by.merge(component, part.value() * cause.shareFraction() * Math.signum(sum), Double::sum);
                    }
                }
            }
            return new Reading(
                    Math.abs(sum),
                    by.entrySet().stream()
                            .filter(each -> each.getValue() > 0)
                            .sorted(Comparator.comparingDouble(
                                    (Map.Entry<ComponentId, Double> each) -> -each.getValue()))
                            .map(Map.Entry::getKey)
                            .collect(Collectors.toUnmodifiableList()));
        }
    }
}
