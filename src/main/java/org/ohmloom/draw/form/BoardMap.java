package org.ohmloom.draw.form;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.ohmloom.draw.Anchor;
import org.ohmloom.draw.Box;
import org.ohmloom.draw.Extent;
import org.ohmloom.draw.Fill;
import org.ohmloom.draw.Ink;
import org.ohmloom.draw.Item;
import org.ohmloom.draw.Layer;
import org.ohmloom.draw.Lettering;
import org.ohmloom.draw.Line;
import org.ohmloom.draw.LinePattern;
import org.ohmloom.draw.Placement;
import org.ohmloom.draw.Point;
import org.ohmloom.draw.Scene;
import org.ohmloom.draw.SceneFonts;
import org.ohmloom.draw.SheetPen;
import org.ohmloom.draw.Text;
import org.ohmloom.draw.Weight;

/** A small picture of a whole board with its tiles and their names. */
public final class BoardMap {

    private static final double EDGE_MM = 1;
    private static final double HEADING_MM = 5;
    private static final double BETWEEN_MM = 0.6;
    private static final double LEAST_LINE_MM = 0.35;

    private BoardMap() {}

    /**
     * The picture, no larger than a room.
     *
     * @param prefix   what stands before the names of its tiles
     * @param widthMm  width of the room, mm
     * @param heightMm height of the room, mm
     */
    public static Scene of(FormBoard board, String prefix, SceneFonts fonts, double widthMm, double heightMm) {
        Lettering lettering = new Lettering(fonts);
        Fit whole = Fit.of(board.grid(), EDGE_MM, widthMm, heightMm);
        boolean many = board.tiles().size() > 1;
        boolean headed = many && !named(board, prefix, lettering, whole.place().scale());
        Fit fit = headed ? Fit.of(board.grid(), HEADING_MM, widthMm, heightMm) : whole;
        List<Item> items = board(board, fit.place());
        if (headed) {
            headings(board, lettering, fit.place(), items);
        } else if (many) {
            names(board, prefix, lettering, fit.place(), items);
        }
        return new Scene(fit.widthMm(), fit.heightMm(), items);
    }

    /** How a whole board is brought into a room, with a margin at its left and its top. */
    private record Fit(Placement place, double widthMm, double heightMm) {
        static Fit of(TileGrid grid, double marginMm, double widthMm, double heightMm) {
            Extent all = grid.covered();
            double scale = Math.min(
                    (widthMm - marginMm - EDGE_MM) / all.widthMm(), (heightMm - marginMm - EDGE_MM) / all.heightMm());
            return new Fit(
                    new Placement(scale, marginMm - all.leftMm() * scale, marginMm - all.topMm() * scale),
                    all.widthMm() * scale + marginMm + EDGE_MM,
                    all.heightMm() * scale + marginMm + EDGE_MM);
        }
    }

    private static List<Item> board(FormBoard board, Placement place) {
        double scale = place.scale();
        TileGrid grid = board.grid();
        List<Item> items = new ArrayList<>();
        for (int[] tile : board.tiles()) {
            Extent cell = grid.cell(tile[0], tile[1]);
            items.add(
                    Item.of(Layer.ZONES, new Box(cell, 0, Fill.of(Ink.GROUND, Ink.RULE, 0.18 / scale)).placed(place)));
        }
        for (LaidSegment segment : board.segments()) {
            List<Point> line = segment.centreLine();
            double width = Math.max(LEAST_LINE_MM / scale, segment.widthMm());
            items.add(Item.of(Layer.BUNDLES, new Line(line, width, Ink.BUNDLE, LinePattern.CONTINUOUS).placed(place)));
        }
        Fill card = Fill.of(Ink.CONNECTOR, Ink.CONNECTOR_EDGE, SheetPen.THIN_MM / scale);
        board.cards().forEach(each -> items.add(Item.of(Layer.CONNECTORS, new Box(each, 0, card).placed(place))));
        return items;
    }

    /** Height of the tiles' names at that scale, mm. */
    private static double highMm(FormBoard board, double scale) {
        double cell = Math.min(board.grid().cellWidthMm(), board.grid().cellHeightMm()) * scale;
        return Math.max(Lettering.SMALLEST_MM, Math.min(3.5, cell / 4));
    }

    /** Whether each tile has room for its name. */
    private static boolean named(FormBoard board, String prefix, Lettering lettering, double scale) {
        double high = highMm(board, scale);
        return high + 1.4 <= board.grid().cellHeightMm() * scale
                && board.tiles().stream()
                        .mapToDouble(tile ->
                                lettering.widthMm(prefix + TileGrid.name(tile[0], tile[1]), Weight.BOLD, high) + 1.4)
                        .allMatch(wide -> wide <= board.grid().cellWidthMm() * scale);
    }

    private static void names(FormBoard board, String prefix, Lettering lettering, Placement place, List<Item> items) {
        double high = highMm(board, place.scale());
        for (int[] tile : board.tiles()) {
            String name = prefix + TileGrid.name(tile[0], tile[1]);
            Extent extent = board.grid().cell(tile[0], tile[1]);
            Point at = place.of(new Point(extent.leftMm(), extent.topMm()));
            double wide = lettering.widthMm(name, Weight.BOLD, high);
            Text text = lettering.text(name, at.plus(0.7, 0.7 + high), high, Anchor.START, Weight.BOLD, Ink.TEXT);
            items.add(Item.of(
                    Layer.NUMBERS,
                    new Box(Extent.at(at.xMm() + 0.4, at.yMm() + 0.4, wide + 0.6, high + 0.6), 0, Fill.of(Ink.PLATE))));
            items.add(Item.of(Layer.NUMBERS, text));
        }
    }

    /** Letters of the rows at the left and numbers of the columns above, as many as there is room for. */
    private static void headings(FormBoard board, Lettering lettering, Placement place, List<Item> items) {
        TileGrid grid = board.grid();
        double high = Lettering.SMALLEST_MM;
        double widest = IntStream.of(grid.columns(), 1)
                .mapToDouble(number -> lettering.widthMm(String.valueOf(number), Weight.BOLD, high))
                .max()
                .orElseThrow();
        int everyColumn = (int) Math.ceil((widest + BETWEEN_MM) / (grid.cellWidthMm() * place.scale()));
        for (int column = 0; column < grid.columns(); column += everyColumn) {
            Extent cell = grid.cell(column, 0);
            Point at = place.of(new Point(cell.centre().xMm(), cell.topMm())).plus(0, -1);
            items.add(Item.of(
                    Layer.NUMBERS,
                    lettering.text(String.valueOf(column + 1), at, high, Anchor.MIDDLE, Weight.BOLD, Ink.TEXT)));
        }
        int everyRow = (int) Math.ceil((high + BETWEEN_MM) / (grid.cellHeightMm() * place.scale()));
        for (int row = 0; row < grid.rows(); row += everyRow) {
            Extent cell = grid.cell(0, row);
            Point at = place.of(new Point(cell.leftMm(), cell.centre().yMm())).plus(-1, high / 2);
            items.add(Item.of(
                    Layer.NUMBERS, lettering.text(TileGrid.rowName(row), at, high, Anchor.END, Weight.BOLD, Ink.TEXT)));
        }
    }
}
