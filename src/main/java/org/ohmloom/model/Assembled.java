package org.ohmloom.model;

import java.util.Optional;

/** What may belong to an assembly. */
public interface Assembled {

    /** The assembly it belongs to; empty for none. */
    Optional<AssemblyId> assembly();
}
