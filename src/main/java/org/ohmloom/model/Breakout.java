package org.ohmloom.model;

import static org.ohmloom.units.Require.notBlank;

import java.util.Optional;

/**
 * A point of the physical harness where bundle segments meet or end.
 *
 * @param id       identity
 * @param name     what people call it
 * @param assembly the assembly it belongs to
 */
public record Breakout(BreakoutId id, String name, Optional<AssemblyId> assembly) implements Element, Assembled {

    public Breakout {
        notBlank(name, "name of breakout %s", id);
    }
}
