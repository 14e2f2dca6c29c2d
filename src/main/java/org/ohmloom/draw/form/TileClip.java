package org.ohmloom.draw.form;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.ohmloom.draw.Area;
import org.ohmloom.draw.Box;
import org.ohmloom.draw.Disc;
import org.ohmloom.draw.Extent;
import org.ohmloom.draw.Line;
import org.ohmloom.draw.Mark;
import org.ohmloom.draw.Point;

/** Cuts marks off a little outside the picture of a tile, where its margin covers them. Texts are not cut here. */
final class TileClip {

    /** So far outside the picture marks end, mm: edges that arise by cutting are covered. */
    private static final double BEYOND_MM = 2;

    private static final int CORNERS = 48;

    private final Extent room;

    TileClip(Extent picture) {
        this.room = picture.grown(BEYOND_MM);
    }

    /** What is left of a mark; several pieces of a line that leaves and comes back. */
    List<Mark> of(Mark mark) {
        if (room.contains(mark.bounds())) {
            return List.of(mark);
        }
        if (mark instanceof Line line) {
            return lines(line);
        }
        if (mark instanceof Area area) {
            return area(area);
        }
        if (mark instanceof Disc disc) {
            List<Point> around = new ArrayList<>();
            for (int k = 0; k < CORNERS; k++) {
                around.add(Headings.from(disc.centre(), 360.0 * k / CORNERS, disc.radiusMm()));
            }
            return area(new Area(around, disc.fill()));
        }
        return mark instanceof Box box
                ? box(box).map(each -> List.<Mark>of(each)).orElse(List.of())
                : List.of(mark);
    }

    private Optional<Box> box(Box box) {
        Extent extent = box.extent();
        Extent cut = new Extent(
                Math.max(extent.leftMm(), room.leftMm()),
                Math.max(extent.topMm(), room.topMm()),
                Math.min(extent.rightMm(), room.rightMm()),
                Math.min(extent.bottomMm(), room.bottomMm()));
        return cut.widthMm() > 0 && cut.heightMm() > 0
                ? Optional.of(new Box(cut, box.cornerMm(), box.fill()))
                : Optional.empty();
    }

    private List<Mark> lines(Line line) {
        List<Mark> pieces = new ArrayList<>();
        List<Point> run = new ArrayList<>();
        for (int k = 1; k < line.points().size(); k++) {
            Point a = line.points().get(k - 1);
            Point b = line.points().get(k);
            double[] inside = inside(a, b);
            if (inside[0] >= inside[1]) {
                end(line, run, pieces);
                continue;
            }
            if (run.isEmpty() || inside[0] > 0) {
                end(line, run, pieces);
                run.add(a.towards(b, inside[0]));
            }
            run.add(a.towards(b, inside[1]));
            if (inside[1] < 1) {
                end(line, run, pieces);
            }
        }
        end(line, run, pieces);
        return pieces;
    }

    private static void end(Line line, List<Point> run, List<Mark> pieces) {
        if (run.size() > 1) {
            pieces.add(new Line(run, line.widthMm(), line.ink(), line.pattern()));
        }
        run.clear();
    }

    /** The part of a stretch that lies in the room, as shares of it. */
    private double[] inside(Point a, Point b) {
        double dx = b.xMm() - a.xMm();
        double dy = b.yMm() - a.yMm();
        double[] part = {0, 1};
        narrow(part, -dx, a.xMm() - room.leftMm());
        narrow(part, dx, room.rightMm() - a.xMm());
        narrow(part, -dy, a.yMm() - room.topMm());
        narrow(part, dy, room.bottomMm() - a.yMm());
        return part;
    }

    private static void narrow(double[] part, double towards, double distance) {
        if (towards == 0) {
            part[1] = distance < 0 ? -1 : part[1];
        } else if (towards < 0) {
            part[0] = Math.max(part[0], distance / towards);
        } else {
            part[1] = Math.min(part[1], distance / towards);
        }
    }

    private List<Mark> area(Area area) {
        List<Point> points = area.points();
        points = half(points, point -> point.xMm() - room.leftMm());
        points = half(points, point -> room.rightMm() - point.xMm());
        points = half(points, point -> point.yMm() - room.topMm());
        points = half(points, point -> room.bottomMm() - point.yMm());
        return points.size() < 3 ? List.of() : List.of(new Area(points, area.fill()));
    }

    /** The part of a polygon on the side where a distance is not negative. */
    private static List<Point> half(List<Point> points, ToDoubleFunction<Point> distance) {
        List<Point> kept = new ArrayList<>();
        for (int k = 0; k < points.size(); k++) {
            Point a = points.get(k);
            Point b = points.get((k + 1) % points.size());
            double from = distance.applyAsDouble(a);
            double to = distance.applyAsDouble(b);
            if (from >= 0) {
                kept.add(a);
            }
            if ((from < 0) != (to < 0)) {
                kept.add(a.towards(b, from / (from - to)));
            }
        }
        return kept;
    }
}
