package org.ohmloom.draw.chart;

import java.util.ArrayList;
import java.util.List;
import org.ohmloom.draw.Extent;
import org.ohmloom.draw.Point;

/** Places for the label of a line: just above or below it, the right end liked best, none that could belong to another line. */
final class LinePlaces {

    private static final double OFF_MM = 0.6;
    private static final double STEP_MM = 2;
    private static final double NEAR_MM = 1.1;

    /** Cost of a place a millimetre further from the right end, mm. */
    private static final double PER_MM_LEFT = 0.25;

    private final Extent area;
    private final List<List<Point>> lines;

    LinePlaces(Extent area, List<List<Point>> lines) {
        this.area = area;
        this.lines = lines;
    }

    /** The places along a line for a label of a width. */
    List<Labels.Place> of(List<Point> line, double widthMm) {
        List<Labels.Place> places = new ArrayList<>();
        double height = Pen.LETTER_MM * 1.37;
        for (double right = area.rightMm() - OFF_MM; right - widthMm >= area.leftMm(); right -= STEP_MM) {
            double left = right - widthMm;
            List<Point> within = within(line, left, right);
            if (within.isEmpty()) {
                continue;
            }
            Extent own = Extent.around(within);
            double away = (area.rightMm() - right) * PER_MM_LEFT;
            Extent above = new Extent(left, own.topMm() - OFF_MM - height, right, own.topMm() - OFF_MM);
            Extent below = new Extent(left, own.bottomMm() + OFF_MM, right, own.bottomMm() + OFF_MM + height);
            double steep = own.heightMm();
            if (isAlone(line, above)) {
                places.add(new Labels.Place(above, away + steep));
            }
            if (isAlone(line, below)) {
                places.add(new Labels.Place(below, away + steep + 1));
            }
        }
        return places;
    }

    /** Whether no other line is so near that the label could be taken for its own. */
    private boolean isAlone(List<Point> own, Extent label) {
        return lines.stream().filter(line -> line != own).allMatch(line -> Clip.line(line, label.grown(NEAR_MM))
                .isEmpty());
    }

    /** The points of a line between two positions across, its ends there included. */
    private List<Point> within(List<Point> line, double leftMm, double rightMm) {
        Extent strip = new Extent(leftMm, area.topMm() - 1e3, rightMm, area.bottomMm() + 1e3);
        return Clip.line(line, strip).stream().flatMap(List::stream).toList();
    }
}
