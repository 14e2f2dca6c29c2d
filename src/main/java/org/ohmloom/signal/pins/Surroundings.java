package org.ohmloom.signal.pins;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** What does not change while a problem is searched, looked up once: budgets, neighbours and the slots that serve each claim. */
final class Surroundings {
    private final Map<String, List<Budget>> budgets = new HashMap<>();
    private final Map<String, Set<String>> besides = new HashMap<>();
    private final Map<Claim, List<Slot>> serving = new HashMap<>();
    private final Map<String, AtMost> exclusions = new HashMap<>();
    private final Map<String, List<Integer>> barring = new HashMap<>();
    private final Set<String> lockedSlots = new HashSet<>();
    private final Map<String, Set<String>> units = new HashMap<>();

    Surroundings(PinProblem problem) {
        for (Budget budget : problem.budgets()) {
            budget.slots().forEach(slot -> budgets.computeIfAbsent(slot, id -> new ArrayList<>())
                    .add(budget));
        }
        for (Slot slot : problem.slots()) {
            slot.neighbours().forEach(beside -> besides.computeIfAbsent(beside, id -> new HashSet<>())
                    .add(slot.id()));
        }
        problem.exclusions().forEach(each -> each.claims().forEach(claim -> exclusions.put(claim, each)));
        Map<Claim, List<Slot>> byThemselves = new HashMap<>();
        Map<List<Object>, List<Slot>> alone = new HashMap<>();
        for (Claim claim : problem.claims()) {
            List<Object> alike = List.of(claim.role(), claim.amps(), claim.locked(), claim.barred());
            List<Slot> slots = alone.computeIfAbsent(alike, key -> problem.slotsFor(claim));
            byThemselves.put(claim, slots);
            Set<String> there = slots.stream().map(Slot::unit).collect(Collectors.toSet());
            units.merge(claim.owner(), there, (one, other) -> {
                Set<String> both = new HashSet<>(one);
                both.retainAll(other);
                return both;
            });
        }
        Map<List<Object>, List<Slot>> known = new HashMap<>();
        List<Set<String>> bars = new ArrayList<>();
        for (Claim claim : problem.claims()) {
            List<Object> alike =
                    List.of(claim.role(), claim.amps(), claim.locked(), claim.barred(), units(claim.owner()));
            serving.put(claim, known.computeIfAbsent(alike, key -> byThemselves.get(claim).stream()
                    .filter(slot -> units(claim.owner()).contains(slot.unit()))
                    .toList()));
            claim.locked().ifPresent(lockedSlots::add);
            if (!claim.barred().isEmpty() && !bars.contains(claim.barred())) {
                int number = bars.size();
                bars.add(claim.barred());
                claim.barred().forEach(slot -> barring.computeIfAbsent(slot, id -> new ArrayList<>())
                        .add(number));
            }
        }
    }

    List<Budget> budgets(Slot slot) {
        return budgets.getOrDefault(slot.id(), List.of());
    }

    /** Ids of the slots that have this one as a neighbour. */
    Set<String> besides(Slot slot) {
        return besides.getOrDefault(slot.id(), Set.of());
    }

    /** The units that have a slot for every claim of an owner: all of them go to one. */
    Set<String> units(String owner) {
        return units.getOrDefault(owner, Set.of());
    }

    /** The slots that serve a claim on a unit that serves all of its owner. */
    List<Slot> serving(Claim claim) {
        return serving.getOrDefault(claim, List.of());
    }

    /** What tells a slot apart from others for claims by themselves, beyond its roles and limits. */
    Object special(Slot slot) {
        return List.of(lockedSlots.contains(slot.id()) ? slot.id() : "", barring.getOrDefault(slot.id(), List.of()));
    }

    /** Whether some claims never draw together. */
    boolean hasExclusions() {
        return !exclusions.isEmpty();
    }

    /** Most current of claims together, A: all of them but for those that never draw together. */
    double drawnAmps(Collection<Claim> claims) {
        double amps = 0;
        Map<AtMost, List<Double>> groups = new HashMap<>();
        for (Claim claim : claims) {
            AtMost group = exclusions.get(claim.id());
            if (group == null) {
                amps += claim.amps();
            } else {
                groups.computeIfAbsent(group, each -> new ArrayList<>()).add(claim.amps());
            }
        }
        for (Map.Entry<AtMost, List<Double>> each : groups.entrySet()) {
            amps += each.getValue().stream()
                    .sorted((one, other) -> Double.compare(other, one))
                    .limit(each.getKey().most())
                    .mapToDouble(Double::doubleValue)
                    .sum();
        }
        return amps;
    }
}
