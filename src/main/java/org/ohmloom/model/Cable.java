package org.ohmloom.model;

import static org.ohmloom.units.Require.notBlank;
import static org.ohmloom.units.Require.positive;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A multicore cable or a twisted pair; its cores are the wires that name it.
 *
 * @param id                identity
 * @param name              what people call it
 * @param kind              how its cores lie together
 * @param shielded          whether it has a shield; the shield or its drain is a wire of class SHIELD in this cable
 * @param outsideDiameterMm outside diameter, mm, more than 0, if known
 * @param layLengthMm       length of one full twist, mm, more than 0, if twisted
 * @param part              entry of the parts list
 * @param assembly          the assembly it belongs to
 */
public record Cable(
        CableId id,
        String name,
        Kind kind,
        boolean shielded,
        OptionalDouble outsideDiameterMm,
        OptionalDouble layLengthMm,
        Optional<PartId> part,
        Optional<AssemblyId> assembly)
        implements Element, Assembled {

    /** How the cores of a cable lie together. */
    public enum Kind {
        MULTICORE,
        TWISTED_PAIR
    }

    public Cable {
        notBlank(name, "name of cable %s", id);
        outsideDiameterMm.ifPresent(value -> positive(value, "outside diameter of cable %s", id));
        layLengthMm.ifPresent(value -> positive(value, "lay length of cable %s", id));
    }

    /** A twisted pair of no entered diameter, lay and part. */
    public static Cable pair(CableId id, String name, boolean shielded, Optional<AssemblyId> assembly) {
        return new Cable(
                id,
                name,
                Kind.TWISTED_PAIR,
                shielded,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                Optional.empty(),
                assembly);
    }

    /** Whether it is bought as a cable; a plain pair without a part is twisted at the bench from single wires. */
    public boolean isBought() {
        return part.isPresent() || shielded || kind == Kind.MULTICORE;
    }
}
