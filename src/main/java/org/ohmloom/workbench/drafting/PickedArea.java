package org.ohmloom.workbench.drafting;

import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.ohmloom.draw.Extent;
import org.ohmloom.draw.Item;
import org.ohmloom.draw.Layer;
import org.ohmloom.draw.Point;
import org.ohmloom.draw.Scene;

/** An area of the scene that a person draws round things: a rectangle between two corners, or any line closed to its start. */
final class PickedArea {

    private final boolean lasso;
    private final List<Point> points = new ArrayList<>();

    PickedArea(boolean lasso, Point start) {
        this.lasso = lasso;
        points.add(start);
    }

    void to(Point point) {
        if (!lasso && points.size() > 1) {
            points.remove(1);
        }
        points.add(point);
    }

    /** Its outline in the scene. */
    Path2D outline() {
        Path2D path = new Path2D.Double();
        if (lasso) {
            path.moveTo(points.get(0).xMm(), points.get(0).yMm());
            points.stream().skip(1).forEach(each -> path.lineTo(each.xMm(), each.yMm()));
            path.closePath();
        } else {
            Extent room = Extent.around(points);
            path.append(new Rectangle2D.Double(room.leftMm(), room.topMm(), room.widthMm(), room.heightMm()), false);
        }
        return path;
    }

    /** What lies wholly in it, zones and the key left out, in the order it is painted. */
    List<String> picked(Scene scene) {
        Path2D outline = outline();
        Map<String, Boolean> inside = new LinkedHashMap<>();
        for (Item item : scene.items()) {
            if (item.element().isPresent() && item.layer() != Layer.ZONES && item.layer() != Layer.NUMBERS) {
                String id = item.element().get();
                if (inside.getOrDefault(id, true)) {
                    Extent room = item.mark().bounds();
                    boolean within = outline.contains(
                            room.leftMm(),
                            room.topMm(),
                            Math.max(1e-6, room.widthMm()),
                            Math.max(1e-6, room.heightMm()));
                    inside.put(id, within);
                }
            }
        }
        return inside.entrySet().stream()
                .filter(Map.Entry::getValue)
                .map(Map.Entry::getKey)
                .toList();
    }
}
