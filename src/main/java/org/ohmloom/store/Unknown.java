package org.ohmloom.store;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Map;
import java.util.function.Predicate;

/** Keeps the keys of an object this version does not know, and writes them back behind the known ones. */
final class Unknown {
    private Unknown() {}

    static void keep(ObjectNode object, Predicate<String> known, Spot spot) {
        for (Map.Entry<String, JsonNode> field : object.properties()) {
            if (!known.test(field.getKey())) {
                spot.kept().keep(spot.place(), field.getKey(), JsonLayout.inline(field.getValue()));
            }
        }
    }

    static void giveBack(ObjectNode object, Spot spot) {
        spot.kept().at(spot.place()).forEach((key, json) -> {
            if (!object.has(key)) {
                object.set(key, JsonParsing.kept(json));
            }
        });
    }
}
