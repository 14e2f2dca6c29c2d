package org.ohmloom.solve.charge;

import org.ohmloom.model.ComponentId;

/**
 * One load in the load tabulation of a state.
 *
 * @param component      the load, control unit, sensor, relay or converter
 * @param name           what people call it
 * @param intermittent   whether it runs for a while now and then, or the whole state is short
 * @param amps           mean current it takes from its supply in the state, A; less than its own where a freewheel path
 *                       carries it on
 * @param onAmps         current while it is on, A
 * @param fiveSecondAmps largest mean over 5 s, A
 * @param fiveMinuteAmps largest mean over 5 min, A
 * @param halfHourAmps   largest mean over 30 min, A
 */
public record LoadLine(
        ComponentId component,
        String name,
        boolean intermittent,
        double amps,
        double onAmps,
        double fiveSecondAmps,
        double fiveMinuteAmps,
        double halfHourAmps) {}
