package org.ohmloom.pack.page;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** Trimmed sheet sizes of ISO 5457 (ISO 216), used landscape. */
public enum Paper {
    A4(297, 210),
    A3(420, 297),
    A2(594, 420),
    A1(841, 594),
    A0(1189, 841);

    private final double widthMm;
    private final double heightMm;

    Paper(double widthMm, double heightMm) {
        this.widthMm = widthMm;
        this.heightMm = heightMm;
    }

    /** Width, mm. */
    public double widthMm() {
        return widthMm;
    }

    /** Height, mm. */
    public double heightMm() {
        return heightMm;
    }

    /** The size of that name, in either case; empty when there is none. */
    public static Optional<Paper> find(String name) {
        String wanted = name.strip().toUpperCase(Locale.ROOT);
        return Arrays.stream(values())
                .filter(paper -> paper.name().equals(wanted))
                .findFirst();
    }
}
