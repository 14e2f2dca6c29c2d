package org.ohmloom.store;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.BooleanNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.LongNode;
import com.fasterxml.jackson.databind.node.NullNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.util.function.Consumer;

/** Fills one JSON array, element by element. Got from {@link JsonText} or {@link JsonObjectWriter}. */
public final class JsonArrayWriter {
    private final ArrayNode array = JsonNodeFactory.instance.arrayNode();

    JsonArrayWriter() {}

    /** Adds a text. */
    public JsonArrayWriter add(String value) {
        return append(TextNode.valueOf(value));
    }

    /** Adds a number in full precision; null when it is not finite. */
    public JsonArrayWriter add(double value) {
        return append(JsonNumbers.node(value));
    }

    /** Adds a whole number. */
    public JsonArrayWriter add(long value) {
        return append(LongNode.valueOf(value));
    }

    /** Adds true or false. */
    public JsonArrayWriter add(boolean value) {
        return append(BooleanNode.valueOf(value));
    }

    /** Adds null. */
    public JsonArrayWriter addNull() {
        return append(NullNode.getInstance());
    }

    /** Adds an object. */
    public JsonArrayWriter object(Consumer<JsonObjectWriter> fill) {
        JsonObjectWriter inner = new JsonObjectWriter();
        fill.accept(inner);
        return append(inner.node());
    }

    /** Adds an array. */
    public JsonArrayWriter array(Consumer<JsonArrayWriter> fill) {
        JsonArrayWriter inner = new JsonArrayWriter();
        fill.accept(inner);
        return append(inner.node());
    }

    JsonNode node() {
        return array;
    }

    private JsonArrayWriter append(JsonNode value) {
        array.add(value);
        return this;
    }
}
