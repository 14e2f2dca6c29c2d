package org.ohmloom.signal.pins;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The cheapest allocation of claims to slots by branch and bound (Land and Doig, Econometrica 28, 1960). A part allocation is
 * bounded from below by what it costs already and a cheapest assignment of the other claims, in which what several claims cost
 * together counts for each of them by its share. The claim with the fewest slots left is tried next, its cheapest slot first.
 */
public final class PinSearch {

    /** Part allocations looked at before the best so far is given with its gap. */
    private static final int MOST_NODES = 4_000;

    private static final double NOISE = 1e-9;

    private final PinProblem problem;
    private final int mostNodes;
    private final Map<Claim, Slot> chosen = new LinkedHashMap<>();
    private Optional<Map<Claim, Slot>> best = Optional.empty();
    private double bestCost = Double.POSITIVE_INFINITY;
    private double openBound = Double.POSITIVE_INFINITY;
    private int nodes;

    private PinSearch(PinProblem problem, int mostNodes) {
        this.problem = problem;
        this.mostNodes = mostNodes;
    }

    /** The cheapest allocation, or why there is none. */
    public static PinPlan plan(PinProblem problem) {
        return plan(problem, MOST_NODES);
    }

    static PinPlan plan(PinProblem problem, int mostNodes) {
        Optional<PinPlan.Impossible> scarce = Scarcity.of(problem);
        if (scarce.isPresent()) {
            return scarce.get();
        }
        PinSearch search = new PinSearch(problem, mostNodes);
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

    private void branch() {
        if (chosen.size() == problem.claims().size()) {
            double cost = AllocationCost.of(problem, chosen);
            if (cost < bestCost - NOISE) {
                bestCost = cost;
                best = Optional.of(new LinkedHashMap<>(chosen));
            }
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
        Claim next = next();
        double before = AllocationCost.of(problem, chosen);
        List<Slot> slots = new ArrayList<>(open(next));
        Map<Slot, Double> added = new LinkedHashMap<>();
        for (Slot slot : slots) {
            chosen.put(next, slot);
            added.put(slot, AllocationCost.of(problem, chosen) - before);
            chosen.remove(next);
        }
        slots.sort(Comparator.comparing(added::get));
        for (Slot slot : slots) {
            chosen.put(next, slot);
            branch();
            chosen.remove(next);
        }
    }

    /** The claim with the fewest slots left; the first of equals. */
    private Claim next() {
        return problem.claims().stream()
                .filter(claim -> !chosen.containsKey(claim))
                .min(Comparator.comparingInt(claim -> open(claim).size()))
                .orElseThrow();
    }

    /** The slots a claim can still go to: with room, and within every limit of current. */
    private List<Slot> open(Claim claim) {
        return problem.slotsFor(claim).stream()
                .filter(slot -> left(slot) > 0 && Currents.allow(problem, chosen, claim, slot))
                .toList();
    }

    private int left(Slot slot) {
        return slot.capacity()
                - (int) chosen.values().stream().filter(slot::equals).count();
    }

    /** No way to go on from here costs less than this; infinite when there is none. */
    private double bound() {
        List<Claim> waiting = problem.claims().stream()
                .filter(claim -> !chosen.containsKey(claim))
                .toList();
        Map<Slot, Integer> free = new LinkedHashMap<>();
        problem.slots().forEach(slot -> free.put(slot, left(slot)));
        LeastAdded least = new LeastAdded(problem, chosen, waiting);
        Relaxation.Assigned assigned = Relaxation.of(
                waiting,
                free,
                (claim, slot) -> slot.serves(claim) && Currents.allow(problem, chosen, claim, slot)
                        ? least.of(claim, slot)
                        : Double.POSITIVE_INFINITY);
        return assigned.unserved().isEmpty()
                ? AllocationCost.of(problem, chosen) + assigned.costPoints()
                : Double.POSITIVE_INFINITY;
    }
}
