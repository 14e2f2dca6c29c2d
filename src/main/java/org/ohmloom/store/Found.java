package org.ohmloom.store;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Collection;
import java.util.Optional;
import org.ohmloom.model.NearestText;
import org.ohmloom.units.Quantity;
import org.ohmloom.units.Texts;

/** Takes a node as what it must be, or says what was found and what is needed. */
final class Found {
    private Found() {}

    static ObjectNode object(JsonNode node, Spot spot) {
        if (node instanceof ObjectNode object) {
            return object;
        }
        throw needed("an object { }", node, spot);
    }

    static ArrayNode array(JsonNode node, Spot spot) {
        if (node instanceof ArrayNode array) {
            return array;
        }
        throw needed("an array [ ]", node, spot);
    }

    static String text(JsonNode node, Spot spot) {
        if (node.isTextual()) {
            return node.textValue();
        }
        throw needed("a text", node, spot);
    }

    static boolean flag(JsonNode node, Spot spot) {
        if (node.isBoolean()) {
            return node.booleanValue();
        }
        throw needed("true or false", node, spot);
    }

    /** A number, finite, that a double can hold. */
    static double number(JsonNode node, Spot spot) {
        if (!node.isNumber()) {
            throw needed("a number", node, spot);
        }
        double value = node.doubleValue();
        if (Quantity.isTooLarge(value)) {
            throw new RefusedException(spot, "the number " + JsonLayout.inline(node) + " is too large to compute with");
        }
        if (Quantity.isTooSmall(value) || value == 0 && node.decimalValue().signum() != 0) {
            throw new RefusedException(spot, "the number " + JsonLayout.inline(node) + " is too small to compute with");
        }
        return value + 0.0;
    }

    /** One of some words. */
    static String word(JsonNode node, Collection<String> words, String what, Spot spot) {
        String text = text(node, spot);
        if (words.contains(text)) {
            return text;
        }
        Optional<String> nearest = NearestText.to(text, words);
        String near = nearest.map(word -> "; did you mean '" + word + "'?").orElse("");
        throw new RefusedException(
                spot, "no " + what + " " + Texts.quoted(text) + near + " (allowed: " + String.join(", ", words) + ")");
    }

    static RefusedException needed(String needed, JsonNode node, Spot spot) {
        String advice = node.isNull() ? "; leave the key out when there is no value" : "";
        return new RefusedException(spot, needed + " is needed, found " + described(node) + advice);
    }

    private static String described(JsonNode node) {
        if (node.isTextual()) {
            return "the text " + Texts.quoted(node.textValue());
        }
        if (node.isNumber()) {
            return "the number " + JsonLayout.inline(node);
        }
        if (node.isObject()) {
            return "an object";
        }
        return node.isArray() ? "an array" : node.asText();
    }
}
