package org.ohmloom.edit;

import java.util.List;
import java.util.OptionalDouble;
import org.ohmloom.model.Element;
import org.ohmloom.model.Harness;
import org.ohmloom.model.WireId;
import org.ohmloom.words.Text;

/**
 * Sets the length of wires.
 *
 * @param wires        the wires
 * @param lengthMetres length, m, more than 0; empty takes its way and the allowances of each end
 */
public record SetWireLength(List<WireId> wires, OptionalDouble lengthMetres) implements Edit {

    public SetWireLength {
        wires = List.copyOf(wires);
    }

    @Override
    public Text label() {
        return Labels.text("set-length", Labels.subjects(wires, "wires"));
    }

    @Override
    public Harness apply(Harness before) {
        List<Element> changed = wires.stream()
                .map(id -> (Element) before.wires().get(id).withLengthMetres(lengthMetres))
                .toList();
        return before.withAll(changed);
    }
}
