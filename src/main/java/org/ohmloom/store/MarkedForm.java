package org.ohmloom.store;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.BooleanNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.ohmloom.words.Text;

/**
 * One of several records, told apart by which key is there: {@code {"splice": "S1"}} is an end in a splice.
 *
 * @param what    what they are together, for messages
 * @param byKey   the records by the key that marks them
 */
record MarkedForm(Text what, Map<String, RecordForm> byKey) implements Form {

    @Override
    public Object read(JsonNode node, Spot spot) {
        ObjectNode object = Found.object(node, spot);
        List<String> marks = byKey.keySet().stream().filter(object::has).toList();
        if (marks.size() != 1) {
            String keys = String.join(", ", byKey.keySet());
            throw marks.isEmpty()
                    ? new RefusedException(spot, "%s has exactly one of the keys %s; none is there", what, keys)
                    : new RefusedException(
                            spot,
                            "%s has exactly one of the keys %s; found %s",
                            what,
                            keys,
                            Text.joined(" and ", marks.stream().map(Text::of).toList()));
        }
        RecordForm form = Objects.requireNonNull(byKey.get(marks.get(0)));
        JsonNode mark = object.get(marks.get(0));
        if (form.leading().containsKey(marks.get(0)) && !mark.equals(BooleanNode.TRUE)) {
            throw Found.needed("true", mark, spot.key(marks.get(0)));
        }
        return form.read(object, spot);
    }

    @Override
    public JsonNode write(Object value, Spot spot) {
        return byKey.values().stream()
                .filter(form -> form.fields().fits(value))
                .findFirst()
                .orElseThrow()
                .write(value, spot);
    }
}
