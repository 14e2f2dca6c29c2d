package org.ohmloom.model;

import static org.ohmloom.units.Require.notBlank;
import static org.ohmloom.units.Require.notNegative;

/**
 * A component's terminal or case bolted straight to a chassis ground point.
 *
 * @param terminal  the component's terminal, often {@code -} or {@code case}
 * @param ground    the ground point it is bolted to
 * @param jointOhms resistance of that joint, ohm, 0 or more
 */
public record CaseGround(String terminal, GroundPointId ground, double jointOhms) {

    public CaseGround {
        notBlank(terminal, "terminal of a case ground");
        notNegative(jointOhms, "joint resistance of the case ground at %s", ground);
    }
}
