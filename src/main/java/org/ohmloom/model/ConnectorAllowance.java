package org.ohmloom.model;

import static org.ohmloom.units.Require.notNegative;

import java.util.OptionalDouble;

/**
 * What each wire gets more at one connector than its way is long; what is empty is as everywhere else.
 *
 * @param connector     the connector
 * @param depthMm       from the wire entry, where segments are measured to, to the crimp, mm, 0 or more
 * @param serviceLoopMm loop to reach another cavity or to open the connector, mm, 0 or more
 * @param dripLoop      whether wires come down to it and need a drip loop
 * @param dripLoopMm    what that loop takes, mm, 0 or more
 */
public record ConnectorAllowance(
        ConnectorId connector,
        OptionalDouble depthMm,
        OptionalDouble serviceLoopMm,
        boolean dripLoop,
        OptionalDouble dripLoopMm) {

    public ConnectorAllowance {
        depthMm.ifPresent(value -> notNegative(value, "depth of connector %s", connector));
        serviceLoopMm.ifPresent(value -> notNegative(value, "service loop at connector %s", connector));
        dripLoopMm.ifPresent(value -> notNegative(value, "drip loop at connector %s", connector));
    }
}
