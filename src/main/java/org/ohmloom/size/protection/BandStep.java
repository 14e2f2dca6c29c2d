package org.ohmloom.size.protection;

import java.util.OptionalDouble;
import org.ohmloom.tables.Citation;

/**
 * One published row of a time-current band at the rating of a device.
 *
 * @param multipleRatio  current over rated current
 * @param amps           current, A, more than 0
 * @param minimumSeconds it holds at least this long, s; empty when there is no such limit
 * @param maximumSeconds it has opened by then, s; empty when there is no such limit
 * @param citation       the row
 */
public record BandStep(
        double multipleRatio,
        double amps,
        OptionalDouble minimumSeconds,
        OptionalDouble maximumSeconds,
        Citation citation) {}
