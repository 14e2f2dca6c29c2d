package org.ohmloom.draw.chart;

import java.util.OptionalDouble;
import org.ohmloom.units.Formats;

/**
 * A ground point in a {@link ReturnPicture}: returns gather in it and leave by its joint.
 *
 * @param element     id of the ground point
 * @param label       its identity as written
 * @param name        what people call it
 * @param group       the chassis body it is on
 * @param state       name of the state it is shown in; empty when all are shown in one
 * @param terminals   terminals on its studs, 0 or more
 * @param most        terminals its studs may hold, 1 or more
 * @param amps        mean current from the stud into the body, A
 * @param volts       mean voltage above the reference, V
 * @param jointVolts  the part of it over the joint, V
 * @param rippleVolts how far it swings, V, 0 or more
 * @param limitVolts  most it may be, V
 */
public record Basin(
        String element,
        String label,
        String name,
        String group,
        String state,
        int terminals,
        int most,
        double amps,
        double volts,
        double jointVolts,
        double rippleVolts,
        OptionalDouble limitVolts)
        implements ReturnColumn {

    @Override
    public String second() {
        return Formats.amps(amps);
    }

    /** The joint's share of the height, 0 to 1; 0 where joint and height have different signs. */
    double jointFraction() {
        return volts == 0 ? 0 : Math.max(0, Math.min(1, jointVolts / volts));
    }

    @Override
    public String description() {
        return "Ground point " + label + (name.isEmpty() || name.equals(label) ? "" : " " + name) + ": "
                + Formats.volts(volts) + (rippleVolts > 0 ? ", swinging by " + Formats.volts(rippleVolts) : "")
                + ", " + Formats.volts(jointVolts) + " of it over its joint; "
                + Formats.amps(Math.abs(amps)) + (amps < 0 ? " out of " : " into ")
                + (group.isEmpty() ? "the chassis" : group) + "; " + terminals
                + (terminals == 1 ? " terminal" : " terminals") + " on its stud, " + most + " may be"
                + (isOver() ? "; beyond its limit" : "")
                + (state.isEmpty() ? "" : "; in " + state);
    }
}
