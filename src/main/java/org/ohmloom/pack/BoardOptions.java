package org.ohmloom.pack;

import org.ohmloom.draw.form.BoardSize;

/**
 * How form boards are laid and printed.
 *
 * @param size  the largest board there is
 * @param whole whether each board is one sheet of its own size, for a plotter, rather than tiles
 */
public record BoardOptions(BoardSize size, boolean whole) {

    /** Tiles, on one sheet of plywood. */
    public static final BoardOptions USUAL = new BoardOptions(BoardSize.PLYWOOD, false);
}
