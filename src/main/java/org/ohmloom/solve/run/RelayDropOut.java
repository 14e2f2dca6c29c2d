package org.ohmloom.solve.run;

import org.ohmloom.model.ComponentId;

/**
 * A relay that is pulled in and whose coil gets less than its drop-out voltage while something starts.
 *
 * @param relay        the relay
 * @param atSeconds    when that begins, s
 * @param lowestVolts  lowest voltage of its coil, V
 * @param dropOutVolts its drop-out voltage, V
 */
public record RelayDropOut(ComponentId relay, double atSeconds, double lowestVolts, double dropOutVolts) {}
