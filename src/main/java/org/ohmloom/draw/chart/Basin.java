package org.ohmloom.draw.chart;

import java.util.List;
import java.util.OptionalDouble;
import org.ohmloom.units.Formats;
import org.ohmloom.words.Text;

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
        Text group,
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
    public Text second() {
        return Text.of(Formats.amps(amps));
    }

    /** The joint's share of the height, 0 to 1; 0 where joint and height have different signs. */
    double jointFraction() {
        return volts == 0 ? 0 : Math.max(0, Math.min(1, jointVolts / volts));
    }

    @Override
    public Text description() {
        String here = Formats.volts(volts);
        String joint = Formats.volts(jointVolts);
        return sentence(List.of(
                rippleVolts > 0
                        ? ChartTexts.text("basin.swinging", called(), here, Formats.volts(rippleVolts), joint)
                        : ChartTexts.text("basin", called(), here, joint),
                ChartTexts.text(
                        amps < 0 ? "basin.out-of" : "basin.into",
                        Formats.amps(Math.abs(amps)),
                        group.isEmpty() ? ChartTexts.text("basin.chassis") : group),
                ChartTexts.text("basin.terminals", terminals, most)));
    }
}
