package org.ohmloom.signal.pins;

import static org.ohmloom.units.Require.that;

import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Claims, the slots they compete for, and what is better avoided.
 *
 * @param claims      what needs a pin, ids unique
 * @param slots       the pins, ids unique
 * @param budgets     limits on slots together
 * @param exclusions  claims that never all draw together
 * @param preferences what costs how much
 */
public record PinProblem(
        List<Claim> claims, List<Slot> slots, List<Budget> budgets, List<AtMost> exclusions, Preferences preferences) {

    /** A problem in which all claims may draw together. */
    public PinProblem(List<Claim> claims, List<Slot> slots, List<Budget> budgets, Preferences preferences) {
        this(claims, slots, budgets, List.of(), preferences);
    }

    public PinProblem {
        claims = List.copyOf(claims);
        slots = List.copyOf(slots);
        budgets = List.copyOf(budgets);
        exclusions = List.copyOf(exclusions);
        Set<String> names = new HashSet<>();
        claims.forEach(claim -> that(names.add(claim.id()), "claim %s is made twice", claim.id()));
        names.clear();
        slots.forEach(slot -> that(names.add(slot.id()), "slot %s is there twice", slot.id()));
        for (Claim claim : claims) {
            claim.locked()
                    .ifPresent(slot -> that(
                            names.contains(slot), "claim %s is locked to %s, which is not there", claim.id(), slot));
        }
    }

    /** The slots that can serve a claim by themselves. */
    public List<Slot> slotsFor(Claim claim) {
        return slots.stream().filter(slot -> slot.serves(claim)).toList();
    }
}
