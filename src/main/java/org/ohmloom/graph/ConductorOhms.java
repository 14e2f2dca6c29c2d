package org.ohmloom.graph;

import org.ohmloom.model.Wire;

/** Gives the end-to-end resistance of each wire, at the conductor temperature the caller has arrived at. */
@FunctionalInterface
public interface ConductorOhms {

    /** Resistance of the wire, ohm, more than 0. */
    double of(Wire wire);
}
