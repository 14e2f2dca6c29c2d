package org.ohmloom.draw.chart;

import org.ohmloom.units.Dimension;
import org.ohmloom.words.Text;

/**
 * A point of a trace to look at, such as its lowest one.
 *
 * @param label     what it is, with its number
 * @param dimension what is measured
 * @param seconds   when, s
 * @param value     how much, canonical unit
 */
public record TimeMark(Text label, Dimension dimension, double seconds, double value) {}
