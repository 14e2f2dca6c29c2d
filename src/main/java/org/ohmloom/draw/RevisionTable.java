package org.ohmloom.draw;

import java.util.List;
import org.ohmloom.model.Revision;

/** The revision table above the title block, the newest revision last; the latest ones when there are many. */
final class RevisionTable {

    private static final double ROW_MM = 5;
    private static final int MOST = 5;
    private static final List<Double> COLUMNS_MM = List.of(14.0, 24.0, 36.0, 106.0);

    private RevisionTable() {}

    /** Height it takes, mm. */
    static double heightMm(List<Revision> revisions) {
        return revisions.isEmpty() ? 0 : (1 + Math.min(MOST, revisions.size())) * ROW_MM;
    }

    static void draw(SheetPen pen, List<Revision> revisions, double left, double bottom) {
        if (revisions.isEmpty()) {
            return;
        }
        double y = bottom - heightMm(revisions);
        int hidden = Math.max(0, revisions.size() - MOST);
        String heading = hidden == 0 ? "Change" : "Change (" + hidden + " earlier not shown)";
        row(pen, left, y, Weight.BOLD, "Rev.", "Date", "By", heading);
        for (Revision revision : revisions.subList(hidden, revisions.size())) {
            y += ROW_MM;
            row(pen, left, y, Weight.REGULAR, revision.index(), revision.date(), revision.by(), revision.description());
        }
        pen.box(
                new Extent(left, bottom - heightMm(revisions), left + TitleBlockDrawing.WIDTH_MM, bottom),
                Fill.edge(Ink.FRAME, SheetPen.MEDIUM_MM));
    }

    private static void row(SheetPen pen, double left, double top, Weight weight, String... cells) {
        double x = left;
        for (int k = 0; k < cells.length; k++) {
            Extent cell = Extent.at(x, top, COLUMNS_MM.get(k), ROW_MM);
            Ink inside = weight == Weight.BOLD ? Ink.TABLE_HEAD : Ink.GROUND;
            pen.box(cell, Fill.of(inside, Ink.FRAME, SheetPen.THIN_MM));
            pen.text(cells[k], x + 1.2, top + (ROW_MM + 2) / 2, 2, COLUMNS_MM.get(k) - 2.4, weight, Ink.TEXT);
            x += COLUMNS_MM.get(k);
        }
    }
}
