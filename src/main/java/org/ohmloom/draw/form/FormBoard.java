package org.ohmloom.draw.form;

import java.util.List;
import org.ohmloom.draw.Extent;
import org.ohmloom.draw.Item;

/**
 * One form board at 1:1.
 *
 * @param name       what is built on it
 * @param widthMm    width it needs, mm
 * @param heightMm   height it needs, mm
 * @param items      its picture; empty for a harness without segments
 * @param segments   how each segment lies, in the order of the harness
 * @param remarks    what must be said of it: rings that are opened, a board that is too small
 * @param grid       its tiles
 * @param things     what lies on it, in small rectangles
 * @param cards      where its cards lie
 */
public record FormBoard(
        String name,
        double widthMm,
        double heightMm,
        List<Item> items,
        List<LaidSegment> segments,
        List<String> remarks,
        TileGrid grid,
        List<Extent> things,
        List<Extent> cards) {

    public FormBoard {
        items = List.copyOf(items);
        segments = List.copyOf(segments);
        remarks = List.copyOf(remarks);
        things = List.copyOf(things);
        cards = List.copyOf(cards);
    }

    /** Columns and rows of its tiles, row by row; those with nothing on them left out. */
    List<int[]> tiles() {
        return grid.used(things);
    }

    /** Names of its tiles. */
    public List<String> tileNames() {
        return tiles().stream().map(each -> TileGrid.name(each[0], each[1])).toList();
    }
}
