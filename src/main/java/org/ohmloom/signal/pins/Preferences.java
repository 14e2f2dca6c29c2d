package org.ohmloom.signal.pins;

import static org.ohmloom.units.Require.notNegative;

/**
 * How much each thing that is better avoided costs; only their proportions matter. There is no published source: the usual
 * values say in which order a builder gives way, each a little more than several of the next.
 *
 * @param besideSwitching a line that is read in the cavity beside one that switches, each pair
 * @param otherConnector  a line of a sensor or load on another connector than the rest of it, each connector beyond the first
 * @param splice          a splice because several lines share a pin, each pin
 * @param versatile       a pin used that could be something else as well, each other thing it could be
 */
public record Preferences(double besideSwitching, double otherConnector, double splice, double versatile) {

    /** The usual order: quiet readings, whole connectors, few splices, versatile pins kept spare. */
    public static final Preferences USUAL = new Preferences(8, 4, 2, 0.25);

    public Preferences {
        notNegative(besideSwitching, "cost of a switching neighbour");
        notNegative(otherConnector, "cost of another connector");
        notNegative(splice, "cost of a splice");
        notNegative(versatile, "cost of a versatile pin");
    }
}
