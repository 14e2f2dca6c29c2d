package org.ohmloom.draw.chart;

/**
 * A mark on an axis.
 *
 * @param value where it stands, in the canonical unit of the axis' dimension
 * @param label its number in the unit of the axis; empty for a mark between numbers
 */
record Tick(double value, String label) {}
