package org.ohmloom.store;

import com.fasterxml.jackson.databind.node.IntNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.function.UnaryOperator;

/**
 * The steps that bring older files up to date: the first makes version 2 of a file of version 1, the next version 3 of that,
 * and so on. The newest version is therefore one more than the count of steps.
 *
 * @param steps the steps in order; each gets the object of a file, may change it, and must stand values of any type
 */
record Migrations(List<UnaryOperator<ObjectNode>> steps) {

    /** The steps of this program; version 1 is the first and needs none. */
    static final Migrations STEPS = new Migrations(List.of());

    Migrations {
        steps = List.copyOf(steps);
    }

    /** The version this program writes. */
    int currentVersion() {
        return steps.size() + 1;
    }

    /** A file of an older or the current version as one of the current version. */
    ObjectNode toCurrent(ObjectNode file, int version) {
        ObjectNode current = file;
        for (UnaryOperator<ObjectNode> step : steps.subList(version - 1, steps.size())) {
            current = step.apply(current);
        }
        current.set("version", IntNode.valueOf(currentVersion()));
        return current;
    }
}
