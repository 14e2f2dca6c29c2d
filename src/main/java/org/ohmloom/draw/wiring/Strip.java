package org.ohmloom.draw.wiring;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleFunction;
import org.ohmloom.draw.Anchor;
import org.ohmloom.draw.Extent;
import org.ohmloom.draw.Ink;
import org.ohmloom.draw.Item;
import org.ohmloom.draw.Layer;
import org.ohmloom.draw.Lettering;
import org.ohmloom.draw.Line;
import org.ohmloom.draw.Point;
import org.ohmloom.draw.Text;
import org.ohmloom.draw.Weight;

/**
 * A circuit, or a stretch of one between two upright cuts; a line that is cut tells where it goes on.
 *
 * @param layout  the circuit
 * @param leftMm  where it begins, mm in the circuit's own measure
 * @param rightMm where it ends
 * @param number  which stretch it is, from 1
 * @param of      how many there are
 */
record Strip(CircuitLayout layout, double leftMm, double rightMm, int number, int of) {

    /** Room for what is written beside a cut, mm. */
    static final double FLAG_MM = 30;

    private static final double STEP_MM = 4;
    private static final double TEXT_MM = WireWords.TEXT_MM;

    /** The circuit in as few stretches no wider than a room as it takes. */
    static List<Strip> of(CircuitLayout layout, double roomMm) {
        Extent all = layout.bounds().orElse(new Extent(0, 0, 1, 1));
        List<Double> edges = new ArrayList<>(List.of(all.leftMm() - 0.5));
        edges.addAll(layout.cuts());
        edges.add(all.rightMm() + 0.5);
        List<double[]> found = stretches(edges, roomMm);
        for (double room = widthMm(edges, 0, edges.size() - 1) / found.size(); room < roomMm; room += STEP_MM) {
            List<double[]> even = stretches(edges, room);
            if (even.size() == found.size() && widest(even) <= roomMm) {
                found = even;
                break;
            }
        }
        List<Strip> strips = new ArrayList<>();
        for (int k = 0; k < found.size(); k++) {
            strips.add(new Strip(layout, found.get(k)[0], found.get(k)[1], k + 1, found.size()));
        }
        return strips;
    }

    /** As many columns to each stretch as the room takes, at least one. */
    private static List<double[]> stretches(List<Double> edges, double roomMm) {
        List<double[]> found = new ArrayList<>();
        int from = 0;
        while (from < edges.size() - 1) {
            int to = edges.size() - 1;
            while (to > from + 1 && widthMm(edges, from, to) > roomMm) {
                to--;
            }
            found.add(new double[] {edges.get(from), edges.get(to)});
            from = to;
        }
        return found;
    }

    private static double widest(List<double[]> stretches) {
        double widest = 0;
        for (int k = 0; k < stretches.size(); k++) {
            double flags = (k == 0 ? 0 : FLAG_MM) + (k == stretches.size() - 1 ? 0 : FLAG_MM);
            widest = Math.max(widest, stretches.get(k)[1] - stretches.get(k)[0] + flags);
        }
        return widest;
    }

    private static double widthMm(List<Double> edges, int from, int to) {
        double flags = (from == 0 ? 0 : FLAG_MM) + (to == edges.size() - 1 ? 0 : FLAG_MM);
        return edges.get(to) - edges.get(from) + flags;
    }

    /** The rectangle it takes with what is written beside its cuts, mm in the circuit's own measure. */
    Extent extent() {
        List<Extent> inside = new ArrayList<>();
        for (Stand stand : layout.stands().values()) {
            Extent extent = layout.extent(stand);
            if (has(extent.centre().xMm())) {
                inside.add(extent);
            }
        }
        layout.lines().values().forEach(line -> clipped(line)
                .ifPresent(part -> inside.add(Extent.around(part).grown(3.2))));
        Extent all = Extent.union(inside).orElse(new Extent(leftMm, 0, rightMm, 1));
        return new Extent(
                leftMm - (number == 1 ? 0 : FLAG_MM),
                all.topMm(),
                rightMm + (number == of ? 0 : FLAG_MM),
                all.bottomMm());
    }

    boolean has(double xMm) {
        return xMm >= leftMm && xMm < rightMm;
    }

    private Optional<List<Point>> clipped(List<Point> points) {
        List<Point> kept = new ArrayList<>();
        for (int k = 1; k < points.size(); k++) {
            Point one = points.get(k - 1);
            Point two = points.get(k);
            if (two.xMm() < leftMm || one.xMm() > rightMm) {
                continue;
            }
            add(kept, clipped(one));
            add(kept, clipped(two));
        }
        return kept.size() > 1 ? Optional.of(kept) : Optional.empty();
    }

    private Point clipped(Point point) {
        return new Point(Math.max(leftMm, Math.min(rightMm, point.xMm())), point.yMm());
    }

    private static void add(List<Point> points, Point point) {
        if (points.isEmpty() || !points.get(points.size() - 1).equals(point)) {
            points.add(point);
        }
    }

    /**
     * The items within, in the circuit's own measure.
     *
     * @param all    items of the whole circuit
     * @param before place of a height on the stretch before
     * @param after  place of a height on the stretch after
     */
    List<Item> items(List<Item> all, Lettering lettering, DoubleFunction<String> before, DoubleFunction<String> after) {
        List<Item> items = new ArrayList<>();
        for (Item item : all) {
            if (item.layer() == Layer.WIRES && item.mark() instanceof Line line) {
                clipped(line.points())
                        .ifPresent(part -> items.add(new Item(
                                item.layer(),
                                new Line(part, line.widthMm(), line.ink(), line.pattern()),
                                item.element(),
                                item.description())));
            } else if (has(item.mark().bounds().centre().xMm())) {
                items.add(item);
            }
        }
        for (Map.Entry<Link, List<Point>> entry : layout.lines().entrySet()) {
            List<Point> points = entry.getValue();
            crossing(points, leftMm)
                    .filter(y -> number > 1)
                    .ifPresent(y -> items.add(flag(entry.getKey(), y, true, before.apply(y), lettering)));
            crossing(points, rightMm)
                    .filter(y -> number < of)
                    .ifPresent(y -> items.add(flag(entry.getKey(), y, false, after.apply(y), lettering)));
        }
        return items;
    }

    private static Optional<Double> crossing(List<Point> points, double xMm) {
        for (int k = 1; k < points.size(); k++) {
            if (points.get(k - 1).xMm() < xMm && points.get(k).xMm() > xMm) {
                return Optional.of(points.get(k).yMm());
            }
        }
        return Optional.empty();
    }

    private Item flag(Link link, double yMm, boolean onLeft, String place, Lettering lettering) {
        String name = link.wire().map(wire -> wire.id().value()).orElseGet(() -> layout.end(link));
        double x = onLeft ? leftMm - 1.2 : rightMm + 1.2;
        Text text = lettering.fitted(
                name + ", " + place,
                new Point(x, yMm + TEXT_MM / 2),
                TEXT_MM,
                FLAG_MM - 2,
                onLeft ? Anchor.END : Anchor.START,
                Weight.REGULAR,
                Ink.TEXT);
        return new Item(Layer.NUMBERS, text, link.wire().map(wire -> wire.id().value()), Optional.empty());
    }
}
