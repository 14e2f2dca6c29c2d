package org.ohmloom.judged;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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
    private record Moment(double share, Set<String> closed, PlainSolve solve) {}

    private final List<Moment> moments = new ArrayList<>();
    private final Map<String, Double> duties = new TreeMap<>();

    PlainState(Harness harness, OperatingState state) {
        this(harness, state, "", Optional.empty());
    }

    /**
     * A state with something open and a current besides.
     *
     * @param opened the ground point, wire, strap or fuse that is open; blank for none
     * @param more   the current
     */
    PlainState(Harness harness, OperatingState state, String opened, Optional<PlainNetwork.Current> more) {
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
            PlainNetwork network = new PlainNetwork(harness, state, closed, opened);
            more.ifPresent(network::with);
            moments.add(new Moment(share, closed, network.solve()));
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

    /** A value of one moment of this state and the same moment of another. */
    interface Paired {
        double of(PlainSolve here, PlainSolve there);
    }

    /** The mean of a value of this state and of another one of the same outputs. */
    double mean(PlainState other, Paired what) {
        double sum = 0;
        for (int k = 0; k < moments.size(); k++) {
            sum += moments.get(k).share()
                    * what.of(moments.get(k).solve(), other.moments.get(k).solve());
        }
        return sum;
    }

    /** Root of the mean square. */
    double rms(ToDoubleFunction<PlainSolve> what) {
        return Math.sqrt(mean(solve -> what.applyAsDouble(solve) * what.applyAsDouble(solve)));
    }

    /** The outputs that switch. */
    Set<String> switching() {
        return Set.copyOf(duties.keySet());
    }

    /** By how much a value jumps when an output switches: its mean while that one is closed less its mean while it is open. */
    double jump(String output, ToDoubleFunction<PlainSolve> what) {
        double jump = 0;
        for (Moment moment : moments) {
            boolean on = moment.closed().contains(output);
            double part = moment.share() * what.applyAsDouble(moment.solve());
            jump += on ? part / duties.get(output) : -part / (1 - duties.get(output));
        }
        return jump;
    }

    /** The value in the moment in which every output is closed. */
    double allOn(ToDoubleFunction<PlainSolve> what) {
        return what.applyAsDouble(moments.get(moments.size() - 1).solve());
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
