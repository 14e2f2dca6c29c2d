package org.ohmloom.pack.page;

import java.util.List;
import org.ohmloom.draw.Mark;

/**
 * Something that must not be torn apart by the end of a page.
 *
 * @param heightMm height, mm
 * @param marks    its marks, from its own upper left corner
 * @param mentions where in it elements are named, from its own upper left corner; their page is not known yet
 */
record Piece(double heightMm, List<Mark> marks, List<Mention> mentions) {
    Piece {
        marks = List.copyOf(marks);
        mentions = List.copyOf(mentions);
    }

    /** A piece that names no element. */
    Piece(double heightMm, List<Mark> marks) {
        this(heightMm, marks, List.of());
    }
}
