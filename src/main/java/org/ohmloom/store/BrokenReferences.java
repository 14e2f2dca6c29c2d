package org.ohmloom.store;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Map;
import java.util.Optional;
import org.ohmloom.model.BrokenReferenceException;

/**
 * Finds where in the file a reference stands that leads nowhere; the model names the place by ids, the file by positions.
 */
final class BrokenReferences {
    private final String target;

    private BrokenReferences(String target) {
        this.target = target;
    }

    static RefusedException refused(BrokenReferenceException broken, ObjectNode file, Spot root) {
        return new RefusedException(
                new BrokenReferences(broken.target()).find(file, broken.place(), root), broken.problem());
    }

    /** Follows what is left of the place, key by key and element by element, as far as it leads. */
    private Spot find(JsonNode node, String left, Spot spot) {
        if (node.isArray()) {
            for (int k = 0; k < node.size(); k++) {
                JsonNode element = node.get(k);
                String name = name(element);
                Optional<String> rest = rest(left, name);
                if (!name.isEmpty() && rest.isPresent()) {
                    return find(element, rest.get(), spot.item(k, name));
                }
                if (element.path(left).asText().equals(target)) {
                    return spot.item(k, "").key(left);
                }
            }
            return spot;
        }
        for (Map.Entry<String, JsonNode> field : node.properties()) {
            Optional<String> rest = rest(left, field.getKey());
            if (rest.isPresent()) {
                return find(field.getValue(), rest.get(), spot.key(field.getKey()));
            }
        }
        // The place ends at a map whose key is, or whose key holds, the broken reference.
        for (Map.Entry<String, JsonNode> field : node.properties()) {
            String key = field.getKey();
            if (left.isEmpty() && (key.equals(target) || key.startsWith(target + ".") || key.endsWith("." + target))) {
                return spot.key(key);
            }
        }
        return spot;
    }

    /** What is left of a place after a step; empty when the place does not begin with it. */
    private static Optional<String> rest(String left, String step) {
        if (left.equals(step)) {
            return Optional.of("");
        }
        return left.startsWith(step + "/") ? Optional.of(left.substring(step.length() + 1)) : Optional.empty();
    }

    private static String name(JsonNode element) {
        return element.path("id").asText(element.path("name").asText(""));
    }
}
