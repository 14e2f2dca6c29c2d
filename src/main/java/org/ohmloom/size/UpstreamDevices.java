package org.ohmloom.size;

import java.util.List;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.WireId;

/** Tells which protective devices a wire relies on. */
@FunctionalInterface
public interface UpstreamDevices {

    /** Knows of no protective device anywhere. */
    UpstreamDevices NONE = wire -> List.of();

    /**
     * The nearest protective device on each way from a source to the wire; the ratings of all of them must suit its
     * conductor. Empty when a way leads to it without any, and for a wire no source reaches but through a load.
     */
    List<ComponentId> nearest(WireId wire);
}
