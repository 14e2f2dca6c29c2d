package org.ohmloom.heat;

import org.ohmloom.units.Formats;
import org.ohmloom.words.Text;

/**
 * Where a wire settles in one operating state, at its hottest place.
 *
 * @param celsius        conductor temperature, deg C; the melting point of copper when it runs away
 * @param surfaceCelsius outside of the bundle, covering or wire there, deg C
 * @param ambientCelsius air there, deg C
 * @param where          the place in words, for example "in segment G3 with 7 other wires" or "alone"
 * @param runaway        whether no steady temperature exists
 */
public record WireHeat(double celsius, double surfaceCelsius, double ambientCelsius, Text where, boolean runaway) {

    /** The hotter of two. */
    WireHeat hotter(WireHeat other) {
        return other.celsius > celsius ? other : this;
    }

    /** The place in English words. */
    public String place() {
        return where.english();
    }

    /** A wire that no operating state warms: at the temperature of its air. */
    public static WireHeat atRest(double ambientCelsius) {
        return new WireHeat(ambientCelsius, ambientCelsius, ambientCelsius, HeatTexts.text("place.nowhere"), false);
    }

    /** The same at the peak of a cycle, deg C. */
    public WireHeat atPeak(double changedCelsius, double periodSeconds, double timeConstantSeconds) {
        Text peak = HeatTexts.text(
                "place.peak", where, Formats.seconds(periodSeconds), Formats.seconds(timeConstantSeconds));
        return new WireHeat(changedCelsius, surfaceCelsius, ambientCelsius, peak, runaway);
    }
}
