package org.ohmloom.pack;

import org.ohmloom.bundle.section.SegmentSection;
import org.ohmloom.words.Text;

/** What holds a segment, named the same on the bill and on the installation sheet. */
final class Fixings {
    /** Clips are told apart by diameters in steps of that, mm. */
    private static final double STEP_MM = 5;

    private Fixings() {}

    /** The diameter by which a segment's supports are told apart, mm. */
    static long sizeMm(SegmentSection section) {
        return Math.round(Math.ceil(section.finishedMm() / STEP_MM) * STEP_MM);
    }

    /** What a support of that size is called. */
    static Text support(long sizeMm) {
        return MaterialTexts.text("support", String.valueOf(sizeMm));
    }
}
