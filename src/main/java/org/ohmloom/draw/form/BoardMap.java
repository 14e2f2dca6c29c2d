package org.ohmloom.draw.form;

import java.util.ArrayList;
import java.util.List;
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
        TileGrid grid = board.grid();
        Extent all = grid.covered();
        double scale = Math.min((widthMm - 2 * EDGE_MM) / all.widthMm(), (heightMm - 2 * EDGE_MM) / all.heightMm());
        Placement place = new Placement(scale, EDGE_MM - all.leftMm() * scale, EDGE_MM - all.topMm() * scale);
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
        if (grid.columns() * grid.rows() > 1) {
            names(board, prefix, new Lettering(fonts), scale, place, items);
        }
        return new Scene(all.widthMm() * scale + 2 * EDGE_MM, all.heightMm() * scale + 2 * EDGE_MM, items);
    }

    private static void names(
            FormBoard board, String prefix, Lettering lettering, double scale, Placement place, List<Item> items) {
        double cell = Math.min(board.grid().cellWidthMm(), board.grid().cellHeightMm()) * scale;
        double high = Math.max(Lettering.SMALLEST_MM, Math.min(3.5, cell / 4));
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
}
