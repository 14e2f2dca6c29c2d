package org.ohmloom.heat;

/**
 * Where a wire settles in one operating state, at its hottest place.
 *
 * @param celsius        conductor temperature, deg C; the melting point of copper when it runs away
 * @param surfaceCelsius outside of the bundle, covering or wire there, deg C
 * @param ambientCelsius air there, deg C
 * @param place          the place in words, for example "in segment G3 with 7 other wires" or "alone"
 * @param runaway        whether no steady temperature exists
 */
public record WireHeat(double celsius, double surfaceCelsius, double ambientCelsius, String place, boolean runaway) {

    /** The hotter of two. */
    WireHeat hotter(WireHeat other) {
        return other.celsius > celsius ? other : this;
    }

    /** The same with another conductor temperature, deg C, and words on how it came about. */
    public WireHeat at(double changedCelsius, String how) {
        return new WireHeat(changedCelsius, surfaceCelsius, ambientCelsius, place + ", " + how, runaway);
    }
}
