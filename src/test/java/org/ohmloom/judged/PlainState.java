package org.ohmloom.judged;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import org.ohmloom.model.Harness;
import org.ohmloom.model.OperatingState;

/**
 * One operating state of a generated harness by plain dense solutions: one for each combination of its switching outputs, weighted
 * by how much of the time it lasts. Every output is on a clock of its own, so the weights are products.
 */
final class PlainState {

    /** A combination of closed outputs. */
    private record Moment(double share, PlainSolve solve) {}

    private final List<Moment> moments = new ArrayList<>();

    PlainState(Harness harness, OperatingState state) {
        Map<String, Double> duties = new TreeMap<>();
        state.outputs().forEach((output, setting) -> duties.put(output.toString(), setting.dutyFraction()));
        state.components().forEach((component, setting) -> duties.put(component.value(), setting.dutyFraction()));
        duties.values().removeIf(duty -> duty == 1);
        List<String> names = List.copyOf(duties.keySet());
        for (int mask = 0; mask < 1 << names.size(); mask++) {
            Set<String> closed = new HashSet<>();
            double share = 1;
            for (int k = 0; k < names.size(); k++) {
                double duty = duties.get(names.get(k));
                boolean on = (mask >> k & 1) == 1;
                share *= on ? duty : 1 - duty;
                if (on) {
                    closed.add(names.get(k));
                }
            }
            moments.add(new Moment(share, new PlainNetwork(harness, state, closed).solve()));
        }
    }

    boolean has(String point) {
        return moments.get(0).solve().has(point);
    }

    /** Mean of V(point) - V(reference), V. */
    double mean(String point, String reference) {
        return mean(solve -> solve.volts(point) - solve.volts(reference));
    }

    /** Magnitude of the mean and the largest departure from it, V. */
    double worst(String point, String reference) {
        return worst(solve -> solve.volts(point) - solve.volts(reference));
    }

    double mean(ToDoubleFunction<PlainSolve> what) {
        return moments.stream()
                .mapToDouble(each -> each.share() * what.applyAsDouble(each.solve()))
                .sum();
    }

    /** The largest value of all moments. */
    double largest(ToDoubleFunction<PlainSolve> what) {
        return moments.stream()
                .mapToDouble(each -> what.applyAsDouble(each.solve()))
                .max()
                .orElse(0);
    }

    double worst(ToDoubleFunction<PlainSolve> what) {
        double mean = mean(what);
        return Math.abs(mean)
                + moments.stream()
                        .mapToDouble(each -> Math.abs(what.applyAsDouble(each.solve()) - mean))
                        .max()
                        .orElse(0);
    }
}
