package org.ohmloom.store;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Collection;
import org.ohmloom.model.NearestText;
import org.ohmloom.units.Quantity;
import org.ohmloom.units.Texts;
import org.ohmloom.words.Refusals;
import org.ohmloom.words.Text;

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
            throw new RefusedException(spot, "the number %s is too large to compute with", JsonLayout.inline(node));
        }
        if (Quantity.isTooSmall(value) || value == 0 && node.decimalValue().signum() != 0) {
            throw new RefusedException(spot, "the number %s is too small to compute with", JsonLayout.inline(node));
        }
        return value + 0.0;
    }

    /** One of some words. */
    static String word(JsonNode node, Collection<String> words, Text what, Spot spot) {
        String text = text(node, spot);
        if (words.contains(text)) {
            return text;
        }
        throw new RefusedException(
                spot,
                "no %s %s%s (allowed: %s)",
                what,
                Texts.quoted(text),
                NearestText.question(text, words),
                String.join(", ", words));
    }

    static RefusedException needed(String needed, JsonNode node, Spot spot) {
        return new RefusedException(
                spot,
                node.isNull()
                        ? "%s is needed, found %s; leave the key out when there is no value"
                        : "%s is needed, found %s",
                Refusals.text(needed),
                described(node));
    }

    private static Text described(JsonNode node) {
        if (node.isTextual()) {
            return Refusals.text("the text %s", Texts.quoted(node.textValue()));
        }
        if (node.isNumber()) {
            return Refusals.text("the number %s", JsonLayout.inline(node));
        }
        if (node.isObject()) {
            return Refusals.text("an object");
        }
        return node.isArray() ? Refusals.text("an array") : Text.of(node.asText());
    }
}
