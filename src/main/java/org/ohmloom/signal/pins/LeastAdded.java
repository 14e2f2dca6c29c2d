package org.ohmloom.signal.pins;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The least a claim adds to the cost of a part allocation when it goes to a slot, whatever the other waiting claims do. What it
 * may share with others that wait counts by its share: a further connector by the waiting claims of its owner, a splice or a
 * versatile pin by the room left in the slot. So the sum over all waiting claims is never more than what they add together.
 */
final class LeastAdded {
    private final Preferences weights;
    private final Map<String, Set<String>> connectorsByOwner = new HashMap<>();
    private final Map<String, Integer> waitingByOwner = new HashMap<>();
    private final Map<String, Integer> takenBySlot = new HashMap<>();
    private final Map<String, Integer> switchingBySlot = new HashMap<>();
    private final Map<String, Integer> sensitiveBySlot = new HashMap<>();
    private final Map<String, Set<String>> besideBySlot = new HashMap<>();

    LeastAdded(PinProblem problem, Map<Claim, Slot> chosen, List<Claim> waiting) {
        this.weights = problem.preferences();
        chosen.forEach((claim, slot) -> {
            connectorsByOwner
                    .computeIfAbsent(claim.owner(), owner -> new HashSet<>())
                    .add(slot.connector());
            takenBySlot.merge(slot.id(), 1, Integer::sum);
            switchingBySlot.merge(slot.id(), claim.switching() ? 1 : 0, Integer::sum);
            sensitiveBySlot.merge(slot.id(), claim.isSensitive() ? 1 : 0, Integer::sum);
        });
        waiting.forEach(claim -> waitingByOwner.merge(claim.owner(), 1, Integer::sum));
        for (Slot slot : problem.slots()) {
            slot.neighbours().forEach(beside -> besideBySlot
                    .computeIfAbsent(beside, id -> new HashSet<>())
                    .add(slot.id()));
        }
    }

    double of(Claim claim, Slot slot) {
        double cost = 0;
        Set<String> connectors = connectorsByOwner.getOrDefault(claim.owner(), Set.of());
        if (!connectors.isEmpty() && !connectors.contains(slot.connector())) {
            cost += weights.otherConnectorPoints() / waitingByOwner.get(claim.owner());
        }
        int taken = takenBySlot.getOrDefault(slot.id(), 0);
        int room = slot.capacity() - taken;
        if (taken == 0) {
            cost += weights.versatilePoints() * (slot.roles().size() - 1) / room;
        } else if (taken == 1) {
            cost += weights.splicePoints() / room;
        }
        if (claim.isSensitive()) {
            for (String beside : slot.neighbours()) {
                cost += weights.besideSwitchingPoints() * switchingBySlot.getOrDefault(beside, 0);
            }
        }
        if (claim.switching()) {
            for (String beside : besideBySlot.getOrDefault(slot.id(), Set.of())) {
                cost += weights.besideSwitchingPoints() * sensitiveBySlot.getOrDefault(beside, 0);
            }
        }
        return cost;
    }
}
