package org.ohmloom.signal.wiring;

import java.util.List;
import java.util.Optional;
import org.ohmloom.model.AssemblyId;
import org.ohmloom.model.BreakoutId;
import org.ohmloom.model.CableId;
import org.ohmloom.model.SignalClass;
import org.ohmloom.model.WireEnd;
import org.ohmloom.signal.way.Ways;

/**
 * An end that a pin's line must reach.
 *
 * @param end         the end; loose for the drain of a shield
 * @param at          where it lies, if that is known
 * @param way         the steps that are left to it
 * @param signalClass class of the last wire to it
 * @param circuit     name of its circuit
 * @param cable       the cable its last wire is a core of, if any
 * @param assembly    the assembly its last wire belongs to
 */
record LineTarget(
        WireEnd end,
        Optional<BreakoutId> at,
        List<Ways.Step> way,
        SignalClass signalClass,
        String circuit,
        Optional<CableId> cable,
        Optional<AssemblyId> assembly) {

    LineTarget {
        way = List.copyOf(way);
    }

    /** This target with other steps left to it. */
    LineTarget after(int steps) {
        return new LineTarget(end, at, way.subList(steps, way.size()), signalClass, circuit, cable, assembly);
    }

    /** This target by another way. */
    LineTarget along(List<Ways.Step> changed) {
        return new LineTarget(end, at, changed, signalClass, circuit, cable, assembly);
    }

    /** The step through the first pair of connectors on the way; -1 without one. */
    int firstPair() {
        for (int k = 0; k < way.size(); k++) {
            if (way.get(k).isThrough()) {
                return k;
            }
        }
        return -1;
    }
}
