package org.ohmloom.model;

import static org.ohmloom.units.Require.notBlank;
import static org.ohmloom.units.Require.notNegative;

import java.util.Optional;

/**
 * A place where wires are joined inside the harness.
 *
 * @param id        identity
 * @param name      what people call it
 * @param jointOhms resistance from each wire to the splice, ohm, 0 or more
 * @param place     where it lies on the physical harness
 * @param part      splice sleeve or ferrule, entry of the parts list
 * @param existing  already in the vehicle
 * @param assembly  the assembly it belongs to
 */
public record Splice(
        SpliceId id,
        String name,
        double jointOhms,
        Optional<Place> place,
        Optional<PartId> part,
        boolean existing,
        Optional<AssemblyId> assembly)
        implements Element {

    public Splice {
        notBlank(name, "name of splice " + id);
        notNegative(jointOhms, "joint resistance of splice " + id);
    }
}
