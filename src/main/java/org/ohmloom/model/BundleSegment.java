package org.ohmloom.model;

import static org.ohmloom.units.Require.positive;
import static org.ohmloom.units.Require.that;

import java.util.Optional;

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
 */
public record BundleSegment(
        SegmentId id,
        BreakoutId from,
        BreakoutId to,
        double lengthMetres,
        Optional<ZoneId> zone,
        Optional<Covering> covering,
        Optional<AssemblyId> assembly)
        implements Element {

    public BundleSegment {
        that(!from.equals(to), "segment %s joins breakout %s to itself", id, from);
        positive(lengthMetres, "length of segment " + id);
    }

    /** This segment with another length, m, more than 0. */
    public BundleSegment withLengthMetres(double changed) {
        return new BundleSegment(id, from, to, changed, zone, covering, assembly);
    }
}
