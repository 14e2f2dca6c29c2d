package org.ohmloom.graph;

import org.ohmloom.model.Wire;
import org.ohmloom.model.WireEnd;

/**
 * Where a probe touches a wire's end while the harness lies on the bench, everything unplugged. What shares a place is one piece of
 * metal there: wires in one cavity or one splice; on a stud, a screw or a ground point each wire's own terminal hangs free.
 */
public final class ProbePlace {

    private ProbePlace() {}

    /** The place as a test sheet names it: {@code X1.3}; {@code G2, terminal of W7}. */
    public static String of(Wire wire, WireEnd end) {
        if (end instanceof WireEnd.AtCavity || end instanceof WireEnd.AtSplice) {
            return end.text();
        }
        String own =
                end instanceof WireEnd.Loose ? "loose end of " + wire.id() : end.text() + ", terminal of " + wire.id();
        return wire.from().equals(wire.to()) ? own + (end == wire.from() ? " (from)" : " (to)") : own;
    }
}
