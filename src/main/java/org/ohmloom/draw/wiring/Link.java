package org.ohmloom.draw.wiring;

import java.util.Optional;
import org.ohmloom.model.Wire;

/**
 * A line between two symbols, from the left to the right.
 *
 * @param id   identity within the circuit
 * @param wire the wire it is; empty for a shortened way and for a bolted joint
 * @param from key of the left one
 * @param out  where it leaves
 * @param to   key of the right one
 * @param in   where it arrives
 */
record Link(String id, Optional<Wire> wire, String from, Port out, String to, Port in) {

    /** The same seen from the other side. */
    Link turned() {
        return new Link(id, wire, to, in, from, out);
    }

    Link between(String otherFrom, String otherTo) {
        return new Link(id, wire, otherFrom, out, otherTo, in);
    }
}
