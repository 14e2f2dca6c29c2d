package org.ohmloom.signal.plan;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ohmloom.edit.Edit;
import org.ohmloom.model.ComponentId;
import org.ohmloom.words.Text;

/**
 * Something wrong with the plan of a unit's pins.
 *
 * @param kind       what
 * @param words      a sentence without its full stop
 * @param components what it is about, the unit among them
 * @param amps       the current that is beyond its limit, A, if it is one
 * @param limitAmps  that limit, A
 * @param mending    an edit that mends it, where one is clear
 */
public record PlanProblem(
        Kind kind,
        Text words,
        List<ComponentId> components,
        OptionalDouble amps,
        OptionalDouble limitAmps,
        Optional<Edit> mending) {

    /** What can be wrong. */
    public enum Kind {
        /** A wire leads to another pin than the plan says. */
        WIRED_ELSEWHERE,
        /** The pin is not set up for what the component gives or takes. */
        WRONG_ROLE,
        /** A resistance is read without a pull-up, or a voltage against one. */
        PULL_UP,
        /** A name is longer than its unit takes. */
        NAME_TOO_LONG,
        /** Two channels of a unit or a bus are named alike. */
        NAMES_ALIKE,
        /** One pin is to do two things. */
        PIN_TWICE,
        /** A reference supply feeds more than it may. */
        REFERENCE_OVER_LIMIT,
        /** Outputs that share a limit carry more together. */
        GROUP_OVER_LIMIT
    }

    public PlanProblem {
        components = List.copyOf(components);
    }

    static PlanProblem of(Kind kind, Text words, List<ComponentId> components, Optional<? extends Edit> mending) {
        return new PlanProblem(
                kind, words, components, OptionalDouble.empty(), OptionalDouble.empty(), mending.map(Edit.class::cast));
    }

    static PlanProblem beyond(
            Kind kind,
            Text words,
            List<ComponentId> components,
            double amps,
            double limitAmps,
            Optional<? extends Edit> mending) {
        return new PlanProblem(
                kind,
                words,
                components,
                OptionalDouble.of(amps),
                OptionalDouble.of(limitAmps),
                mending.map(Edit.class::cast));
    }
}
