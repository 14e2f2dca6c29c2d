package org.ohmloom.store;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Collections;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.ohmloom.model.NaturalOrder;

/**
 * A map as an object, its keys in natural order; an empty one is not written.
 *
 * @param key   form of the keys
 * @param value form of the values
 */
record MapForm(SimpleForms.TextualForm key, Form value) implements Form {

    @Override
    public SortedMap<Object, Object> read(JsonNode node, Spot spot) {
        SortedMap<Object, Object> map = new TreeMap<>();
        for (Map.Entry<String, JsonNode> field : Found.object(node, spot).properties()) {
            Spot here = spot.key(field.getKey());
            map.put(key.read(field.getKey(), here), value.read(field.getValue(), here));
        }
        return map;
    }

    @Override
    public ObjectNode write(Object map, Spot spot) {
        SortedMap<String, Object> byText = new TreeMap<>(NaturalOrder.INSTANCE);
        ((Map<?, ?>) map).forEach((k, v) -> byText.put(key.toText().apply(k), v));
        ObjectNode object = JsonNodeFactory.instance.objectNode();
        byText.forEach((text, v) -> object.set(text, value.write(v, spot.key(text))));
        return object;
    }

    @Override
    public Optional<Object> whenAbsent() {
        return Optional.of(Collections.emptySortedMap());
    }
}
