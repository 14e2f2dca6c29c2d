package org.ohmloom.model;

import static org.ohmloom.units.Require.notBlank;
import static org.ohmloom.units.Require.positive;
import static org.ohmloom.units.Require.that;

import java.util.Optional;

/**
 * A bonding strap between two ground points, usually of different chassis bodies.
 *
 * @param id       identity
 * @param name     what people call it
 * @param from     one ground point
 * @param to       the other
 * @param ohms     resistance with its joints, ohm, more than 0
 * @param part     entry of the parts list
 * @param existing already in the vehicle
 * @param assembly the assembly it belongs to
 */
public record Strap(
        StrapId id,
        String name,
        GroundPointId from,
        GroundPointId to,
        double ohms,
        Optional<PartId> part,
        boolean existing,
        Optional<AssemblyId> assembly)
        implements Element {

    public Strap {
        notBlank(name, "name of strap " + id);
        that(!from.equals(to), "strap %s joins ground point %s to itself", id, from);
        positive(ohms, "resistance of strap " + id);
    }
}
