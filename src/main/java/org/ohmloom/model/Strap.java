package org.ohmloom.model;

import static org.ohmloom.units.Require.notBlank;
import static org.ohmloom.units.Require.positive;
import static org.ohmloom.units.Require.that;

import java.util.Optional;
import java.util.OptionalDouble;

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
 * @param lengthMetres length between its eyes, m, more than 0; empty means not entered
 * @param areaMm2  copper cross-section, mm2, more than 0; empty means not entered
 */
public record Strap(
        StrapId id,
        String name,
        GroundPointId from,
        GroundPointId to,
        double ohms,
        Optional<PartId> part,
        boolean existing,
        Optional<AssemblyId> assembly,
        OptionalDouble lengthMetres,
        OptionalDouble areaMm2)
        implements Element, Assembled {

    public Strap {
        notBlank(name, "name of strap %s", id);
        that(!from.equals(to), "strap %s joins ground point %s to itself", id, from);
        positive(ohms, "resistance of strap %s", id);
        lengthMetres.ifPresent(value -> positive(value, "length of strap %s", id));
        areaMm2.ifPresent(value -> positive(value, "cross-section of strap %s", id));
    }

    /** A strap of which only the resistance is known. */
    public Strap(
            StrapId id,
            String name,
            GroundPointId from,
            GroundPointId to,
            double ohms,
            Optional<PartId> part,
            boolean existing,
            Optional<AssemblyId> assembly) {
        this(id, name, from, to, ohms, part, existing, assembly, OptionalDouble.empty(), OptionalDouble.empty());
    }
}
