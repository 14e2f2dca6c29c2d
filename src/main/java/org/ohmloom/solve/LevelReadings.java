package org.ohmloom.solve;

import java.util.ArrayList;
import java.util.List;

/**
 * What one pass over all moments shows of the inductive loads and the capacitors.
 *
 * @param chokes     the voltages of each inductive load
 * @param reservoirs the currents of each capacitor
 */
record LevelReadings(List<ChokeReading> chokes, List<ClockReading> reservoirs) {

    LevelReadings(List<Choke> chokes, List<Reservoir> reservoirs, List<Clock> clocks) {
        this(new ArrayList<>(), new ArrayList<>());
        chokes.forEach(choke -> this.chokes.add(new ChokeReading(choke, clocks)));
        reservoirs.forEach(reservoir -> this.reservoirs.add(new ClockReading(clocks)));
    }
}
