package org.ohmloom.draw;

/**
 * The frame of a sheet after ISO 5457: border lines, centring marks and the grid reference of fields 50 mm long, letters
 * downwards and numbers across, I and O left out; on A4 at the top and the right only.
 */
final class SheetFrame {

    private static final double FIELD_MM = 50;
    private static final double STRIP_MM = 5;
    private static final double CENTRING_MM = 5;
    private static final String LETTERS = "ABCDEFGHJKLMNPQRSTUVWXYZ";

    private SheetFrame() {}

    static void draw(SheetPen pen, Paper paper) {
        Extent space = paper.drawingSpace();
        Extent outer = space.grown(STRIP_MM);
        pen.box(outer, Fill.edge(Ink.FRAME, SheetPen.THIN_MM));
        pen.box(space, Fill.edge(Ink.FRAME, SheetPen.WIDE_MM));
        Point centre = new Point(paper.widthMm() / 2, paper.heightMm() / 2);
        boolean small = paper == Paper.A4;
        across(pen, space, centre.xMm(), small);
        down(pen, space, centre.yMm(), small);
        double w = SheetPen.WIDE_MM;
        pen.line(w, Ink.FRAME, centre.xMm(), outer.topMm(), centre.xMm(), space.topMm() + CENTRING_MM);
        pen.line(w, Ink.FRAME, centre.xMm(), outer.bottomMm(), centre.xMm(), space.bottomMm());
        pen.line(w, Ink.FRAME, outer.leftMm(), centre.yMm(), space.leftMm() + CENTRING_MM, centre.yMm());
        pen.line(w, Ink.FRAME, outer.rightMm(), centre.yMm(), space.rightMm() - CENTRING_MM, centre.yMm());
        pen.text(
                paper.name(),
                space.rightMm() - 6,
                space.bottomMm() + STRIP_MM - 1.4,
                2.2,
                8,
                Weight.REGULAR,
                Ink.SOFT_TEXT);
    }

    /** Fields to both sides of the middle; a rest shorter than half a field belongs to the last one. */
    private static void across(SheetPen pen, Extent space, double middle, boolean topOnly) {
        int half = Math.max(1, (int) Math.round((space.rightMm() - middle) / FIELD_MM));
        for (int k = -half; k < half; k++) {
            double from = k == -half ? space.leftMm() : middle + k * FIELD_MM;
            double to = k == half - 1 ? space.rightMm() : middle + (k + 1) * FIELD_MM;
            String name = String.valueOf(k + half + 1);
            label(pen, name, (from + to) / 2, space.topMm() - STRIP_MM / 2);
            if (!topOnly) {
                label(pen, name, (from + to) / 2, space.bottomMm() + STRIP_MM / 2);
            }
            if (k > -half) {
                pen.line(SheetPen.MEDIUM_MM, Ink.FRAME, from, space.topMm() - STRIP_MM, from, space.topMm());
                if (!topOnly) {
                    pen.line(SheetPen.MEDIUM_MM, Ink.FRAME, from, space.bottomMm(), from, space.bottomMm() + STRIP_MM);
                }
            }
        }
    }

    private static void down(SheetPen pen, Extent space, double middle, boolean rightOnly) {
        int half = Math.max(1, (int) Math.round((space.bottomMm() - middle) / FIELD_MM));
        for (int k = -half; k < half; k++) {
            double from = k == -half ? space.topMm() : middle + k * FIELD_MM;
            double to = k == half - 1 ? space.bottomMm() : middle + (k + 1) * FIELD_MM;
            String name = String.valueOf(LETTERS.charAt(k + half));
            label(pen, name, space.rightMm() + STRIP_MM / 2, (from + to) / 2);
            if (!rightOnly) {
                label(pen, name, space.leftMm() - STRIP_MM / 2, (from + to) / 2);
            }
            if (k > -half) {
                pen.line(SheetPen.MEDIUM_MM, Ink.FRAME, space.rightMm(), from, space.rightMm() + STRIP_MM, from);
                if (!rightOnly) {
                    pen.line(SheetPen.MEDIUM_MM, Ink.FRAME, space.leftMm() - STRIP_MM, from, space.leftMm(), from);
                }
            }
        }
    }

    private static void label(SheetPen pen, String name, double x, double y) {
        Point base = new Point(x, y + SheetPen.NORMAL_MM / 2);
        pen.centred(name, base, SheetPen.NORMAL_MM, STRIP_MM, Weight.REGULAR, Ink.TEXT);
    }
}
