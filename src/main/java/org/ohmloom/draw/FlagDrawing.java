package org.ohmloom.draw;

import java.util.List;

/** The flag of a note: its number in a box behind a text. */
final class FlagDrawing {

    static final double TEXT_MM = 1.8;

    private static final double GAP_MM = 1.2;
    private static final double PAD_MM = 0.6;

    private FlagDrawing() {}

    /** Room that a flag takes behind a text, mm; 0 without a flag. */
    static double widthMm(Lettering lettering, String flag) {
        return flag.isEmpty() ? 0 : GAP_MM + 2 * PAD_MM + lettering.widthMm(flag, Weight.BOLD, TEXT_MM);
    }

    /** The marks of a flag behind a text that ends at a point of the base line. */
    static List<Mark> marks(Lettering lettering, String flag, Point end) {
        if (flag.isEmpty()) {
            return List.of();
        }
        Text text = lettering.text(flag, end.plus(GAP_MM + PAD_MM, 0), TEXT_MM, Anchor.START, Weight.BOLD, Ink.TEXT);
        Extent box = new Extent(
                end.xMm() + GAP_MM, end.yMm() - TEXT_MM - 0.55, end.xMm() + widthMm(lettering, flag), end.yMm() + 0.65);
        return List.of(new Box(box, 0, Fill.of(Ink.PLATE, Ink.TEXT, SheetPen.THIN_MM)), text);
    }
}
