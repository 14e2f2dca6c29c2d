package org.ohmloom.heat;

import org.ohmloom.model.StateId;

/**
 * How hot a wire gets in a state too short to heat it through.
 *
 * @param state       the state
 * @param seconds     how long it lasts, s
 * @param stated      whether the state says so itself
 * @param fromCelsius where the wire runs before, deg C
 * @param celsius     where it is at the end, deg C
 */
public record ShortPeak(StateId state, double seconds, boolean stated, double fromCelsius, double celsius) {}
