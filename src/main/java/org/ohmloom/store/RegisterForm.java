package org.ohmloom.store;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.Optional;
import org.ohmloom.model.Register;

/**
 * A register as an array in the order of ids; read as a list, since only the whole file can tell whether ids repeat.
 *
 * @param elements form of the list of elements
 */
record RegisterForm(ListForm elements) implements Form {

    @Override
    public List<Object> read(JsonNode node, Spot spot) {
        return elements.read(node, spot);
    }

    @Override
    public JsonNode write(Object register, Spot spot) {
        return elements.write(((Register<?, ?>) register).all(), spot);
    }

    @Override
    public Optional<Object> whenAbsent() {
        return elements.whenAbsent();
    }

    @Override
    public boolean leavesOut(Object register) {
        return ((Register<?, ?>) register).isEmpty();
    }
}
