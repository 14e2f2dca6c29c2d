package org.ohmloom.model;

import static org.ohmloom.units.Require.positive;
import static org.ohmloom.units.Require.that;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A stretch of the physical harness between two breakouts.
 *
 * @param id           identity
 * @param from         one end
 * @param to           the other end
 * @param lengthMetres length, m, more than 0
 * @param zone         where it lies; empty means the default ambient
 * @param covering     what is over it
 * @param assembly     the assembly it belongs to
 * @param layLengthMm  length of one full turn of the outermost layer, mm, more than 0, where the wires are twisted in
 *                     concentric layers; empty where they lie straight
 */
public record BundleSegment(
        SegmentId id,
        BreakoutId from,
        BreakoutId to,
        double lengthMetres,
        Optional<ZoneId> zone,
        Optional<Covering> covering,
        Optional<AssemblyId> assembly,
        OptionalDouble layLengthMm)
        implements Element, Assembled {

    public BundleSegment {
        that(!from.equals(to), "segment %s joins breakout %s to itself", id, from);
        positive(lengthMetres, "length of segment %s", id);
        layLengthMm.ifPresent(value -> positive(value, "lay length of segment %s", id));
    }

    /** A segment whose wires lie straight. */
    public BundleSegment(
            SegmentId id,
            BreakoutId from,
            BreakoutId to,
            double lengthMetres,
            Optional<ZoneId> zone,
            Optional<Covering> covering,
            Optional<AssemblyId> assembly) {
        this(id, from, to, lengthMetres, zone, covering, assembly, OptionalDouble.empty());
    }

    /** This segment with another length, m, more than 0. */
    public BundleSegment withLengthMetres(double changed) {
        return new BundleSegment(id, from, to, changed, zone, covering, assembly, layLengthMm);
    }

    /** This segment under another covering. */
    public BundleSegment withCovering(Covering changed) {
        return new BundleSegment(id, from, to, lengthMetres, zone, Optional.of(changed), assembly, layLengthMm);
    }
}
