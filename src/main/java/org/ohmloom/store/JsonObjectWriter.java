package org.ohmloom.store;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.BooleanNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.LongNode;
import com.fasterxml.jackson.databind.node.NullNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BiConsumer;
import java.util.function.Consumer;

/** Fills one JSON object, key by key. A key may be put only once. Got from {@link JsonText}. */
public final class JsonObjectWriter {
    private final ObjectNode object = JsonNodeFactory.instance.objectNode();

    JsonObjectWriter() {}

    /** Puts a text. */
    public JsonObjectWriter put(String key, String value) {
        return set(key, TextNode.valueOf(value));
    }

    /** Puts a number in full precision; null when it is not finite. */
    public JsonObjectWriter put(String key, double value) {
        return set(key, JsonNumbers.node(value));
    }

    /** Puts a whole number. */
    public JsonObjectWriter put(String key, long value) {
        return set(key, LongNode.valueOf(value));
    }

    /** Puts true or false. */
    public JsonObjectWriter put(String key, boolean value) {
        return set(key, BooleanNode.valueOf(value));
    }

    /** Puts a number; null when there is none. */
    public JsonObjectWriter put(String key, OptionalDouble value) {
        return put(key, value.orElse(Double.NaN));
    }

    /** Puts a text; null when there is none. */
    public JsonObjectWriter put(String key, Optional<String> value) {
        return value.isPresent() ? put(key, value.get()) : putNull(key);
    }

    /** Puts null. */
    public JsonObjectWriter putNull(String key) {
        return set(key, NullNode.getInstance());
    }

    /** Puts an object. */
    public JsonObjectWriter object(String key, Consumer<JsonObjectWriter> fill) {
        JsonObjectWriter inner = new JsonObjectWriter();
        fill.accept(inner);
        return set(key, inner.node());
    }

    /** Puts an array. */
    public JsonObjectWriter array(String key, Consumer<JsonArrayWriter> fill) {
        JsonArrayWriter inner = new JsonArrayWriter();
        fill.accept(inner);
        return set(key, inner.node());
    }

    /** Puts an array of texts. */
    public JsonObjectWriter texts(String key, Iterable<String> values) {
        return array(key, array -> values.forEach(array::add));
    }

    /** Puts an array with one object for each element. */
    public <T> JsonObjectWriter objects(
            String key, Iterable<? extends T> elements, BiConsumer<T, JsonObjectWriter> fill) {
        return array(key, array -> elements.forEach(element -> array.object(inner -> fill.accept(element, inner))));
    }

    JsonNode node() {
        return object;
    }

    private JsonObjectWriter set(String key, JsonNode value) {
        if (object.has(key)) {
            throw new IllegalArgumentException("the key '" + key + "' was put already");
        }
        object.set(key, value);
        return this;
    }
}
