package org.ohmloom.model;

import static org.ohmloom.units.Require.notBlank;
import static org.ohmloom.units.Require.positive;

/**
 * A stated rule for the resistance of a chassis body, used where none was entered: a star from the body's middle.
 *
 * @param toMiddleOhms resistance from a ground point's joint to the middle of the body, ohm, more than 0
 * @param source       where the figure comes from, shown wherever it is used
 */
public record ChassisRule(double toMiddleOhms, String source) {

    public ChassisRule {
        positive(toMiddleOhms, "resistance to the middle of a chassis body");
        notBlank(source, "source of a chassis rule");
    }
}
