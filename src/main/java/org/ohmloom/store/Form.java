package org.ohmloom.store;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Optional;

/** How the values of one type stand in a harness file. */
interface Form {

    /**
     * The value a node of the file stands for.
     *
     * @throws RefusedException when it stands for none
     */
    Object read(JsonNode node, Spot spot);

    /** The node for a value. */
    JsonNode write(Object value, Spot spot);

    /** What an absent key means; such a value is not written. Empty when the key is required. */
    default Optional<Object> whenAbsent() {
        return Optional.empty();
    }

    /** Whether this value is told by leaving its key out. */
    default boolean leavesOut(Object value) {
        return whenAbsent().equals(Optional.of(value));
    }
}
