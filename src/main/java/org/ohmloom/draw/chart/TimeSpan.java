package org.ohmloom.draw.chart;

import org.ohmloom.words.Text;

/**
 * A stretch of time with a name, such as an operating state of a sequence.
 *
 * @param label       its name
 * @param fromSeconds its start, s
 * @param toSeconds   its end, s, after its start
 */
public record TimeSpan(Text label, double fromSeconds, double toSeconds) {}
