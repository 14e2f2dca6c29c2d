package org.ohmloom.model;

import static org.ohmloom.units.Require.notBlank;
import static org.ohmloom.units.Require.notNegative;
import static org.ohmloom.units.Require.positive;
import static org.ohmloom.units.Require.that;

import java.util.Optional;
import java.util.OptionalDouble;

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
 * @param studMm    thread diameter of a stud, mm, more than 0: 8 for M8
 * @param torque    tightening torque with the document that gives it, in words
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
        Optional<Integer> studs,
        OptionalDouble studMm,
        Optional<String> torque)
        implements Element, Assembled {

    public GroundPoint {
        notBlank(name, "name of ground point %s", id);
        notNegative(jointOhms, "joint resistance of ground point %s", id);
        studs.ifPresent(count -> that(count >= 1, "ground point %s needs at least one stud, not %s", id, count));
        studMm.ifPresent(value -> positive(value, "thread diameter of ground point %s", id));
        torque.ifPresent(value -> notBlank(value, "torque of ground point %s", id));
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
        this(
                id,
                name,
                body,
                jointOhms,
                at,
                zone,
                part,
                existing,
                assembly,
                Optional.empty(),
                OptionalDouble.empty(),
                Optional.empty());
    }

    /** This ground point as one that is in the vehicle already. */
    public GroundPoint asExisting() {
        return new GroundPoint(id, name, body, jointOhms, at, zone, part, true, assembly, studs, studMm, torque);
    }

    /** This ground point with another resistance of its joint, ohm, 0 or more. */
    public GroundPoint withJointOhms(double changed) {
        return new GroundPoint(id, name, body, changed, at, zone, part, existing, assembly, studs, studMm, torque);
    }

    /** Studs or bolts that share its terminals. */
    public int studCount() {
        return studs.orElse(1);
    }
}
