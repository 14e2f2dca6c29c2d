package org.ohmloom.store;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;

/**
 * A list as an array; an empty one is not written.
 *
 * @param element form of the elements
 */
record ListForm(Form element) implements Form {

    @Override
    public List<Object> read(JsonNode node, Spot spot) {
        List<Object> values = new ArrayList<>();
        for (JsonNode child : Found.array(node, spot)) {
            String name = element instanceof RecordForm form ? form.nameOf(child) : "";
            values.add(element.read(child, spot.item(values.size(), name)));
        }
        return values;
    }

    @Override
    public ArrayNode write(Object value, Spot spot) {
        ArrayNode array = JsonNodeFactory.instance.arrayNode();
        for (Object child : (Collection<?>) value) {
            String name = element instanceof RecordForm form ? form.nameOf(child) : "";
            array.add(element.write(child, spot.item(array.size(), name)));
        }
        return array;
    }

    @Override
    public Optional<Object> whenAbsent() {
        return Optional.of(List.of());
    }
}
