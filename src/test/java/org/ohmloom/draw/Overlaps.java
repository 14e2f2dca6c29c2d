package org.ohmloom.draw;

import java.util.ArrayList;
import java.util.List;

/** Finds texts that lie on one another or outside their scene. */
final class Overlaps {

    /** Texts may share this much, mm: room for accents that most texts do not have. */
    private static final double ALLOWED_MM = 0.1;

    private Overlaps() {}

    /** Pairs of texts of which one covers a part of the other. */
    static List<String> texts(Scene scene) {
        List<Text> texts = scene.items().stream()
                .map(Item::mark)
                .filter(mark -> mark instanceof Text)
                .map(mark -> (Text) mark)
                .toList();
        List<String> found = new ArrayList<>();
        for (int i = 0; i < texts.size(); i++) {
            for (int j = i + 1; j < texts.size(); j++) {
                if (texts.get(i)
                        .bounds()
                        .grown(-ALLOWED_MM)
                        .overlaps(texts.get(j).bounds())) {
                    found.add(texts.get(i).dump() + " and " + texts.get(j).dump());
                }
            }
        }
        return found;
    }

    /** Marks that reach over the sides of the scene. */
    static List<String> outside(Scene scene) {
        return scene.items().stream()
                .filter(item -> !scene.extent().grown(0.01).contains(item.mark().bounds()))
                .map(item -> item.mark().dump())
                .toList();
    }
}
