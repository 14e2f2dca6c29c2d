package org.ohmloom.signal.pins;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.ohmloom.units.Formats;

/** What an allocation costs, each part with its reason: counted over the whole of it, not step by step. */
final class AllocationCost {

    private AllocationCost() {}

    /** The parts of the cost of an allocation, whole or not, by claim and slot. */
    static List<CostPart> parts(PinProblem problem, Map<Claim, Slot> chosen) {
        Preferences weights = problem.preferences();
        List<CostPart> parts = new ArrayList<>();
        Map<String, Set<String>> connectorsByOwner = new TreeMap<>();
        Map<String, List<Claim>> claimsBySlot = new TreeMap<>();
        Map<String, Slot> slots = new HashMap<>();
        chosen.forEach((claim, slot) -> {
            if (claim.metresTo(slot) > 0) {
                parts.add(new CostPart(
                        PinTexts.text("runs", claim.id(), Formats.metres(claim.metresTo(slot)), slot.unit()),
                        weights.metrePoints() * claim.metresTo(slot)));
            }
            connectorsByOwner
                    .computeIfAbsent(claim.owner(), owner -> new TreeSet<>())
                    .add(slot.connector());
            claimsBySlot.computeIfAbsent(slot.id(), id -> new ArrayList<>()).add(claim);
            slots.put(slot.id(), slot);
        });
        connectorsByOwner.forEach((owner, connectors) -> {
            if (connectors.size() > 1) {
                parts.add(new CostPart(
                        PinTexts.text("spread", owner, String.join(", ", connectors)),
                        weights.otherConnectorPoints() * (connectors.size() - 1)));
            }
        });
        claimsBySlot.forEach((id, claims) -> {
            Slot slot = slots.get(id);
            if (claims.size() > 1) {
                parts.add(new CostPart(PinTexts.text("share", claims.size(), id), weights.splicePoints()));
            }
            if (slot.roles().size() > 1) {
                parts.add(new CostPart(
                        PinTexts.text("versatile", id),
                        weights.versatilePoints() * (slot.roles().size() - 1)));
            }
            for (String beside : slot.neighbours()) {
                for (Claim claim : claims) {
                    for (Claim other : claimsBySlot.getOrDefault(beside, List.of())) {
                        if (claim.isSensitive() && other.switching()) {
                            parts.add(new CostPart(
                                    PinTexts.text("beside", claim.id(), id, other.id(), beside),
                                    weights.besideSwitchingPoints()));
                        }
                    }
                }
            }
        });
        parts.removeIf(part -> part.costPoints() == 0);
        return List.copyOf(parts);
    }

    static double of(PinProblem problem, Map<Claim, Slot> chosen) {
        return parts(problem, chosen).stream().mapToDouble(CostPart::costPoints).sum();
    }
}
