package org.ohmloom.ground.sensor;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import org.ohmloom.graph.Adjacency;
import org.ohmloom.graph.Branch;
import org.ohmloom.graph.Law;
import org.ohmloom.graph.PointId;
import org.ohmloom.solve.Clock;
import org.ohmloom.solve.Solution;

/**
 * How a reading swings with what switches at a duty: for each clock the largest departure from the mean over the stretches of its
 * period, everything else averaged. The departures of the voltages are those of the mean currents of a stretch times the
 * resistances on a way over conductors.
 *
 * @param swings the swings, in the unit of the reading
 */
record Ripples(List<Swing> swings) {

    /** Swings below it are rounding, in parts of the reading's unit. */
    private static final double ROUNDING = 1e-12;

    /**
     * What one clock does.
     *
     * @param hertz     its frequency, Hz
     * @param amplitude largest departure from the mean, in the unit of the reading
     */
    record Swing(double hertz, double amplitude) {}

    /**
     * Finds the swings.
     *
     * @param link          the sensor and its input
     * @param solution      the solved state
     * @param perReturnVolt change of the reading for one volt at the sensor's return
     * @param perSupplyVolt change of the reading for one volt at the sensor's supply
     */
    static Ripples of(SensorLink link, Solution solution, double perReturnVolt, double perSupplyVolt) {
        List<Swing> swings = new ArrayList<>();
        if (solution.duty().clocks().isEmpty()) {
            return new Ripples(swings);
        }
        Adjacency conductors = Adjacency.of(solution.network(), Branch::isPlainResistance);
        List<Step> back = link.back()
                .map(point -> way(conductors, link.reference(), point))
                .orElse(List.of());
        List<Step> feed = link.fed()
                .flatMap(pin ->
                        solution.network().index().terminal(link.unitComponent().id(), pin.name()))
                .flatMap(from -> link.supply().map(to -> way(conductors, from, to)))
                .orElse(List.of());
        for (Clock clock : solution.duty().clocks()) {
            double amplitude = 0;
            for (int stretch = 0; stretch < clock.stretches().size(); stretch++) {
                amplitude = Math.max(
                        amplitude,
                        Math.abs(perReturnVolt * departure(back, solution, clock, stretch)
                                + perSupplyVolt * departure(feed, solution, clock, stretch)));
            }
            if (amplitude > ROUNDING) {
                swings.add(new Swing(clock.frequencyHertz(), amplitude));
            }
        }
        return new Ripples(swings);
    }

    /** Amplitude behind a first-order filter: each swing over the root of 1 + (f / fc)^2, all at their worst together. */
    double behind(double cornerHertz) {
        return swings.stream()
                .mapToDouble(swing -> swing.amplitude() / Math.hypot(1, swing.hertz() / cornerHertz))
                .sum();
    }

    /** 0 where nothing swings, so that no filter needs to be known; empty otherwise. */
    OptionalDouble none() {
        return swings.isEmpty() ? OptionalDouble.of(0) : OptionalDouble.empty();
    }

    /** A branch on a way, and whether the way runs from its {@code from} to its {@code to}. */
    private record Step(Branch branch, boolean along) {}

    /** V(end of the way) - V(start), less its mean, in a stretch of a clock, V. */
    private static double departure(List<Step> way, Solution solution, Clock clock, int stretch) {
        double volts = 0;
        for (Step step : way) {
            double amps = solution.duty().deviationAmps(step.branch().id(), clock, stretch);
            double drop = amps * ((Law.Resistance) step.branch().law()).ohms();
            volts -= step.along() ? drop : -drop;
        }
        return volts;
    }

    private static List<Step> way(Adjacency conductors, PointId from, PointId to) {
        Map<PointId, Step> arrivals = new HashMap<>();
        Set<PointId> seen = new LinkedHashSet<>(List.of(from));
        List<PointId> open = new ArrayList<>(List.of(from));
        for (int next = 0; next < open.size() && !seen.contains(to); next++) {
            PointId point = open.get(next);
            for (Branch branch : conductors.at(point)) {
                PointId other = Adjacency.across(branch, point);
                if (seen.add(other)) {
                    arrivals.put(other, new Step(branch, branch.from().equals(point)));
                    open.add(other);
                }
            }
        }
        List<Step> way = new ArrayList<>();
        for (PointId point = to; arrivals.containsKey(point); ) {
            Step step = arrivals.get(point);
            way.add(step);
            point = Adjacency.across(step.branch(), point);
        }
        return way;
    }
}
