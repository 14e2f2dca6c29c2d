package org.ohmloom.model;

import static org.ohmloom.units.Require.notNegative;
import static org.ohmloom.units.Require.positive;

import java.util.List;

/**
 * A diode: conducts from {@code anode} to {@code cathode} behind a threshold, blocks the other way.
 *
 * @param forwardVolts threshold, V, 0 or more
 * @param forwardOhms  slope resistance while conducting, ohm, more than 0
 * @param limitAmps    most continuous current, A, more than 0
 */
public record Diode(double forwardVolts, double forwardOhms, double limitAmps) implements Device {

    /** Terminal names. */
    public static final String ANODE = "anode", CATHODE = "cathode";

    public Diode {
        notNegative(forwardVolts, "diode threshold");
        positive(forwardOhms, "diode slope resistance");
        positive(limitAmps, "diode current limit");
    }

    @Override
    public List<String> terminals() {
        return List.of(ANODE, CATHODE);
    }
}
