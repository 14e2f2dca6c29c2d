package org.ohmloom.ground;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.ohmloom.model.ElementId;
import org.ohmloom.model.GroundPointId;
import org.ohmloom.model.StateId;

/**
 * What comes back at one ground point.
 *
 * @param ground    the ground point
 * @param stacked   wires, cases and straps whose terminals lie on its stud; a wire with both ends there stands twice
 * @param studs     studs that share them, 1 or more
 * @param states    what passes its joint in each state
 * @param worst     the state with the most current through the joint; empty when none passes
 * @param returning whose current passes the joint in that state, largest first
 */
public record GroundReading(
        GroundPointId ground,
        List<ElementId> stacked,
        int studs,
        SortedMap<StateId, JointReading> states,
        Optional<StateId> worst,
        List<CurrentShare> returning) {

    /** Most terminals on one stud: FAA AC 43.13-1B, 11-174 b; ABYC E-11, 11.14.6.9. */
    public static final int MOST_ON_STUD = 4;

    public GroundReading {
        stacked = List.copyOf(stacked);
        states = Collections.unmodifiableSortedMap(new TreeMap<>(states));
        returning = List.copyOf(returning);
    }

    /** Terminals its studs may hold. */
    public int mostStacked() {
        return MOST_ON_STUD * studs;
    }

    /**
     * The joint of a ground point in one state.
     *
     * @param amps          mean current from the stack into the body, A
     * @param onAmps        largest current, A
     * @param jointVolts    voltage over the joint, mean, V
     * @param offsetVolts   V(stack) - V(negative terminal of the first source), mean, V; what the joint is a part of
     */
    public record JointReading(double amps, double onAmps, double jointVolts, double offsetVolts) {

        /** The joint's share of the offset, 0 when there is none. */
        public double jointFraction() {
            return offsetVolts == 0 ? 0 : jointVolts / offsetVolts;
        }
    }

    /**
     * One cause's part of a current.
     *
     * @param cause the load, source or wire
     * @param amps  its part, A
     */
    public record CurrentShare(ElementId cause, double amps) {}
}
