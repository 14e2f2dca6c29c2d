package org.ohmloom.draw.flow;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.ohmloom.model.StateId;
import org.ohmloom.solve.BranchFlow;
import org.ohmloom.solve.Solution;

/**
 * How wide the current of a way is drawn: the square root of it, so that a lamp is still seen beside a starter motor. The room that
 * is kept for it is that of the largest current of all states, so that the picture stays the same in every state.
 */
final class FlowWidths {

    /** Width of what carries next to nothing, mm. */
    static final double LEAST_MM = 0.3;

    private static final double MOST_MM = 6;

    /** A current that counts as none, A. */
    static final double NOTHING_AMPS = 5e-4;

    private final Collection<Solution> all;
    private final Optional<StateId> state;
    private final double mostAmps;

    /**
     * The widths of a harness.
     *
     * @param state the state that is shown; empty for the worst of all
     */
    FlowWidths(FlowGraph graph, Collection<Solution> all, Optional<StateId> state) {
        this.all = all;
        this.state = state;
        this.mostAmps =
                graph.edges().stream().mapToDouble(this::largestAmps).max().orElse(0);
    }

    private double largestAmps(FlowEdge edge) {
        return all.stream()
                .flatMap(solution -> edge.flow(solution).stream())
                .mapToDouble(BranchFlow::rmsAmps)
                .max()
                .orElse(0);
    }

    /** Solution in which a way is shown: that of the state, or the one with its largest current. */
    Optional<Solution> shown(FlowEdge edge) {
        return all.stream()
                .filter(solution ->
                        state.isEmpty() || solution.network().state().equals(state.get()))
                .max(Comparator.comparingDouble(
                        solution -> edge.flow(solution).map(BranchFlow::rmsAmps).orElse(0.0)));
    }

    /** Mean current of a way in its direction in the state shown; for the worst of all its largest RMS current, signed alike, A. */
    double amps(FlowEdge edge) {
        double mean = shown(edge).map(edge::amps).orElse(0.0);
        return state.isPresent()
                ? mean
                : Math.copySign(
                        shown(edge).flatMap(edge::flow).map(BranchFlow::rmsAmps).orElse(0.0), mean);
    }

    /** Width that is kept for a way, mm. */
    double keptMm(FlowEdge edge) {
        return widthMm(largestAmps(edge));
    }

    /** Width of a way as it is shown, mm. */
    double shownMm(FlowEdge edge) {
        return Math.min(keptMm(edge), widthMm(amps(edge)));
    }

    /** Width of a current, mm. */
    double widthMm(double amps) {
        return mostAmps <= 0 ? LEAST_MM : LEAST_MM + (MOST_MM - LEAST_MM) * Math.sqrt(Math.abs(amps) / mostAmps);
    }

    /** Round currents for the key: up to three powers of ten below the largest. */
    List<Double> samples() {
        List<Double> samples = new ArrayList<>();
        double sample = Math.pow(10, Math.floor(Math.log10(Math.max(mostAmps, 1e-3))));
        for (int k = 0; k < 3 && mostAmps > NOTHING_AMPS; k++) {
            samples.add(sample);
            sample /= 10;
        }
        return samples;
    }
}
