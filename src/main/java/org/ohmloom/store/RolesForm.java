package org.ohmloom.store;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import org.ohmloom.model.PinRole;

/**
 * The capabilities of a pin: an array of roles in their own order, left out when it would hold the pin's role only.
 *
 * @param roles form of a list of roles
 */
record RolesForm(ListForm roles) implements Form {

    @Override
    public Object read(JsonNode node, Spot spot) {
        EnumSet<PinRole> set = EnumSet.noneOf(PinRole.class);
        roles.read(node, spot).forEach(role -> set.add((PinRole) role));
        return set;
    }

    @Override
    public ArrayNode write(Object value, Spot spot) {
        return roles.write(value, spot);
    }

    @Override
    public Optional<Object> whenAbsent() {
        return Optional.of(Set.of());
    }

    @Override
    public boolean leavesOut(Object value) {
        return ((Set<?>) value).size() <= 1;
    }
}
