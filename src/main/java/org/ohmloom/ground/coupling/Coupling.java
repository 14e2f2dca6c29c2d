package org.ohmloom.ground.coupling;

import java.util.OptionalDouble;
import org.ohmloom.model.StateId;
import org.ohmloom.model.WireId;

/**
 * What a switching wire puts onto a signal wire beside it.
 *
 * @param culprit         the wire that switches
 * @param victim          the signal wire
 * @param state           the operating state
 * @param lengthMetres    length they lie side by side, m
 * @param separationMetres distance of their centres, m
 * @param capacitiveVolts voltage coupled by the electric field at the edge, V
 * @param inductiveVolts  voltage coupled by the magnetic field at the edge, V
 * @param volts           the two together at the signal's input, V, after twist and shield
 * @param filteredVolts   after the input's filter, V, where its corner is known
 * @param limitVolts      share of the allowed error that coupling may take, V, where the sensor's error can be judged
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
        OptionalDouble limitVolts) {}
