package org.ohmloom.solve;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import org.ohmloom.graph.Branch;
import org.ohmloom.graph.BranchId;
import org.ohmloom.graph.Law;
import org.ohmloom.graph.Pulse;

/**
 * A clock that outputs share: they keep their phases to each other, and none to the outputs of another clock. Its period
 * is cut wherever one of its outputs switches.
 *
 * @param id             name; with the frequency where outputs of one clock have different ones, which makes it several
 * @param frequencyHertz periods in a second, Hz
 * @param stretches      the parts of its period, in order of time
 */
public record Clock(String id, double frequencyHertz, List<Stretch> stretches) {

    /** Edges nearer to each other than this share of a period are one. */
    private static final double SAME_FRACTION = 1e-9;

    public Clock {
        stretches = List.copyOf(stretches);
    }

    /** Length of the period, s. */
    public double periodSeconds() {
        return 1 / frequencyHertz;
    }

    /** When a branch is on, if it switches. */
    static Optional<Pulse> pulse(Law law) {
        if (law instanceof Law.SwitchedResistance output) {
            return Optional.of(output.pulse());
        }
        return law instanceof Law.Cycled load ? Optional.of(load.pulse()) : Optional.empty();
    }

    /** The clocks of all that switches, in the order of their names. */
    static List<Clock> of(Iterable<Branch> branches) {
        Map<String, Map<Double, Map<BranchId, Pulse>>> byClock = new TreeMap<>();
        for (Branch branch : branches) {
            pulse(branch.law()).ifPresent(pulse -> byClock.computeIfAbsent(pulse.clock(), clock -> new TreeMap<>())
                    .computeIfAbsent(pulse.frequencyHertz(), frequency -> new LinkedHashMap<>())
                    .put(branch.id(), pulse));
        }
        List<Clock> clocks = new ArrayList<>();
        byClock.forEach((name, byFrequency) -> byFrequency.forEach((frequency, pulses) -> clocks.add(new Clock(
                byFrequency.size() == 1 ? name : name + " at " + frequency + " Hz", frequency, cut(pulses)))));
        return clocks;
    }

    private static List<Stretch> cut(Map<BranchId, Pulse> pulses) {
        TreeSet<Double> edges = new TreeSet<>();
        for (Pulse pulse : pulses.values()) {
            add(edges, pulse.phaseFraction());
            double fall = pulse.phaseFraction() + pulse.dutyFraction();
            add(edges, fall >= 1 ? fall - 1 : fall);
        }
        List<Double> starts = List.copyOf(edges);
        List<Stretch> stretches = new ArrayList<>();
        for (int number = 0; number < starts.size(); number++) {
            double start = starts.get(number);
            double end = number + 1 < starts.size() ? starts.get(number + 1) : starts.get(0) + 1;
            double middle = (start + end) / 2;
            SortedSet<BranchId> on = new TreeSet<>();
            pulses.forEach((branch, pulse) -> {
                if (pulse.isOnAt(middle)) {
                    on.add(branch);
                }
            });
            stretches.add(new Stretch(start, end - start, on));
        }
        return stretches;
    }

    private static void add(TreeSet<Double> edges, double edge) {
        double at = edge > 1 - SAME_FRACTION ? 0 : edge;
        if (edges.subSet(at - SAME_FRACTION, at + SAME_FRACTION).isEmpty()) {
            edges.add(at);
        }
    }
}
