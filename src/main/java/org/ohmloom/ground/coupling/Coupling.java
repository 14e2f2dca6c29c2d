package org.ohmloom.ground.coupling;

import java.util.OptionalDouble;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.StateId;
import org.ohmloom.model.WireId;
import org.ohmloom.words.Text;

/**
 * What a switching wire puts onto a signal wire beside it, at the worst edge of the state where it is worst.
 *
 * @param culprit          the wire that switches
 * @param victim           the signal wire
 * @param state            the operating state
 * @param lengthMetres     length they lie in the same bundle segments, m
 * @param separationMetres distance of their centres, m: as near as they can lie
 * @param capacitiveVolts  voltage coupled by the electric field, V, behind a shield
 * @param inductiveVolts   voltage coupled by the magnetic field, V, after twist and shield; 0 when the height over the chassis is
 *                         not entered
 * @param volts            the two together at the pin before any filter, V
 * @param filteredVolts    the two together behind the input's filter, V, where its corner is known
 * @param limitVolts       share of the allowed error that coupling may take, V at the pin
 * @param sensor           the sensor whose signal it carries
 * @param edge             the edge that does it
 * @param guardedBy        what was reckoned with: twist, shield, or nothing
 */
public record Coupling(
        WireId culprit,
        WireId victim,
        StateId state,
        double lengthMetres,
        double separationMetres,
        double capacitiveVolts,
        double inductiveVolts,
        double volts,
        OptionalDouble filteredVolts,
        OptionalDouble limitVolts,
        ComponentId sensor,
        Edge edge,
        Text guardedBy) {

    /**
     * An edge of a wire that switches.
     *
     * @param volts   height of its voltage, V; 0 where it hardly moves
     * @param amps    height of its current, A
     * @param seconds time it takes, s
     */
    public record Edge(double volts, double amps, double seconds) {

        /** The worse of two edges in every respect. */
        Edge with(Edge other) {
            return new Edge(Math.max(volts, other.volts), Math.max(amps, other.amps), Math.min(seconds, other.seconds));
        }
    }

    /** What reaches the converter: behind the filter where it is known, V. */
    public double arrivingVolts() {
        return filteredVolts.orElse(volts);
    }

    /** Whether it takes more than its share. */
    public boolean isOver() {
        return limitVolts.isPresent() && arrivingVolts() > limitVolts.getAsDouble();
    }
}
