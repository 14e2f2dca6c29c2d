package org.ohmloom.pack.page;

import java.util.List;
import org.ohmloom.draw.Mark;

/**
 * Something that must not be torn apart by the end of a page.
 *
 * @param heightMm height, mm
 * @param marks    its marks, from its own upper left corner
 */
record Piece(double heightMm, List<Mark> marks) {
    Piece {
        marks = List.copyOf(marks);
    }
}
