package org.ohmloom.workbench.canvas;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.ohmloom.draw.DrawStyle;
import org.ohmloom.draw.Ink;
import org.ohmloom.draw.Item;
import org.ohmloom.draw.Layer;
import org.ohmloom.draw.Point;
import org.ohmloom.draw.Scene;
import org.ohmloom.draw.ScenePainter;
import org.ohmloom.draw.Text;
import org.ohmloom.draw.Weight;

/**
 * Writes the most useful texts of a scene in a readable size while it is shown too small to be read: names of
 * components, numbers, names of connectors, each where there is room. Nearer, the scene speaks for itself.
 */
final class FarLabels {

    /** Height of capitals below which a text counts as not readable, px. */
    static final double READABLE_PX = 3.2;

    /** Height of capitals of these labels, px. */
    static final double LABEL_PX = 6.8;

    private static final double GAP_PX = 2;

    /** Shares of what a label grows by that lie below: its middle line stays, it stands below its run, or above it. */
    private static final double MIDDLE = 0.5;

    private static final double BELOW = 1;
    private static final double ABOVE = -1.5;

    private static final double COMPONENT_MM = 2.2;

    private FarLabels() {}

    /** Whether a scene at that scale, pixels for a millimetre, needs them. */
    static boolean areNeeded(double scale) {
        return scale * COMPONENT_MM < READABLE_PX;
    }

    /**
     * The labels there is room for.
     *
     * @param scale pixels for a millimetre
     */
    static List<Text> chosen(Scene scene, double scale) {
        return chosen(scene, scale, new Taken());
    }

    private static List<Text> chosen(Scene scene, double scale, Taken taken) {
        List<Text> chosen = new ArrayList<>();
        List<Predicate<Item>> ranks = List.of(
                item -> names(item) && ((Text) item.mark()).heightMm() >= COMPONENT_MM,
                FarLabels::isNumber,
                FarLabels::names);
        for (Predicate<Item> rank : ranks) {
            for (Item item : scene.items()) {
                if (item.mark() instanceof Text text && rank.test(item)) {
                    Text label = enlarged(text, scale, isNumber(item) ? BELOW : MIDDLE);
                    Rectangle2D room = room(label, scale);
                    if (taken.take(room)) {
                        chosen.add(label);
                    }
                }
            }
        }
        return chosen;
    }

    /**
     * Numbers shown on top of a scene, below their place or above it, where they hide neither its labels nor each other.
     *
     * @param scale pixels for a millimetre
     */
    static List<Text> over(Scene scene, List<Item> numbers, double scale) {
        Taken taken = new Taken();
        chosen(scene, scale, taken);
        List<Text> chosen = new ArrayList<>();
        for (Item item : numbers) {
            if (isNumber(item)) {
                Text text = (Text) item.mark();
                Stream.of(BELOW, ABOVE)
                        .map(down -> enlarged(text, scale, down))
                        .filter(label -> taken.take(room(label, scale)))
                        .findFirst()
                        .ifPresent(chosen::add);
            }
        }
        return chosen;
    }

    /**
     * Paints the labels.
     *
     * @param g in pixels of the component
     */
    static void paint(Graphics2D g, List<Text> labels, ViewTransform transform, ScenePainter painter, DrawStyle style) {
        Color plate = style.colour(Ink.PLATE);
        Color seeThrough = new Color(plate.getRed(), plate.getGreen(), plate.getBlue(), 225);
        Graphics2D inMm = (Graphics2D) g.create();
        try {
            inMm.transform(transform.affine());
            for (Text label : labels) {
                Rectangle2D room = room(label, transform.scale());
                Point2D corner =
                        transform.toScreen(new Point(room.getX() / transform.scale(), room.getY() / transform.scale()));
                g.setColor(seeThrough);
                g.fill(new RoundRectangle2D.Double(
                        corner.getX(), corner.getY(), room.getWidth(), room.getHeight(), 4, 4));
                painter.paintMark(inMm, label, style);
            }
        } finally {
            inMm.dispose();
        }
    }

    /** Places that labels have taken, by cells of the screen, so that each is held against its neighbours only. */
    private static final class Taken {

        private static final double CELL_PX = 64;

        private final Map<Long, List<Rectangle2D>> cells = new HashMap<>();

        /** Takes a place unless a part of it is taken. */
        boolean take(Rectangle2D room) {
            List<Long> own = cells(room);
            boolean free = own.stream()
                    .flatMap(cell -> cells.getOrDefault(cell, List.of()).stream())
                    .noneMatch(room::intersects);
            if (free) {
                own.forEach(cell ->
                        cells.computeIfAbsent(cell, each -> new ArrayList<>()).add(room));
            }
            return free;
        }

        private static List<Long> cells(Rectangle2D room) {
            List<Long> all = new ArrayList<>();
            for (long x = (long) Math.floor(room.getMinX() / CELL_PX); x <= room.getMaxX() / CELL_PX; x++) {
                for (long y = (long) Math.floor(room.getMinY() / CELL_PX); y <= room.getMaxY() / CELL_PX; y++) {
                    all.add((x << 32) + y);
                }
            }
            return all;
        }
    }

    private static boolean names(Item item) {
        return item.layer() == Layer.CONNECTORS
                && item.mark() instanceof Text text
                && text.weight() == Weight.BOLD
                && item.element()
                        .filter(id -> text.text().equals(id) || text.text().startsWith(id + " "))
                        .isPresent();
    }

    private static boolean isNumber(Item item) {
        return item.layer() == Layer.NUMBERS
                && item.mark() instanceof Text text
                && text.weight() == Weight.REGULAR
                && text.ink() == Ink.TEXT
                && text.rotationDegrees() == 0;
    }

    /**
     * The text in a readable height.
     *
     * @param down share of what it grows by that lies below: half keeps its middle line; all of it keeps a number, which stands
     *     below its run, off the wires
     */
    private static Text enlarged(Text text, double scale, double down) {
        double heightMm = LABEL_PX / scale;
        double ratio = heightMm / text.heightMm();
        return new Text(
                text.text(),
                text.at().plus(0, (heightMm - text.heightMm()) * down),
                heightMm,
                text.widthMm() * ratio,
                text.anchor(),
                text.rotationDegrees(),
                text.weight(),
                text.ink());
    }

    /** What a label takes up, px from the scene's corner. */
    private static Rectangle2D room(Text label, double scale) {
        double left = (label.at().xMm() - label.widthMm() * label.anchor().fraction()) * scale;
        double base = label.at().yMm() * scale;
        return new Rectangle2D.Double(
                left - GAP_PX, base - LABEL_PX - GAP_PX, label.widthMm() * scale + 2 * GAP_PX, LABEL_PX + 2 * GAP_PX);
    }
}
