package org.ohmloom.store;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.ohmloom.words.Text;

/**
 * One of several records, told apart by the word under {@code "kind"}, which comes first.
 *
 * @param what  what they are together, for messages
 * @param kinds the records by their words
 */
record KindForm(Text what, Map<String, RecordForm> kinds) implements Form {

    static final String KIND = "kind";

    @Override
    public Object read(JsonNode node, Spot spot) {
        ObjectNode object = Found.object(node, spot);
        JsonNode kind = object.get(KIND);
        if (kind == null) {
            List<String> words = new ArrayList<>(kinds.keySet());
            throw new RefusedException(
                    spot, "the key 'kind' is missing; a %s is one of: %s", what, String.join(", ", words));
        }
        String word = Found.word(kind, kinds.keySet(), what, spot.key(KIND));
        return Objects.requireNonNull(kinds.get(word)).read(object, spot);
    }

    @Override
    public JsonNode write(Object value, Spot spot) {
        return kinds.values().stream()
                .filter(form -> form.fields().fits(value))
                .findFirst()
                .orElseThrow()
                .write(value, spot);
    }
}
