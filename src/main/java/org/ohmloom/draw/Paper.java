package org.ohmloom.draw;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/**
 * Paper for drawings. Sizes of ISO 216 with the frames of ISO 5457: A4 upright, the others lying; borders 20 mm on the left for
 * filing and 10 mm on the other sides, fields 50 mm long. Sizes A to E of ASME Y14.1, lying, with its borders and its counts of
 * zones, which are from memory; size A has no zones.
 */
public enum Paper {
    A4(210, 297),
    A3(420, 297),
    A2(594, 420),
    A1(841, 594),
    A0(1189, 841),
    ANSI_A(11, 8.5, 0.25, 0.38, 0, 0),
    ANSI_B(17, 11, 0.62, 0.38, 4, 2),
    ANSI_C(22, 17, 0.50, 0.75, 4, 4),
    ANSI_D(34, 22, 1.00, 0.50, 8, 4),
    ANSI_E(44, 34, 0.50, 1.00, 8, 8);

    /** Border on the filing side of ISO 5457, mm. */
    private static final double FILING_BORDER_MM = 20;

    /** Border on the other sides of ISO 5457, mm. */
    private static final double BORDER_MM = 10;

    private static final double FIELD_MM = 50;
    private static final double MM_PER_INCH = 25.4;

    private final double widthMm;
    private final double heightMm;
    private final Extent space;
    private final boolean asme;
    private final int zonesAcross;
    private final int zonesDown;

    /** A size of ISO 216; a rest shorter than half a field belongs to the last one. */
    Paper(double widthMm, double heightMm) {
        this.widthMm = widthMm;
        this.heightMm = heightMm;
        this.space = isoSpace(widthMm, heightMm);
        this.asme = false;
        this.zonesAcross = 2 * (int) Math.round((space.rightMm() - widthMm / 2) / FIELD_MM);
        this.zonesDown = 2 * (int) Math.round((space.bottomMm() - heightMm / 2) / FIELD_MM);
    }

    /** A size of ASME Y14.1: inches, the borders beside and above and below, zones across and down. */
    Paper(double width, double height, double beside, double above, int zonesAcross, int zonesDown) {
        this.widthMm = width * MM_PER_INCH;
        this.heightMm = height * MM_PER_INCH;
        double dx = beside * MM_PER_INCH;
        double dy = above * MM_PER_INCH;
        this.space = new Extent(dx, dy, widthMm - dx, heightMm - dy);
        this.asme = true;
        this.zonesAcross = zonesAcross;
        this.zonesDown = zonesDown;
    }

    private static Extent isoSpace(double widthMm, double heightMm) {
        return new Extent(FILING_BORDER_MM, BORDER_MM, widthMm - BORDER_MM, heightMm - BORDER_MM);
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
        return space;
    }

    /** Whether it is a size of ASME Y14.1 rather than of ISO 216. */
    public boolean isAsme() {
        return asme;
    }

    /** How many fields the grid reference of the frame has from left to right; 0 without one. */
    public int zonesAcross() {
        return zonesAcross;
    }

    /** How many fields the grid reference of the frame has from top to bottom; 0 without one. */
    public int zonesDown() {
        return zonesDown;
    }

    /** What people call it: "A3", "ANSI B". */
    public String label() {
        return name().replace('_', ' ');
    }

    @Override
    public String toString() {
        return label();
    }

    /** The sheet tables are set on, which any printer of the place takes: A4, or ANSI A beside the sizes of ASME Y14.1. */
    public Paper office() {
        return asme ? ANSI_A : A4;
    }

    /** The paper of that name in any case, for example "A3", "ANSI B" or "ansi-b"; empty when there is none. */
    public static Optional<Paper> named(String name) {
        String wanted = name.strip().toUpperCase(Locale.ROOT).replaceAll("[ _-]+", "_");
        return Arrays.stream(values())
                .filter(paper -> paper.name().equals(wanted))
                .findFirst();
    }
}
