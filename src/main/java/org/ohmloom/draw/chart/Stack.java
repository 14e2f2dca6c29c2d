package org.ohmloom.draw.chart;

import java.util.ArrayList;
import java.util.List;
import org.ohmloom.draw.Item;
import org.ohmloom.draw.Placement;
import org.ohmloom.draw.Scene;

/** Charts one below the other. */
public final class Stack {

    private static final double BETWEEN_MM = 3;

    private Stack() {}

    /** The scenes from the top, as wide as the widest; at least one. */
    public static Scene of(List<Scene> scenes) {
        List<Item> items = new ArrayList<>();
        double widthMm = 0;
        double heightMm = 0;
        for (Scene scene : scenes) {
            double topMm = heightMm > 0 ? heightMm + BETWEEN_MM : 0;
            scene.items().forEach(item -> items.add(item.placed(Placement.moved(0, topMm))));
            heightMm = topMm + scene.heightMm();
            widthMm = Math.max(widthMm, scene.widthMm());
        }
        return new Scene(widthMm, heightMm, items);
    }
}
