package org.ohmloom.draw.chart;

import java.util.ArrayList;
import java.util.List;
import org.ohmloom.draw.Anchor;
import org.ohmloom.draw.Extent;
import org.ohmloom.draw.Ink;
import org.ohmloom.draw.Layer;
import org.ohmloom.draw.Line;
import org.ohmloom.draw.Point;
import org.ohmloom.draw.Weight;
import org.ohmloom.words.Text;

/** The key below a chart: a sample of each line for which there is no room at the line itself, and its label. */
final class Key {

    private static final double SAMPLE_MM = 9;
    private static final double GAP_MM = 1.5;
    private static final double BETWEEN_MM = 5;
    private static final double ROW_MM = 4.2;

    /**
     * An entry.
     *
     * @param look  how its line is drawn
     * @param label what it is
     */
    record Entry(LineLook look, Text label) {}

    private final Pen pen;
    private final double roomMm;
    private final List<List<Entry>> rows = new ArrayList<>();

    Key(Pen pen, double roomMm, List<Entry> entries) {
        this.pen = pen;
        this.roomMm = roomMm;
        double used = Double.POSITIVE_INFINITY;
        for (Entry entry : entries) {
            double width = Math.min(roomMm, widthMm(entry));
            if (used + width > roomMm) {
                rows.add(new ArrayList<>());
                used = 0;
            }
            rows.get(rows.size() - 1).add(entry);
            used += width + BETWEEN_MM;
        }
    }

    double heightMm() {
        return rows.size() * ROW_MM;
    }

    private double widthMm(Entry entry) {
        return SAMPLE_MM + GAP_MM + pen.widthMm(entry.label());
    }

    /** Draws it with its lower edge at the lower side of a chart. */
    void draw(Extent size) {
        double y = size.bottomMm() - heightMm() + Pen.LETTER_MM - 0.5;
        for (List<Entry> row : rows) {
            double x = size.leftMm() + GAP_MM;
            for (Entry entry : row) {
                Point middle = new Point(x, y - Pen.LETTER_MM / 2);
                pen.put(
                        Layer.SHEET,
                        new Line(
                                List.of(middle, middle.plus(SAMPLE_MM, 0)),
                                Pen.LINE_MM,
                                entry.look().ink(),
                                entry.look().pattern()));
                String label = pen.cut(entry.label(), Pen.LETTER_MM, Weight.REGULAR, roomMm - SAMPLE_MM - 3 * GAP_MM);
                pen.put(Layer.SHEET, pen.text(label, new Point(x + SAMPLE_MM + GAP_MM, y), Anchor.START, Ink.TEXT));
                x += widthMm(entry) + BETWEEN_MM;
            }
            y += ROW_MM;
        }
    }
}
