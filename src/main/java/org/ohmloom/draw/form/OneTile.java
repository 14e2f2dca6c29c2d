package org.ohmloom.draw.form;

import java.util.Collection;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.ohmloom.draw.Extent;
import org.ohmloom.draw.Point;

/** Whether a text is whole on a tile that is printed anyway, and what it names is on that tile too. */
final class OneTile {

    private final TileGrid grid;
    private final Set<String> used;

    /** The tiles of a grid that show some of these things. */
    OneTile(TileGrid grid, Collection<Extent> things) {
        this.grid = grid;
        this.used = grid.used(things).stream()
                .map(each -> TileGrid.name(each[0], each[1]))
                .collect(Collectors.toSet());
    }

    /** Whether no tile is printed for a text alone. */
    boolean isPrinted(Extent text) {
        return used.containsAll(grid.cells(text).stream()
                .map(each -> TileGrid.name(each[0], each[1]))
                .toList());
    }

    /**
     * Whether one printed tile shows all of a text.
     *
     * @param named what the text names, which that tile must show as well; empty for what is on many tiles
     */
    boolean shows(Extent text, Optional<Point> named) {
        int[] tile = grid.tileAt(text.centre());
        return grid.shows(text)
                && used.contains(TileGrid.name(tile[0], tile[1]))
                && named.map(point -> grid.picture(tile[0], tile[1]).contains(point))
                        .orElse(true);
    }
}
