package org.ohmloom.store;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Optional;

/**
 * A value that stands for a usual one when its key is absent.
 *
 * @param value form of the value
 * @param usual the usual value
 */
record DefaultForm(Form value, Object usual) implements Form {

    @Override
    public Object read(JsonNode node, Spot spot) {
        return value.read(node, spot);
    }

    @Override
    public JsonNode write(Object written, Spot spot) {
        return value.write(written, spot);
    }

    @Override
    public Optional<Object> whenAbsent() {
        return Optional.of(usual);
    }
}
