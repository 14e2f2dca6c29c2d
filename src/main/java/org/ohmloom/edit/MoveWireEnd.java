package org.ohmloom.edit;

import java.util.OptionalDouble;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireEnd;
import org.ohmloom.model.WireId;
import org.ohmloom.words.Text;

/**
 * Joins one end of a wire to another place. A measured resistance belongs to the wire as it lay and goes.
 *
 * @param wire         the wire
 * @param old          what the end is joined to now
 * @param place        what it is joined to afterwards
 * @param lengthMetres length of the wire afterwards, m, more than 0; empty takes its way and the allowances of each end
 */
public record MoveWireEnd(WireId wire, WireEnd old, WireEnd place, OptionalDouble lengthMetres) implements Edit {

    @Override
    public Text label() {
        return place instanceof WireEnd.Loose
                ? Labels.text("lift", wire, old.text())
                : Labels.text("move-end", wire, old.text(), place.text());
    }

    @Override
    public Harness apply(Harness before) {
        Wire now = before.wires().get(wire);
        boolean from = now.from().equals(old);
        if (old.equals(place) || (!from && !now.to().equals(old))) {
            return before;
        }
        Wire moved = now.unmeasured()
                .withEnds(from ? place : now.from(), from ? now.to() : place)
                .withLengthMetres(lengthMetres);
        return before.with(moved);
    }
}
