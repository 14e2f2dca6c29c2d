package org.ohmloom.draw.form;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.ohmloom.BesideOthers;
import org.ohmloom.draw.Extent;

/** Two tiles of A3 side by side: cells 383 mm wide, of which each shows 6 mm more on all sides. */
@BesideOthers
class TileGridTest {

    private static final TileGrid GRID = new TileGrid(420, 297, 0, 0, 2, 1);

    private static List<String> used(Extent... things) {
        return GRID.used(List.of(things)).stream()
                .map(each -> TileGrid.name(each[0], each[1]))
                .toList();
    }

    /** 388 mm lie 5 mm over the edge of the first cell, and the first tile shows 6 mm. */
    @Test
    void aTileIsLeftOutWhenItsNeighbourShowsAllThatLiesOnIt() {
        Extent inFirst = new Extent(100, 100, 130, 130);
        assertEquals(List.of("A1"), used(inFirst, new Extent(370, 100, 388, 130)));
        assertEquals(List.of("A1", "A2"), used(inFirst, new Extent(370, 100, 390, 130)));
    }

    /** Of two tiles that both show a thing one is printed. */
    @Test
    void aThingOnTheEdgeOfTwoTilesTakesOneOfThem() {
        assertEquals(1, used(new Extent(380, 100, 386, 130)).size());
    }
}
