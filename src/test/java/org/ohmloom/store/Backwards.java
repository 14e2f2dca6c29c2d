package org.ohmloom.store;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;

/** Turns a harness file around where order has no meaning: keys of objects and elements of registers. */
final class Backwards {
    private Backwards() {}

    static JsonNode keysAndElements(String text) {
        return turned(JsonParsing.kept(text), 0);
    }

    private static JsonNode turned(JsonNode node, int level) {
        if (node.isObject()) {
            List<Map.Entry<String, JsonNode>> fields = new ArrayList<>(node.properties());
            Collections.reverse(fields);
            ObjectNode object = JsonNodeFactory.instance.objectNode();
            fields.forEach(field -> object.set(field.getKey(), turned(field.getValue(), level + 1)));
            return object;
        }
        if (node.isArray()) {
            List<JsonNode> elements = new ArrayList<>();
            node.forEach(element -> elements.add(turned(element, level + 1)));
            if (level == 1) {
                Collections.reverse(elements);
            }
            ArrayNode array = JsonNodeFactory.instance.arrayNode();
            return array.addAll(elements);
        }
        return node;
    }
}
