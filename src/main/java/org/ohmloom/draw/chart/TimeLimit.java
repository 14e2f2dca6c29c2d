package org.ohmloom.draw.chart;

import org.ohmloom.units.Dimension;
import org.ohmloom.words.Text;

/**
 * A level that a value over time is held against.
 *
 * @param label     what it is, with its number
 * @param dimension what is measured
 * @param value     the level, canonical unit
 */
public record TimeLimit(Text label, Dimension dimension, double value) {}
