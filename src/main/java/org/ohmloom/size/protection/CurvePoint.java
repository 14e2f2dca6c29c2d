package org.ohmloom.size.protection;

/**
 * A point of a curve of time over current.
 *
 * @param amps    current, A
 * @param seconds time, s
 */
public record CurvePoint(double amps, double seconds) {}
