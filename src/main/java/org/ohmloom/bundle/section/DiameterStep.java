package org.ohmloom.bundle.section;

import org.ohmloom.words.Text;

/**
 * One step from the ideal packing to the finished diameter.
 *
 * @param words       what it is
 * @param millimetres diameter after it, mm
 * @param told        the figure and its table row
 */
public record DiameterStep(Text words, double millimetres, Text told) {

    /** The figure and its table row, in English. */
    public String source() {
        return told.english();
    }
}
