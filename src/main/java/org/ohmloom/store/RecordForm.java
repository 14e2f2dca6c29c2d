package org.ohmloom.store;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.ohmloom.words.Worded;

/**
 * A record as an object.
 *
 * @param fields  its components
 * @param leading keys written before them, always with the same values; empty for most records
 */
record RecordForm(RecordFields fields, Map<String, JsonNode> leading) implements Form {

    @Override
    public Object read(JsonNode node, Spot spot) {
        ObjectNode object = Found.object(node, spot);
        Map<String, Object> values = fields.read(object, spot);
        Unknown.keep(object, this::knows, spot);
        try {
            return fields.create(values);
        } catch (IllegalArgumentException refused) {
            String reason = String.valueOf(refused.getMessage());
            throw new RefusedException(
                    fields.quotedBy(reason, values).map(spot::key).orElse(spot), Worded.of(refused));
        }
    }

    @Override
    public ObjectNode write(Object value, Spot spot) {
        ObjectNode object = JsonNodeFactory.instance.objectNode();
        object.setAll(leading);
        fields.write(value, object, spot);
        Unknown.giveBack(object, spot);
        return object;
    }

    /** Name of a record of this form as it stands in the file: its id or name, empty when it has neither. */
    String nameOf(JsonNode node) {
        return nameKey()
                .map(node::get)
                .filter(JsonNode::isTextual)
                .map(JsonNode::textValue)
                .orElse("");
    }

    /** Name of a record of this form: its id or name, empty when it has neither. */
    String nameOf(Object value) {
        return nameKey().map(key -> fields.get(value, key).toString()).orElse("");
    }

    private Optional<String> nameKey() {
        return Stream.of("id", "name").filter(fields.keys()::contains).findFirst();
    }

    private boolean knows(String key) {
        return leading.containsKey(key) || fields.keys().contains(key);
    }
}
