package org.ohmloom.edit;

import org.ohmloom.model.Harness;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireEnd;
import org.ohmloom.model.WireId;

/**
 * One of the two ends of a wire.
 *
 * @param wire   the wire
 * @param atFrom whether it is the end the wire starts at
 */
public record EndOfWire(WireId wire, boolean atFrom) {

    /** What the end is joined to. */
    public WireEnd place(Harness harness) {
        Wire found = harness.wires().get(wire);
        return atFrom ? found.from() : found.to();
    }

    /** What the other end of the wire is joined to. */
    public WireEnd other(Harness harness) {
        return new EndOfWire(wire, !atFrom).place(harness);
    }

    /** The wire with this end joined to another place. */
    Wire joined(Wire now, WireEnd place) {
        return atFrom ? now.withEnds(place, now.to()) : now.withEnds(now.from(), place);
    }
}
