package org.ohmloom.size;

import java.util.List;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.WireId;

/** Tells which protective device limits a return. */
public final class RelyingDevices {
    private final ReturnDevices returns;

    /** For one set of solutions. */
    public RelyingDevices(SizingInput input) {
        returns = new ReturnDevices(input);
    }

    /** The one device all loads that return through a wire are fed by; empty when there are several or none. */
    public List<ComponentId> ofReturn(WireId wire) {
        return returns.of(wire);
    }
}
