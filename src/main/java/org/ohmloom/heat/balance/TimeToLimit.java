package org.ohmloom.heat.balance;

import java.util.OptionalDouble;

/**
 * How long a conductor takes from one temperature to another under a constant current.
 *
 * @param lumpedSeconds    with copper and insulation warming together and heat getting away; empty when it never gets there
 * @param adiabaticSeconds with the copper alone keeping all its heat: never longer than the truth
 */
public record TimeToLimit(OptionalDouble lumpedSeconds, double adiabaticSeconds) {

    /** Events shorter than this are judged on the copper alone: the insulation has no time to warm, s. */
    public static final double ADIABATIC_BELOW_SECONDS = 10;

    /** The time to reckon with, s: lumped from 10 s up, otherwise the copper alone; empty for never. */
    public OptionalDouble seconds() {
        return lumpedSeconds.isPresent() && lumpedSeconds.getAsDouble() < ADIABATIC_BELOW_SECONDS
                ? OptionalDouble.of(adiabaticSeconds)
                : lumpedSeconds;
    }
}
