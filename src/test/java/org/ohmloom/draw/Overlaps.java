package org.ohmloom.draw;

import java.awt.geom.Line2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Finds texts that lie on one another, on lines or outside their scene. */
public final class Overlaps {

    /** Texts may share this much, mm: room for accents that most texts do not have. */
    private static final double ALLOWED_MM = 0.1;

    /** Lines may come this far into the box of a text, mm: into the descent below letters that have none. */
    private static final double LINE_ALLOWED_MM = 0.3;

    private Overlaps() {}

    /** Pairs of texts of which one covers a part of the other. */
    public static List<String> texts(Scene scene) {
        record Placed(Text text, Extent extent) {}
        List<Placed> texts = texts(scene.items()).stream()
                .map(text -> new Placed(text, text.bounds()))
                .sorted(Comparator.comparingDouble(placed -> placed.extent().leftMm()))
                .toList();
        List<String> found = new ArrayList<>();
        for (int i = 0; i < texts.size(); i++) {
            Extent letters = texts.get(i).extent().grown(-ALLOWED_MM);
            for (int j = i + 1; j < texts.size() && texts.get(j).extent().leftMm() < letters.rightMm(); j++) {
                if (letters.overlaps(texts.get(j).extent())) {
                    found.add(texts.get(i).text().dump() + " and "
                            + texts.get(j).text().dump());
                }
            }
        }
        return found;
    }

    /** Texts that a line, the edge of a box or an outlined shape runs through, unless a filled box lies between. */
    public static List<String> textsOnLines(Scene scene) {
        List<String> found = new ArrayList<>();
        List<Mark> marks = scene.items().stream().map(Item::mark).toList();
        List<Extent> bounds = marks.stream().map(Mark::bounds).toList();
        for (int k = 0; k < marks.size(); k++) {
            if (marks.get(k) instanceof Text text) {
                Extent letters = text.bounds().grown(-LINE_ALLOWED_MM);
                for (int j = plate(marks, k, letters) + 1; j < marks.size(); j++) {
                    Mark mark = marks.get(j);
                    boolean near = !(mark instanceof Text) && bounds.get(j).overlaps(letters);
                    if (near && crosses(mark, letters)) {
                        found.add(text.dump() + " on " + mark.dump());
                    }
                }
            }
        }
        return found;
    }

    /** The last filled box that is painted before a text and lies under all of it; -1 without one. */
    private static int plate(List<Mark> marks, int text, Extent letters) {
        for (int k = text - 1; k >= 0; k--) {
            if (marks.get(k) instanceof Box box
                    && box.fill().inside().isPresent()
                    && box.extent().contains(letters)) {
                return k;
            }
        }
        return -1;
    }

    private static boolean crosses(Mark mark, Extent letters) {
        if (mark instanceof Line line) {
            return crosses(line.points(), letters.grown(line.widthMm() / 2));
        }
        if (mark instanceof Box box) {
            return box.fill().edge().isPresent() && !box.extent().contains(letters);
        }
        if (mark instanceof Area area) {
            List<Point> closed = new ArrayList<>(area.points());
            closed.add(closed.get(0));
            return crosses(closed, letters.grown(area.fill().reachMm()));
        }
        return mark instanceof Disc || mark instanceof Swatch;
    }

    private static boolean crosses(List<Point> points, Extent letters) {
        for (int k = 1; k < points.size(); k++) {
            Point from = points.get(k - 1);
            Point to = points.get(k);
            boolean crossed = new Line2D.Double(from.xMm(), from.yMm(), to.xMm(), to.yMm())
                    .intersects(letters.leftMm(), letters.topMm(), letters.widthMm(), letters.heightMm());
            if (crossed) {
                return true;
            }
        }
        return false;
    }

    private static List<Text> texts(List<Item> items) {
        return items.stream()
                .map(Item::mark)
                .filter(mark -> mark instanceof Text)
                .map(mark -> (Text) mark)
                .toList();
    }

    /** Marks that reach over the sides of the scene. */
    public static List<String> outside(Scene scene) {
        return scene.items().stream()
                .filter(item -> !scene.extent().grown(0.01).contains(item.mark().bounds()))
                .map(item -> item.mark().dump())
                .toList();
    }
}
