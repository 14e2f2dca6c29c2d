package org.ohmloom.draw.chart;

import org.ohmloom.units.Dimension;

/**
 * A level that a value over time is held against.
 *
 * @param label     what it is, with its number
 * @param dimension what is measured
 * @param value     the level, canonical unit
 */
public record TimeLimit(String label, Dimension dimension, double value) {}
