package org.ohmloom.draw.flow;

import java.util.Optional;
import org.ohmloom.model.ElementId;

/**
 * Something current passes through: a device, a load, one pole of a source, a splice, a ground point, a chassis body.
 *
 * @param key     its identity: the element's, with + or - for a pole of a source
 * @param element the element it stands for, if it is one
 * @param name    what people call it; empty when it has no name besides its identity
 * @param role    the part it plays
 */
record FlowNode(String key, Optional<ElementId> element, String name, Role role) {

    /** The parts a node can play. */
    enum Role {
        /** Where current leaves a source. */
        SOURCE,
        /** Where it comes back to a source. */
        SINK,
        /** A device it passes: fuse, switch, relay, output. */
        DEVICE,
        /** What takes power from it. */
        LOAD,
        /** Where wires meet: a splice, a bus bar, a cavity with several wires. */
        JUNCTION,
        /** A ground point or a chassis body. */
        GROUND
    }

    /** The id it answers to when it is picked. */
    String id() {
        return element.map(ElementId::value).orElse(key);
    }

    /** Whether it is one electrical point, drawn small. */
    boolean isPoint() {
        return role == Role.JUNCTION;
    }
}
