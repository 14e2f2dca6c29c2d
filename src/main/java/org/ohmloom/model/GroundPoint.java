package org.ohmloom.model;

import static org.ohmloom.units.Require.notBlank;
import static org.ohmloom.units.Require.notNegative;
import static org.ohmloom.units.Require.that;

import java.util.Optional;

/**
 * A stud or bolt where wires meet a chassis body, or several on one plate.
 *
 * @param id        identity
 * @param name      what people call it
 * @param body      the chassis body it is on
 * @param jointOhms resistance of the joint between the stacked terminals and the body, ohm, 0 or more; the current of
 *                  all its wires passes it together
 * @param at        where its wires leave the physical harness
 * @param zone      where it sits
 * @param part      ring terminal stud or fastener, entry of the parts list
 * @param existing  already in the vehicle
 * @param assembly  the assembly it belongs to
 * @param studs     how many studs or bolts share its terminals, 1 or more; empty means one
 */
public record GroundPoint(
        GroundPointId id,
        String name,
        ChassisBodyId body,
        double jointOhms,
        Optional<BreakoutId> at,
        Optional<ZoneId> zone,
        Optional<PartId> part,
        boolean existing,
        Optional<AssemblyId> assembly,
        Optional<Integer> studs)
        implements Element {

    public GroundPoint {
        notBlank(name, "name of ground point " + id);
        notNegative(jointOhms, "joint resistance of ground point " + id);
        studs.ifPresent(count -> that(count >= 1, "ground point %s needs at least one stud, not %s", id, count));
    }

    /** A ground point of one stud. */
    public GroundPoint(
            GroundPointId id,
            String name,
            ChassisBodyId body,
            double jointOhms,
            Optional<BreakoutId> at,
            Optional<ZoneId> zone,
            Optional<PartId> part,
            boolean existing,
            Optional<AssemblyId> assembly) {
        this(id, name, body, jointOhms, at, zone, part, existing, assembly, Optional.empty());
    }

    /** Studs or bolts that share its terminals. */
    public int studCount() {
        return studs.orElse(1);
    }
}
