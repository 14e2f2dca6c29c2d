package org.ohmloom.draw.form;

import java.util.List;
import org.ohmloom.draw.Anchor;
import org.ohmloom.draw.Disc;
import org.ohmloom.draw.Extent;
import org.ohmloom.draw.Fill;
import org.ohmloom.draw.Ink;
import org.ohmloom.draw.Line;
import org.ohmloom.draw.LinePattern;
import org.ohmloom.draw.Point;
import org.ohmloom.draw.SheetPen;
import org.ohmloom.draw.Weight;
import org.ohmloom.model.TitleBlock;

/** What stands around the picture of a tile: registration marks, scale bars, names of neighbours, the strip below. */
final class TileMarks {

    /** Length of both scale bars, mm. */
    static final double BAR_MM = 100;

    private static final double BAR_HIGH_MM = 2.4;
    private static final double EDGE_MM = 0.25;

    private static final double CROSS_MM = 6;
    private static final double FIELDS_MM = 74;
    private static final double WIDEST_FIELDS_MM = 180;
    private static final String HOW =
            "Measure both bars before use. Print at actual size, no fitting to the page." + " Cautions: sheet 1.";

    private final SheetPen pen;
    private final TileGrid grid;
    private final Extent picture;
    private final Extent cell;

    TileMarks(SheetPen pen, TileGrid grid) {
        this.pen = pen;
        this.grid = grid;
        this.picture = grid.pictureOnSheet();
        this.cell = picture.grown(-TileGrid.OVERLAP_MM / 2);
    }

    /** The frame, lines to cut and glue along where another tile joins, and a cross at each corner of the cell. */
    void border(int column, int row, List<String> names) {
        pen.box(picture, Fill.edge(Ink.FRAME, SheetPen.MEDIUM_MM));
        List<Point> corners = List.of(
                new Point(cell.leftMm(), cell.topMm()),
                new Point(cell.rightMm(), cell.topMm()),
                new Point(cell.rightMm(), cell.bottomMm()),
                new Point(cell.leftMm(), cell.bottomMm()));
        // the neighbours above, at the right, below and at the left, each across the edge from one corner to the next
        List<Boolean> joined = List.of(
                joins(column, row - 1, names),
                joins(column + 1, row, names),
                joins(column, row + 1, names),
                joins(column - 1, row, names));
        for (int side = 0; side < joined.size(); side++) {
            if (joined.get(side)) {
                List<Point> line = List.of(corners.get(side), corners.get((side + 1) % joined.size()));
                pen.mark(new Line(line, SheetPen.THIN_MM, Ink.SOFT_TEXT, LinePattern.DASHED));
            }
        }
        for (Point corner : corners) {
            double x = corner.xMm();
            double y = corner.yMm();
            pen.line(SheetPen.THIN_MM, Ink.FRAME, x - CROSS_MM, y, x + CROSS_MM, y);
            pen.line(SheetPen.THIN_MM, Ink.FRAME, x, y - CROSS_MM, x, y + CROSS_MM);
            pen.mark(new Disc(corner, 2, Fill.edge(Ink.FRAME, SheetPen.THIN_MM)));
        }
    }

    /** Bars of 100 mm: level in the strip below, upright in the left margin. */
    void scaleBars() {
        double x = picture.leftMm();
        double y = picture.bottomMm() + 6;
        double left = picture.leftMm() - 4 - BAR_HIGH_MM;
        double bottom = picture.bottomMm();
        for (int k = 0; k < 10; k++) {
            Fill fill = k % 2 == 0 ? Fill.of(Ink.FRAME) : Fill.of(Ink.GROUND);
            pen.box(Extent.at(x + k * 10, y, 10, BAR_HIGH_MM), fill);
            pen.box(Extent.at(left, bottom - (k + 1) * 10, BAR_HIGH_MM, 10), fill);
        }
        pen.box(Extent.at(x, y, BAR_MM, BAR_HIGH_MM).grown(-EDGE_MM / 2), Fill.edge(Ink.FRAME, EDGE_MM));
        pen.box(
                Extent.at(left, bottom - BAR_MM, BAR_HIGH_MM, BAR_MM).grown(-EDGE_MM / 2),
                Fill.edge(Ink.FRAME, EDGE_MM));
        double base = y + BAR_HIGH_MM + 3.6;
        pen.text("0", x, base, SheetPen.NORMAL_MM, 8, Weight.REGULAR, Ink.TEXT);
        pen.centred("50", new Point(x + 50, base), SheetPen.NORMAL_MM, 20, Weight.REGULAR, Ink.TEXT);
        pen.centred("100 mm", new Point(x + 96, base), SheetPen.NORMAL_MM, 20, Weight.REGULAR, Ink.TEXT);
        pen.mark(pen.lettering()
                .turned("100 mm", new Point(left - 1, bottom - 50), SheetPen.NORMAL_MM, Anchor.MIDDLE, -90, Ink.TEXT));
        pen.paragraph(HOW, x, base + 5, SheetPen.NORMAL_MM, BAR_MM + 4, Ink.TEXT);
    }

    /** Names of the tiles beside this one; "none" where there is nothing to join. */
    void neighbours(int column, int row, List<String> names, String prefix) {
        Point middle = picture.centre();
        double small = SheetPen.NORMAL_MM;
        if (joins(column, row - 1, names)) {
            String words = "joins " + prefix + TileGrid.name(column, row - 1);
            pen.centred(words, new Point(middle.xMm(), picture.topMm() - 1.5), small, 80, Weight.REGULAR, Ink.TEXT);
        }
        if (joins(column, row + 1, names)) {
            String words = "joins " + prefix + TileGrid.name(column, row + 1);
            Point at = new Point(middle.xMm(), picture.bottomMm() + 3.8);
            pen.centred(words, at, small, 80, Weight.REGULAR, Ink.TEXT);
        }
        if (joins(column - 1, row, names)) {
            String words = "joins " + prefix + TileGrid.name(column - 1, row);
            double y = Math.min(middle.yMm(), picture.bottomMm() - BAR_MM - 20);
            Point at = new Point(picture.leftMm() - 1.5, y);
            pen.mark(pen.lettering().turned(words, at, small, Anchor.MIDDLE, -90, Ink.TEXT));
        }
        if (joins(column + 1, row, names)) {
            String words = "joins " + prefix + TileGrid.name(column + 1, row);
            Point at = new Point(picture.rightMm() + 1.5, middle.yMm());
            pen.mark(pen.lettering().turned(words, at, small, Anchor.MIDDLE, 90, Ink.TEXT));
        }
    }

    private boolean joins(int column, int row, List<String> names) {
        return column >= 0
                && row >= 0
                && column < grid.columns()
                && row < grid.rows()
                && names.contains(TileGrid.name(column, row));
    }

    /** Number, revision, title, what is built here, and which sheet of how many. */
    void foot(TitleBlock block, String board, String tile, int sheet, int of) {
        double room = picture.widthMm() - BAR_MM - 8;
        double wide = Math.min(WIDEST_FIELDS_MM, Math.max(FIELDS_MM, room));
        double left = picture.rightMm() - Math.min(wide, room);
        double width = picture.rightMm() - left;
        double top = picture.bottomMm() + 5.5;
        double bottom = grid.sheetHeightMm() - 6;
        pen.box(new Extent(left, top, picture.rightMm(), bottom), Fill.edge(Ink.FRAME, SheetPen.MEDIUM_MM));
        double x = left + 1.5;
        double inner = width - 3;
        String place = (tile.isEmpty() ? "Form board" : "Form board, tile " + tile);
        String count = "Sheet " + sheet + " of " + of;
        double countMm = pen.lettering().widthMm(count, Weight.REGULAR, SheetPen.NORMAL_MM);
        pen.shrunk(place, x, top + 5, SheetPen.LARGE_MM, inner - countMm - 2, Weight.BOLD);
        pen.text(count, left + width - 1.5 - countMm, top + 5, 2.5, countMm + 0.1, Weight.REGULAR, Ink.TEXT);
        String date = block.date().map(each -> ", " + each).orElse("");
        String owner = block.owner().map(each -> each + ", ").orElse("");
        String number = owner + block.number() + ", Revision " + block.currentRevision() + date;
        pen.shrunk(number, x, top + 9.2, SheetPen.NORMAL_MM, inner, Weight.REGULAR);
        pen.shrunk(block.title(), x, top + 13, SheetPen.NORMAL_MM, inner, Weight.REGULAR);
        if (!board.equals(block.title())) {
            pen.shrunk(board, x, top + 16.8, SheetPen.NORMAL_MM, inner, Weight.REGULAR);
        }
    }
}
