package org.ohmloom.draw;

import java.util.ArrayList;
import java.util.List;

/** A piece of a circuit between two upright cuts; a wire that is cut gets a note where it goes on. */
final class CircuitCut {

    /** Room for the notes beside a cut, mm. */
    static final double FLAG_MM = 26;

    private static final double TEXT_MM = CardMaker.SMALL_MM;

    private final double leftMm;
    private final double rightMm;
    private final Lettering lettering;

    CircuitCut(double leftMm, double rightMm, Lettering lettering) {
        this.leftMm = leftMm;
        this.rightMm = rightMm;
        this.lettering = lettering;
    }

    /** The items between the cuts; {@code before} and {@code after} name the neighbouring sheets, empty at an end. */
    List<Item> items(List<Item> all, String before, String after) {
        List<Item> items = new ArrayList<>();
        for (Item item : all) {
            Extent bounds = item.mark().bounds();
            double middle = bounds.centre().xMm();
            if (item.layer() == Layer.WIRES && item.mark() instanceof Line line) {
                wire(item, line, before, after, items);
            } else if (middle >= leftMm && middle < rightMm) {
                items.add(item);
            }
        }
        return items;
    }

    private void wire(Item item, Line line, String before, String after, List<Item> items) {
        List<Point> kept = new ArrayList<>();
        List<Point> points = line.points();
        for (int k = 1; k < points.size(); k++) {
            Point one = points.get(k - 1);
            Point two = points.get(k);
            double low = Math.min(one.xMm(), two.xMm());
            double high = Math.max(one.xMm(), two.xMm());
            if (high < leftMm || low > rightMm) {
                continue;
            }
            add(kept, clipped(one));
            add(kept, clipped(two));
            if (low < leftMm && high > leftMm) {
                items.add(flag(item, new Point(leftMm, one.yMm()), Anchor.END, before));
            }
            if (low < rightMm && high > rightMm) {
                items.add(flag(item, new Point(rightMm, one.yMm()), Anchor.START, after));
            }
        }
        if (kept.size() > 1) {
            Line part = new Line(kept, line.widthMm(), line.ink(), line.pattern());
            items.add(new Item(item.layer(), part, item.element(), item.description()));
        }
    }

    private Point clipped(Point point) {
        return new Point(Math.max(leftMm, Math.min(rightMm, point.xMm())), point.yMm());
    }

    private static void add(List<Point> points, Point point) {
        if (points.isEmpty() || !points.get(points.size() - 1).equals(point)) {
            points.add(point);
        }
    }

    private Item flag(Item wire, Point at, Anchor anchor, String sheet) {
        String text = wire.element().orElse("") + ", " + sheet;
        Point base = at.plus(anchor == Anchor.START ? 1.2 : -1.2, TEXT_MM / 2);
        Text mark = lettering.fitted(text, base, TEXT_MM, FLAG_MM - 2, anchor, Weight.REGULAR, Ink.TEXT);
        return new Item(Layer.NUMBERS, mark, wire.element(), wire.description());
    }
}
