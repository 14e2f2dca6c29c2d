package org.ohmloom.signal.bus.wiring;

import java.util.OptionalDouble;
import org.ohmloom.model.ComponentId;

/**
 * Where a node sits on its bus.
 *
 * @param unit         the unit
 * @param joined       whether both its lines are joined to the bus
 * @param alongMetres  where its stub leaves the trunk, m from the trunk's first end
 * @param stubMetres   length of its stub, m; 0 on the trunk itself
 * @param restOhms     what an ohmmeter reads between its lines with the bus at rest and no unit driving, ohm
 */
public record NodePlace(
        ComponentId unit,
        boolean joined,
        OptionalDouble alongMetres,
        OptionalDouble stubMetres,
        OptionalDouble restOhms) {

    static NodePlace notJoined(ComponentId unit) {
        return new NodePlace(unit, false, OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty());
    }
}
