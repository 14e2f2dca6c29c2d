package org.ohmloom.bundle.section;

/**
 * One step from the ideal packing to the finished diameter.
 *
 * @param words       what it is
 * @param millimetres diameter after it, mm
 * @param source      the figure and its table row
 */
public record DiameterStep(String words, double millimetres, String source) {}
