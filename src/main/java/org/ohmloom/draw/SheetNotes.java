package org.ohmloom.draw;

import java.util.List;
import org.ohmloom.review.Cautions;
import org.ohmloom.words.Text;

/**
 * The notes and the cautions beside the title block: in full on the first sheet, later ones say on one line each what must be
 * known there and where the rest stands.
 */
final class SheetNotes {

    private static final double TEXT_MM = SheetPen.SMALL_MM;
    private static final double PAD_MM = 2;
    private static final double BETWEEN_MM = 3.4;
    private static final double INDENT_MM = 5;
    private static final double WIDEST_COLUMN_MM = 130;

    /** What every sheet says on one line. */
    static final String SCALE = "Not to scale; lengths in mm.";

    private final List<String> notes;
    private final List<String> everywhere;

    SheetNotes(List<String> notes) {
        this(notes, List.of(SCALE, "Connectors are seen from the wire side; the black corner marks the cavity named."));
    }

    /** Notes of which later sheets repeat a few lines. */
    SheetNotes(List<String> notes, List<String> everywhere) {
        this.notes = List.copyOf(notes);
        this.everywhere = List.copyOf(everywhere);
    }

    /** Draws both in columns side by side; gives the height they take, measured from the top of the extent. */
    double draw(SheetPen pen, Extent extent, boolean first) {
        return (first ? whole(pen, extent) : reference(pen, extent)) - extent.topMm() + PAD_MM;
    }

    private double whole(SheetPen pen, Extent extent) {
        double column = Math.min(WIDEST_COLUMN_MM, extent.widthMm() * 0.5);
        double left = extent.leftMm();
        double widest = Math.min(2 * WIDEST_COLUMN_MM, extent.widthMm() - column);
        List<List<String>> halves = widest < 1.9 * column ? List.of(notes) : halves();
        double bottom = extent.topMm();
        double room = halves.size() > 1 ? widest / 2 : extent.widthMm() - column;
        room = Math.min(room, WIDEST_COLUMN_MM);
        int number = 1;
        for (List<String> half : halves) {
            String title = number == 1 ? "Notes" : "Notes, continued";
            bottom = Math.max(bottom, list(pen, title, half, number, left, extent.topMm(), room, Ink.TEXT));
            number += half.size();
            left += room;
        }
        return Math.max(
                bottom,
                list(
                        pen,
                        "Cautions",
                        Cautions.everything().stream().map(Text::english).toList(),
                        1,
                        left,
                        extent.topMm(),
                        column,
                        Ink.CAUTION));
    }

    private List<List<String>> halves() {
        int middle = (notes.size() + 1) / 2;
        return List.of(notes.subList(0, middle), notes.subList(middle, notes.size()));
    }

    private double reference(SheetPen pen, Extent extent) {
        double x = extent.leftMm() + PAD_MM;
        double room = extent.widthMm() - 2 * PAD_MM;
        double y = extent.topMm() + PAD_MM + SheetPen.NORMAL_MM;
        triangle(pen, x, y);
        pen.text(
                "Cautions, notes and key of marks: sheet 1",
                x + 4.6,
                y,
                SheetPen.NORMAL_MM,
                room - 4.6,
                Weight.BOLD,
                Ink.CAUTION);
        for (String line : everywhere) {
            y += BETWEEN_MM + 0.6;
            y = pen.paragraph(line, x, y, TEXT_MM, room, Ink.TEXT);
        }
        return y;
    }

    private static void triangle(SheetPen pen, double x, double y) {
        pen.mark(new Area(
                List.of(new Point(x, y), new Point(x + 3.4, y), new Point(x + 1.7, y - 3)),
                Fill.edge(Ink.CAUTION, SheetPen.MEDIUM_MM)));
        pen.line(0.4, Ink.CAUTION, x + 1.7, y - 1.9, x + 1.7, y - 1);
    }

    private static double list(
            SheetPen pen,
            String title,
            List<String> lines,
            int first,
            double left,
            double top,
            double widthMm,
            Ink heading) {
        double y = top + PAD_MM + SheetPen.NORMAL_MM;
        double room = widthMm - 2 * PAD_MM;
        boolean caution = heading == Ink.CAUTION;
        if (caution) {
            triangle(pen, left + PAD_MM, y);
        }
        double x = left + PAD_MM + (caution ? 4.6 : 0);
        pen.text(title, x, y, SheetPen.NORMAL_MM, room - 5, Weight.BOLD, heading);
        int number = first;
        y += 0.6;
        for (String line : lines) {
            y += BETWEEN_MM;
            pen.text(number + ".", left + PAD_MM, y, TEXT_MM, INDENT_MM, Weight.REGULAR, Ink.SOFT_TEXT);
            y = pen.paragraph(line, left + PAD_MM + INDENT_MM, y, TEXT_MM, room - INDENT_MM, Ink.TEXT);
            number++;
        }
        return y;
    }
}
