package org.ohmloom.solve;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BooleanSupplier;
import org.ohmloom.graph.Branch;
import org.ohmloom.graph.BranchId;
import org.ohmloom.graph.Law;
import org.ohmloom.graph.Network;
import org.ohmloom.graph.Sensing;

/**
 * Solves a network whose alternators regulate at a sense point.
 *
 * <p>A regulator is slow against duty cycles: it holds the mean voltage at its sense point by one electromotive force for
 * the whole period. The electromotive force is found so that exactly one of these holds for each such source:
 *
 * <ul>
 *   <li>the sense point has the set point, and the source gives between nothing and its limit;
 *   <li>the source gives its limit the whole time, and the sense point is below the set point;
 *   <li>the source gives nothing the whole time, and the sense point is above the set point.
 * </ul>
 *
 * <p>More electromotive force never lowers the voltage of the sense point, so the search keeps a bracket: first by the
 * miss itself, then by the secant, halving the weight of an end that stays (Illinois). Networks of straight
 * branches take three solutions. Several such sources take turns. The network of the solution has the electromotive force
 * that was found, so that the same network with other loads starts from there; how far the three conditions are missed is
 * recomputed from the published numbers by {@code solve.charge}.
 */
public final class SensedSolver {

    /** The sense point is held to this, V. */
    static final double HELD_VOLTS = 1e-9;

    private static final double LIMIT_RATIO = 1e-9;
    private static final double IDLE_AMPS = 1e-9;
    private static final double BRACKET_RATIO = 1e-15;
    private static final double MOST_EMF_RATIO = 3;
    private static final double LEAST_EMF_RATIO = 0.01;
    private static final int MOST_TURNS = 12;
    private static final int MOST_STEPS = 60;

    private final Network network;
    private final BooleanSupplier cancelled;
    private final Map<BranchId, Law> found = new HashMap<>();
    private NetworkSolution solution;
    private int solves;

    private SensedSolver(Network network, BooleanSupplier cancelled) {
        this.network = network;
        this.cancelled = cancelled;
        solution = NetworkSolver.solve(network, cancelled);
        solves = 1;
    }

    /**
     * Solves a network with what its {@link Network#sensings()} ask. A source that is off, or whose sense point is in
     * another part of the network, regulates at its own terminals.
     *
     * @param network   the network
     * @param cancelled asked now and then; true stops the solution
     * @throws java.util.concurrent.CancellationException when asked to stop
     */
    public static NetworkSolution solve(Network network, BooleanSupplier cancelled) {
        return searched(network, cancelled).solution;
    }

    /** The finished search, for tests of how many solutions it takes. */
    static SensedSolver searched(Network network, BooleanSupplier cancelled) {
        SensedSolver solver = new SensedSolver(network, cancelled);
        solver.search();
        return solver;
    }

    /** How many times the network was solved. */
    int solves() {
        return solves;
    }

    /** What was found. */
    NetworkSolution solution() {
        return solution;
    }

    private void search() {
        for (int turn = 0; turn < MOST_TURNS; turn++) {
            boolean settled = true;
            for (Sensing sensing : network.sensings()) {
                if (!holds(sensing)) {
                    settled = false;
                    settle(sensing);
                }
            }
            if (settled || network.sensings().size() == 1) {
                return;
            }
        }
    }

    /** One end of the bracket: an electromotive force and by how much the sense point then is above the set point, V. */
    private record End(double emfVolts, double missVolts) {

        End halved() {
            return new End(emfVolts, missVolts / 2);
        }
    }

    private void settle(Sensing sensing) {
        Optional<End> low = Optional.empty();
        Optional<End> high = Optional.empty();
        End at = new End(law(sensing).emfVolts(), miss(sensing).orElseThrow());
        boolean lowBefore = at.missVolts() > 0;
        for (int step = 0; step < MOST_STEPS; step++) {
            boolean lower = at.missVolts() < 0;
            if (lower) {
                high = lowBefore ? high.map(End::halved) : high;
                low = Optional.of(at);
            } else {
                low = lowBefore ? low : low.map(End::halved);
                high = Optional.of(at);
            }
            lowBefore = lower;
            double next = next(sensing, at, low, high);
            if (Math.abs(next - at.emfVolts()) <= BRACKET_RATIO * sensing.setPointVolts()) {
                return;
            }
            found.put(sensing.source(), law(sensing).withEmfVolts(next));
            solution = NetworkSolver.solve(network.withLaws(found), cancelled);
            solves++;
            if (holds(sensing)) {
                return;
            }
            at = new End(next, miss(sensing).orElseThrow());
        }
    }

    /** Where to try next: as far on as is missed, twice that from the second time on the same side, then the secant. */
    private static double next(Sensing sensing, End at, Optional<End> low, Optional<End> high) {
        if (low.isPresent() && high.isPresent()) {
            double span = high.get().emfVolts() - low.get().emfVolts();
            double whole = high.get().missVolts() - low.get().missVolts();
            return low.get().emfVolts() - span * low.get().missVolts() / whole;
        }
        double setPoint = sensing.setPointVolts();
        double wide = at.emfVolts() - 2 * at.missVolts();
        return Math.min(MOST_EMF_RATIO * setPoint, Math.max(LEAST_EMF_RATIO * setPoint, wide));
    }

    /** Whether one of the three conditions holds, or there is nothing to regulate. */
    private boolean holds(Sensing sensing) {
        OptionalDouble miss = miss(sensing);
        if (miss.isEmpty()) {
            return true;
        }
        double amps = solution.flows().get(sensing.source()).amps();
        boolean full = amps >= law(sensing).maximumAmps() * (1 - LIMIT_RATIO);
        boolean idle = amps <= law(sensing).minimumAmps() + IDLE_AMPS;
        return Math.abs(miss.getAsDouble()) <= HELD_VOLTS
                || (full && miss.getAsDouble() < 0)
                || (idle && miss.getAsDouble() > 0);
    }

    private Law.VoltageSource law(Sensing sensing) {
        Law law = found.getOrDefault(
                sensing.source(), network.branches().get(sensing.source()).law());
        return (Law.VoltageSource) law;
    }

    /** Mean voltage of the sense point above the set point, V; empty where there is nothing to regulate. */
    private OptionalDouble miss(Sensing sensing) {
        Branch source = network.branches().get(sensing.source());
        if (source == null || !(source.law() instanceof Law.VoltageSource)) {
            return OptionalDouble.empty();
        }
        Optional<Double> sense = Optional.ofNullable(solution.volts().get(sensing.sense()));
        Optional<Double> negative = Optional.ofNullable(solution.volts().get(source.from()));
        String island = solution.islandOf().get(source.from());
        boolean together = island != null && island.equals(solution.islandOf().get(sensing.sense()));
        return together && sense.isPresent() && negative.isPresent()
                ? OptionalDouble.of(sense.get() - negative.get() - sensing.setPointVolts())
                : OptionalDouble.empty();
    }
}
