package org.ohmloom.signal.pins;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** A part allocation that grows and shrinks claim by claim, with its cost and what every limit still allows. */
final class Standing {
    private final PinProblem problem;
    private final Surroundings around;
    private final Map<Claim, Slot> chosen = new LinkedHashMap<>();
    private final Map<String, List<Claim>> bySlot = new HashMap<>();
    private final Map<Budget, List<Claim>> byBudget = new HashMap<>();
    private final Map<String, List<Slot>> byOwner = new HashMap<>();
    private double cost;

    Standing(PinProblem problem, Surroundings around) {
        this.problem = problem;
        this.around = around;
    }

    void put(Claim claim, Slot slot) {
        cost += added(claim, slot);
        chosen.put(claim, slot);
        bySlot.computeIfAbsent(slot.id(), id -> new ArrayList<>()).add(claim);
        byOwner.computeIfAbsent(claim.owner(), id -> new ArrayList<>()).add(slot);
        around.budgets(slot).forEach(budget -> byBudget.computeIfAbsent(budget, each -> new ArrayList<>())
                .add(claim));
    }

    void take(Claim claim) {
        Slot slot = chosen.remove(claim);
        claims(slot).remove(claim);
        slots(claim.owner()).remove(slot);
        around.budgets(slot).forEach(budget -> claims(budget).remove(claim));
        cost -= added(claim, slot);
    }

    Map<Claim, Slot> chosen() {
        return chosen;
    }

    double costPoints() {
        return cost;
    }

    List<Claim> waiting() {
        return problem.claims().stream()
                .filter(claim -> !chosen.containsKey(claim))
                .toList();
    }

    List<Claim> claims(Slot slot) {
        return bySlot.getOrDefault(slot.id(), List.of());
    }

    List<Claim> claims(Budget budget) {
        return byBudget.getOrDefault(budget, List.of());
    }

    List<Slot> slots(String owner) {
        return byOwner.getOrDefault(owner, List.of());
    }

    int room(Slot slot) {
        return slot.capacity() - claims(slot).size();
    }

    /** Whether a claim can go to a slot that serves it: with room, on the unit of its owner, and within every limit of current. */
    boolean allows(Claim claim, Slot slot) {
        if (room(slot) <= 0) {
            return false;
        }
        List<Slot> kin = slots(claim.owner());
        if (!kin.isEmpty() && !kin.get(0).unit().equals(slot.unit())) {
            return false;
        }
        if (slot.limitAmps().isPresent()
                && !fits(claims(slot), claim, slot.limitAmps().getAsDouble())) {
            return false;
        }
        for (Budget budget : around.budgets(slot)) {
            if (!fits(claims(budget), claim, budget.limitAmps())) {
                return false;
            }
        }
        return true;
    }

    private boolean fits(Collection<Claim> there, Claim claim, double limitAmps) {
        List<Claim> all = new ArrayList<>(there);
        all.add(claim);
        return !Currents.over(around.drawnAmps(all), limitAmps);
    }

    /** What a claim adds to the cost when it goes to a slot now. */
    double added(Claim claim, Slot slot) {
        Preferences weights = problem.preferences();
        double added = weights.metrePoints() * claim.metresTo(slot);
        List<Slot> kin = slots(claim.owner());
        if (!kin.isEmpty() && kin.stream().noneMatch(each -> each.connector().equals(slot.connector()))) {
            added += weights.otherConnectorPoints();
        }
        int taken = claims(slot).size();
        if (taken == 0) {
            added += weights.versatilePoints() * (slot.roles().size() - 1);
        } else if (taken == 1) {
            added += weights.splicePoints();
        }
        return added + weights.besideSwitchingPoints() * disturbances(claim, slot);
    }

    /** Pairs of a reading beside an output that switches that a claim would make. */
    int disturbances(Claim claim, Slot slot) {
        int pairs = 0;
        if (claim.isSensitive()) {
            for (String beside : slot.neighbours()) {
                for (Claim other : bySlot.getOrDefault(beside, List.of())) {
                    pairs += other.switching() ? 1 : 0;
                }
            }
        }
        if (claim.switching()) {
            for (String beside : around.besides(slot)) {
                for (Claim other : bySlot.getOrDefault(beside, List.of())) {
                    pairs += other.isSensitive() ? 1 : 0;
                }
            }
        }
        return pairs;
    }

    /** Connectors an owner has lines in. */
    Set<String> connectors(String owner) {
        Set<String> names = new HashSet<>();
        slots(owner).forEach(slot -> names.add(slot.connector()));
        return names;
    }
}
