package org.ohmloom.bundle;

import java.util.Optional;
import org.ohmloom.model.Wire;
import org.ohmloom.tables.ConductorRow;

/** Tells the conductor of a wire; empty while its size is open. */
@FunctionalInterface
public interface ConductorRows {
    /** The conductor of a wire. */
    Optional<ConductorRow> of(Wire wire);
}
