package org.ohmloom.solve.charge;

import org.ohmloom.model.StateId;

/**
 * A battery at one instant of a sequence.
 *
 * @param seconds        time since the sequence began, s; the end of one state and the beginning of the next share it
 * @param state          the state it is in
 * @param amps           current it gives, A; negative while it is charged
 * @param volts          voltage at its terminals, V
 * @param chargeFraction charge level, 0 to 1
 */
public record ChargeSample(double seconds, StateId state, double amps, double volts, double chargeFraction) {}
