package org.ohmloom.signal.pins;

import static org.ohmloom.units.Require.notNegative;

import java.math.BigInteger;

/**
 * How much each thing that is better avoided costs; only their proportions matter. There is no published source: the usual
 * values say in which order a builder gives way, each a little more than several of the next.
 *
 * @param besideSwitchingPoints a line that is read in the cavity beside one that switches, each pair
 * @param otherConnectorPoints  a line of a sensor or load on another connector than the rest of it, each connector beyond the first
 * @param splicePoints          a splice because several lines share a pin, each pin
 * @param metrePoints           a metre from a sensor or load to its unit
 * @param versatilePoints       a pin used that could be something else as well, each other thing it could be
 */
public record Preferences(
        double besideSwitchingPoints,
        double otherConnectorPoints,
        double splicePoints,
        double metrePoints,
        double versatilePoints) {

    /** The usual order: quiet readings, whole connectors, few splices, short ways, versatile pins kept spare. */
    public static final Preferences USUAL = new Preferences(8, 4, 2, 0.5, 0.25);

    private static final double THOUSANDTHS = 1000;

    public Preferences {
        notNegative(besideSwitchingPoints, "cost of a switching neighbour");
        notNegative(otherConnectorPoints, "cost of another connector");
        notNegative(splicePoints, "cost of a splice");
        notNegative(metrePoints, "cost of a metre");
        notNegative(versatilePoints, "cost of a versatile pin");
    }

    /** The largest number of which every cost is a multiple, found to a thousandth; 0 when there is none. */
    double stepPoints() {
        long step = 0;
        for (double each : new double[] {besideSwitchingPoints, otherConnectorPoints, splicePoints, versatilePoints}) {
            long thousandths = Math.round(each * THOUSANDTHS);
            if (Math.abs(thousandths - each * THOUSANDTHS) > 1e-9 * THOUSANDTHS) {
                return 0;
            }
            step = BigInteger.valueOf(step).gcd(BigInteger.valueOf(thousandths)).longValue();
        }
        return step / THOUSANDTHS;
    }
}
