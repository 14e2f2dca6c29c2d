package org.ohmloom.signal.pins;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;

/**
 * The cheapest allocation of claims to slots by branch and bound (Land and Doig, Econometrica 28, 1960). A part allocation is
 * bounded from below by what it costs already and a cheapest assignment of the other claims, in which what several claims cost
 * together counts for each of them by its share. A first allocation is made owner by owner; then the claim with the fewest slots
 * left is tried next, its cheapest slot first. As every cost is a multiple of a least one, a bound is taken up to the next multiple.
 */
public final class PinSearch {

    /** Part allocations looked at before the best so far is given with its gap. */
    private static final int MOST_NODES = 4_000;

    /** Pairs of claim and slot looked at in all of them together. */
    private static final long MOST_PAIRS = 6_000_000;

    private static final double NOISE = 1e-9;

    private final PinProblem problem;
    private final Surroundings around;
    private final Standing standing;
    private final double stepPoints;
    private final int mostNodes;
    private final BooleanSupplier stopped;
    private Optional<Map<Claim, Slot>> best = Optional.empty();
    private double bestCost = Double.POSITIVE_INFINITY;
    private double openBound = Double.POSITIVE_INFINITY;
    private int nodes;

    private PinSearch(PinProblem problem, int mostNodes, BooleanSupplier stopped) {
        this.problem = problem;
        this.around = new Surroundings(problem);
        this.standing = new Standing(problem, around);
        boolean stepped =
                problem.claims().stream().allMatch(claim -> claim.unitMetres().isEmpty());
        this.stepPoints = stepped ? problem.preferences().stepPoints() : 0;
        this.mostNodes = mostNodes;
        this.stopped = stopped;
    }

    /** The cheapest allocation, or why there is none. */
    public static PinPlan plan(PinProblem problem) {
        return plan(problem, () -> false);
    }

    /**
     * The cheapest allocation, or why there is none.
     *
     * @param stopped asked at every part allocation whether nobody waits for the answer any more
     * @throws CancellationException when nobody does
     */
    public static PinPlan plan(PinProblem problem, BooleanSupplier stopped) {
        long pairs =
                Math.max(1, (long) problem.claims().size() * problem.slots().size());
        return plan(problem, (int) Math.max(1, Math.min(MOST_NODES, MOST_PAIRS / pairs)), stopped);
    }

    static PinPlan plan(PinProblem problem, int mostNodes) {
        return plan(problem, mostNodes, () -> false);
    }

    private static PinPlan plan(PinProblem problem, int mostNodes, BooleanSupplier stopped) {
        Optional<PinPlan.Impossible> scarce = Scarcity.of(problem);
        if (scarce.isPresent()) {
            return scarce.get();
        }
        PinSearch search = new PinSearch(problem, mostNodes, stopped);
        FirstPlan.of(problem, search.around).ifPresent(search::keep);
        search.branch();
        return search.answer();
    }

    private PinPlan answer() {
        boolean stopped = nodes >= mostNodes;
        if (best.isPresent()) {
            Map<Claim, Slot> inOrder = new LinkedHashMap<>();
            problem.claims().forEach(claim -> inOrder.put(claim, best.get().get(claim)));
            double bound = Math.min(bestCost, openBound);
            boolean proven = bound >= bestCost - NOISE;
            return new PinPlan.Found(inOrder, AllocationCost.parts(problem, inOrder), bound, proven);
        }
        return stopped ? new PinPlan.Unknown(nodes) : Currents.inTheWay(problem);
    }

    private void keep(Map<Claim, Slot> whole) {
        double cost = AllocationCost.of(problem, whole);
        if (cost < bestCost - NOISE) {
            bestCost = cost;
            best = Optional.of(new LinkedHashMap<>(whole));
        }
    }

    private void branch() {
        if (stopped.getAsBoolean()) {
            throw new CancellationException();
        }
        if (standing.chosen().size() == problem.claims().size()) {
            keep(standing.chosen());
            return;
        }
        double bound = bound();
        if (bound >= bestCost - NOISE) {
            return;
        }
        if (nodes >= mostNodes) {
            openBound = Math.min(openBound, bound);
            return;
        }
        nodes++;
        Claim next = null;
        List<Slot> slots = List.of();
        for (Claim claim : standing.waiting()) {
            List<Slot> open = open(claim);
            if (next == null || open.size() < slots.size()) {
                next = claim;
                slots = open;
            }
        }
        Claim tried = Objects.requireNonNull(next);
        Map<Slot, Double> added = new HashMap<>();
        slots.forEach(slot -> added.put(slot, standing.added(tried, slot)));
        slots.sort(Comparator.comparing(added::get));
        for (Slot slot : slots) {
            standing.put(tried, slot);
            branch();
            standing.take(tried);
        }
    }

    /** The slots a claim can still go to, in their order. */
    private List<Slot> open(Claim claim) {
        List<Slot> open = new ArrayList<>();
        for (Slot slot : around.serving(claim)) {
            if (standing.allows(claim, slot)) {
                open.add(slot);
            }
        }
        return open;
    }

    /** No way to go on from here costs less than this; infinite when there is none. */
    private double bound() {
        Relaxation.Assigned assigned = new LeastAdded(problem, around, standing).assigned();
        if (!assigned.unserved().isEmpty()) {
            return Double.POSITIVE_INFINITY;
        }
        double bound = standing.costPoints() + assigned.costPoints();
        return stepPoints > 0 ? Math.ceil((bound - 1e-6) / stepPoints) * stepPoints : bound;
    }
}
