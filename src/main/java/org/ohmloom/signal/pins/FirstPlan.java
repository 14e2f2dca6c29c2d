package org.ohmloom.signal.pins;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A first allocation, made owner by owner: what is locked or has the fewest slots first, all lines of one on the connector where they add
 * the least. It may be dearer than the cheapest, and there may be one where this finds none.
 */
final class FirstPlan {
    private static final double NOISE = 1e-9;

    private final Surroundings around;
    private final Standing standing;
    private final double awayPoints;

    private FirstPlan(PinProblem problem, Surroundings around) {
        this.around = around;
        this.standing = new Standing(problem, around);
        this.awayPoints = problem.preferences().otherConnectorPoints();
    }

    /** The allocation; empty when an owner finds no room. */
    static Optional<Map<Claim, Slot>> of(PinProblem problem, Surroundings around) {
        FirstPlan plan = new FirstPlan(problem, around);
        Map<String, List<Claim>> owners = new LinkedHashMap<>();
        problem.claims().forEach(claim -> owners.computeIfAbsent(claim.owner(), id -> new ArrayList<>())
                .add(claim));
        List<List<Claim>> inOrder = new ArrayList<>(owners.values());
        inOrder.forEach(claims -> claims.sort(
                Comparator.comparingInt(claim -> around.serving(claim).size())));
        inOrder.sort(
                Comparator.comparingInt(claims -> around.serving(claims.get(0)).size()));
        for (List<Claim> claims : inOrder) {
            if (!plan.place(claims)) {
                return Optional.empty();
            }
        }
        return Optional.of(plan.standing.chosen());
    }

    /** Tries every connector any line could go to, with the lines that find no pin there on the same unit. */
    private boolean place(List<Claim> claims) {
        Map<Claim, Slot> cheapest = Map.of();
        double least = Double.POSITIVE_INFINITY;
        Map<String, String> unitOf = new LinkedHashMap<>();
        claims.forEach(claim -> around.serving(claim).forEach(slot -> unitOf.put(slot.connector(), slot.unit())));
        for (Map.Entry<String, String> home : unitOf.entrySet()) {
            double before = standing.costPoints();
            Map<Claim, Slot> tried = tried(claims, home.getValue(), home.getKey());
            double added = standing.costPoints() - before;
            tried.keySet().forEach(standing::take);
            if (tried.size() == claims.size() && added < least - NOISE) {
                least = added;
                cheapest = tried;
            }
        }
        cheapest.forEach(standing::put);
        return cheapest.size() == claims.size();
    }

    private Map<Claim, Slot> tried(List<Claim> claims, String unit, String connector) {
        Map<Claim, Slot> tried = new LinkedHashMap<>();
        for (Claim claim : claims) {
            Slot cheapest = null;
            double least = Double.POSITIVE_INFINITY;
            for (Slot slot : around.serving(claim)) {
                if (slot.unit().equals(unit)) {
                    double away = slot.connector().equals(connector) ? 0 : awayPoints;
                    double added = away >= least || !standing.allows(claim, slot)
                            ? Double.POSITIVE_INFINITY
                            : away + standing.added(claim, slot);
                    if (added < least) {
                        least = added;
                        cheapest = slot;
                    }
                }
            }
            if (cheapest == null) {
                return tried;
            }
            standing.put(claim, cheapest);
            tried.put(claim, cheapest);
        }
        return tried;
    }
}
