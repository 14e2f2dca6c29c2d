package org.ohmloom.store;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Optional;

/**
 * A value that may be absent.
 *
 * @param value form of the value
 */
record OptionalForm(Form value) implements Form {

    @Override
    public Object read(JsonNode node, Spot spot) {
        return Optional.of(value.read(node, spot));
    }

    @Override
    public JsonNode write(Object optional, Spot spot) {
        return value.write(((Optional<?>) optional).orElseThrow(), spot);
    }

    @Override
    public Optional<Object> whenAbsent() {
        return Optional.of(Optional.empty());
    }
}
