package org.ohmloom.draw;

import java.util.function.IntFunction;

/**
 * The frame of a sheet with its grid reference, I and O left out. After ISO 5457: border lines, centring marks, fields 50 mm long,
 * letters downwards and numbers to the right, on A4 at the top and the right only. After ASME Y14.1, from memory: fields that
 * divide the frame evenly, letters upwards and numbers to the left from the corner of the title block, none on size A.
 */
final class SheetFrame {

    private static final double FIELD_MM = 50;
    private static final double STRIP_MM = 5;
    private static final double CENTRING_MM = 5;
    private static final String LETTERS = "ABCDEFGHJKLMNPQRSTUVWXYZ";

    private final SheetPen pen;
    private final Paper paper;
    private final Extent space;

    private SheetFrame(SheetPen pen, Paper paper) {
        this.pen = pen;
        this.paper = paper;
        this.space = paper.drawingSpace();
    }

    static void draw(SheetPen pen, Paper paper) {
        SheetFrame frame = new SheetFrame(pen, paper);
        pen.box(frame.space, Fill.edge(Ink.FRAME, SheetPen.WIDE_MM));
        frame.zones();
        if (!paper.isAsme()) {
            pen.box(frame.space.grown(STRIP_MM), Fill.edge(Ink.FRAME, SheetPen.THIN_MM));
            frame.centring();
            frame.size();
        }
    }

    private void zones() {
        int across = paper.zonesAcross();
        int down = paper.zonesDown();
        boolean short4 = paper == Paper.A4;
        double[] x = borders(across, space.leftMm(), space.rightMm(), paper.widthMm() / 2);
        double[] y = borders(down, space.topMm(), space.bottomMm(), paper.heightMm() / 2);
        IntFunction<String> numbers = k -> String.valueOf(paper.isAsme() ? across - k : k + 1);
        IntFunction<String> letters = k -> String.valueOf(LETTERS.charAt(paper.isAsme() ? down - 1 - k : k));
        row(x, numbers, space.topMm() - STRIP_MM);
        column(y, letters, space.rightMm());
        if (!short4) {
            row(x, numbers, space.bottomMm());
            column(y, letters, space.leftMm() - STRIP_MM);
        }
    }

    /** Where fields begin and end: even ones, or of one length to both sides of the middle with the rest in the outer ones. */
    private double[] borders(int count, double from, double to, double middle) {
        double[] borders = new double[count + 1];
        for (int k = 0; k <= count; k++) {
            borders[k] =
                    paper.isAsme() ? from + (to - from) * k / Math.max(1, count) : middle + (k - count / 2) * FIELD_MM;
        }
        borders[0] = from;
        borders[count] = to;
        return borders;
    }

    private void row(double[] x, IntFunction<String> names, double top) {
        for (int k = 0; k + 1 < x.length; k++) {
            label(names.apply(k), (x[k] + x[k + 1]) / 2, top + STRIP_MM / 2);
            if (k > 0) {
                pen.line(SheetPen.MEDIUM_MM, Ink.FRAME, x[k], top, x[k], top + STRIP_MM);
            }
        }
    }

    private void column(double[] y, IntFunction<String> names, double left) {
        for (int k = 0; k + 1 < y.length; k++) {
            label(names.apply(k), left + STRIP_MM / 2, (y[k] + y[k + 1]) / 2);
            if (k > 0) {
                pen.line(SheetPen.MEDIUM_MM, Ink.FRAME, left, y[k], left + STRIP_MM, y[k]);
            }
        }
    }

    private void centring() {
        Extent outer = space.grown(STRIP_MM);
        Point centre = new Point(paper.widthMm() / 2, paper.heightMm() / 2);
        double w = SheetPen.WIDE_MM;
        pen.line(w, Ink.FRAME, centre.xMm(), outer.topMm(), centre.xMm(), space.topMm() + CENTRING_MM);
        pen.line(w, Ink.FRAME, centre.xMm(), outer.bottomMm(), centre.xMm(), space.bottomMm());
        pen.line(w, Ink.FRAME, outer.leftMm(), centre.yMm(), space.leftMm() + CENTRING_MM, centre.yMm());
        pen.line(w, Ink.FRAME, outer.rightMm(), centre.yMm(), space.rightMm() - CENTRING_MM, centre.yMm());
    }

    private void size() {
        double base = space.bottomMm() + STRIP_MM - 1.4;
        pen.text(paper.label(), space.rightMm() - 6, base, 2.2, 8, Weight.REGULAR, Ink.SOFT_TEXT);
    }

    private void label(String name, double x, double y) {
        Point base = new Point(x, y + SheetPen.NORMAL_MM / 2);
        pen.centred(name, base, SheetPen.NORMAL_MM, STRIP_MM, Weight.REGULAR, Ink.TEXT);
    }
}
