package org.ohmloom.draw;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/**
 * Paper sizes of ISO 216 as ISO 5457 uses them for drawings: A4 upright, the others lying. Borders: 20 mm on the left for
 * filing, 10 mm on the other sides.
 */
public enum Paper {
    A4(210, 297),
    A3(420, 297),
    A2(594, 420),
    A1(841, 594),
    A0(1189, 841);

    /** Border on the filing side, mm. */
    public static final double FILING_BORDER_MM = 20;

    /** Border on the other sides, mm. */
    public static final double BORDER_MM = 10;

    private final double widthMm;
    private final double heightMm;

    Paper(double widthMm, double heightMm) {
        this.widthMm = widthMm;
        this.heightMm = heightMm;
    }

    /** Width of the trimmed sheet, mm. */
    public double widthMm() {
        return widthMm;
    }

    /** Height of the trimmed sheet, mm. */
    public double heightMm() {
        return heightMm;
    }

    /** The drawing space inside the frame. */
    public Extent drawingSpace() {
        return new Extent(FILING_BORDER_MM, BORDER_MM, widthMm - BORDER_MM, heightMm - BORDER_MM);
    }

    /** The paper of that name in any case, for example "A3"; empty when there is none. */
    public static Optional<Paper> named(String name) {
        String wanted = name.strip().toUpperCase(Locale.ROOT);
        return Arrays.stream(values())
                .filter(paper -> paper.name().equals(wanted))
                .findFirst();
    }
}
