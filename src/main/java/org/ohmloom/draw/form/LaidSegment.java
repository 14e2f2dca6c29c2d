package org.ohmloom.draw.form;

import java.util.List;
import org.ohmloom.draw.Point;
import org.ohmloom.model.SegmentId;

/**
 * How a segment lies on its board.
 *
 * @param segment    the segment
 * @param centreLine its centre line from its from end, mm on the board; it adds up to the segment's length
 * @param widthMm    finished diameter, mm
 * @param folds      how often it is folded
 * @param opened     whether a ring is opened at its to end
 * @param tiles      names of the tiles it lies on
 */
public record LaidSegment(
        SegmentId segment, List<Point> centreLine, double widthMm, int folds, boolean opened, List<String> tiles) {

    public LaidSegment {
        centreLine = List.copyOf(centreLine);
        tiles = List.copyOf(tiles);
    }

    /** Length of what is drawn, mm. */
    public double drawnMm() {
        return Way.lengthMm(centreLine);
    }
}
