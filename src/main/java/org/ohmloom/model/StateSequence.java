package org.ohmloom.model;

import static org.ohmloom.units.Require.notBlank;
import static org.ohmloom.units.Require.positive;
import static org.ohmloom.units.Require.that;

import java.util.List;
import java.util.OptionalDouble;

/**
 * Operating states one after another, for the charge of the batteries: a working day, a night at anchor.
 *
 * @param id         identity
 * @param name       what people call it
 * @param steps      the states in order, at least one
 * @param untilVolts battery voltage asked about: when is it reached, V, more than 0
 */
public record StateSequence(SequenceId id, String name, List<Step> steps, OptionalDouble untilVolts)
        implements Element {

    /**
     * A stretch of time in one state.
     *
     * @param state           the operating state
     * @param durationSeconds how long it lasts, s, more than 0
     */
    public record Step(StateId state, double durationSeconds) {
        public Step {
            positive(durationSeconds, "duration of a step in state %s", state);
        }
    }

    public StateSequence {
        notBlank(name, "name of sequence %s", id);
        steps = List.copyOf(steps);
        that(!steps.isEmpty(), "sequence %s needs at least one step", id);
        untilVolts.ifPresent(value -> positive(value, "voltage asked about in sequence %s", id));
    }

    /** How long it lasts in all, s. */
    public double totalSeconds() {
        return steps.stream().mapToDouble(Step::durationSeconds).sum();
    }
}
