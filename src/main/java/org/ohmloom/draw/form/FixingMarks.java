package org.ohmloom.draw.form;

import java.util.ArrayList;
import java.util.List;
import org.ohmloom.draw.Area;
import org.ohmloom.draw.Disc;
import org.ohmloom.draw.Fill;
import org.ohmloom.draw.Ink;
import org.ohmloom.draw.Line;
import org.ohmloom.draw.Mark;
import org.ohmloom.draw.Point;

/** The symbols of what is fixed along a run, at a distance from the beginning of its way. */
final class FixingMarks {

    /** Radius of a peg, mm. */
    static final double PEG_MM = 2.5;

    private FixingMarks() {}

    static Line coveringEnd(FormRun run, Way way, double atMm) {
        return BundlePen.across(way, atMm, run.widthMm() / 2 + 3.5, 1, Ink.BUNDLE);
    }

    static List<Mark> tie(FormRun run, Way way, double atMm) {
        double half = run.widthMm() / 2 + 1.5;
        return List.of(
                BundlePen.across(way, atMm - 0.8, half, 0.5, Ink.TEXT),
                BundlePen.across(way, atMm + 0.8, half, 0.5, Ink.TEXT));
    }

    /** A clip on both sides of the bundle. */
    static List<Mark> support(FormRun run, Way way, double atMm) {
        Point at = Way.along(way.points(), atMm);
        double degrees = BundlePen.degreesAt(way, atMm);
        List<Mark> marks = new ArrayList<>();
        for (double side : new double[] {90, -90}) {
            Point base = Headings.from(at, degrees + side, run.widthMm() / 2 + 0.6);
            List<Point> corners = List.of(
                    Headings.from(base, degrees, -2.5),
                    Headings.from(base, degrees, 2.5),
                    Headings.from(Headings.from(base, degrees, 2.5), degrees + side, 2.6),
                    Headings.from(Headings.from(base, degrees, -2.5), degrees + side, 2.6));
            marks.add(new Area(corners, Fill.of(Ink.GROUND, Ink.TEXT, 0.35)));
        }
        return marks;
    }

    /** A flag that points at the bundle. */
    static Mark flag(FormRun run, Way way, double atMm) {
        Point point = Way.along(way.points(), atMm);
        double degrees = BundlePen.degreesAt(way, atMm) + 90;
        Point tip = Headings.from(point, degrees, run.widthMm() / 2 + 0.5);
        Point far = Headings.from(tip, degrees, 3);
        List<Point> flag = List.of(tip, Headings.from(far, degrees - 90, 1.6), Headings.from(far, degrees + 90, 1.6));
        return new Area(flag, Fill.of(Ink.TABLE_HEAD, Ink.TEXT, 0.25));
    }

    static Mark splice(FormRun run, Way way, double atMm) {
        Point point = Way.along(way.points(), atMm);
        double degrees = BundlePen.degreesAt(way, atMm);
        double reach = Math.max(4, run.widthMm() / 2 + 1.5);
        List<Point> corners = new ArrayList<>();
        for (int k = 0; k < 4; k++) {
            corners.add(Headings.from(point, degrees + 90 * k, reach));
        }
        return new Area(corners, Fill.of(Ink.SPLICE, Ink.GROUND, 0.35));
    }

    static List<Mark> peg(Point at) {
        return List.of(
                new Disc(at, PEG_MM, Fill.of(Ink.GROUND, Ink.TEXT, 0.5)),
                Line.of(0.25, Ink.TEXT, at.plus(-PEG_MM, 0), at.plus(PEG_MM, 0)),
                Line.of(0.25, Ink.TEXT, at.plus(0, -PEG_MM), at.plus(0, PEG_MM)));
    }
}
