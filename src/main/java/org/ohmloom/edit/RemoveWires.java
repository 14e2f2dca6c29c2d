package org.ohmloom.edit;

import java.util.List;
import org.ohmloom.model.Harness;
import org.ohmloom.model.WireId;

/**
 * Takes wires out of the harness.
 *
 * @param wires the wires; nothing else may refer to them
 */
public record RemoveWires(List<WireId> wires) implements Edit {

    public RemoveWires {
        wires = List.copyOf(wires);
    }

    @Override
    public String label() {
        return "Remove " + Subjects.text(wires, "wires");
    }

    @Override
    public Harness apply(Harness before) {
        return before.withoutAll(wires);
    }
}
