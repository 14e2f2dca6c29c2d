package org.ohmloom.signal.pins;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The least that waiting claims add to the cost of a part allocation, whatever the others do: by pair of claim and slot, and by slot.
 * A further connector counts by the waiting claims of its owner. What a slot costs for being versatile and for its splice is drawn
 * as the highest curve below it that never bends down, so that it can be shared out claim by claim. The sum over all waiting claims
 * is never more than what they add together.
 */
final class LeastAdded {
    private static final double NOISE = 1e-6;

    private final PinProblem problem;
    private final Surroundings around;
    private final Standing standing;
    private final List<Claim> waiting;
    private final Map<String, Integer> waitingByOwner = new HashMap<>();

    LeastAdded(PinProblem problem, Surroundings around, Standing standing) {
        this.problem = problem;
        this.around = around;
        this.standing = standing;
        this.waiting = standing.waiting();
        waiting.forEach(claim -> waitingByOwner.merge(claim.owner(), 1, Integer::sum));
    }

    /** A cheapest assignment of the waiting claims at what they add at least. */
    Relaxation.Assigned assigned() {
        return Relaxation.of(
                waiting,
                problem.slots().stream().filter(slot -> standing.room(slot) > 0).toList(),
                new Relaxation.Costs(this::ofPair, this::ofSlot, this::kind, this::kind));
    }

    double ofPair(Claim claim, Slot slot) {
        if (!slot.serves(claim)
                || !around.units(claim.owner()).contains(slot.unit())
                || !standing.allows(claim, slot)) {
            return Double.POSITIVE_INFINITY;
        }
        List<Slot> kin = standing.slots(claim.owner());
        boolean elsewhere = !kin.isEmpty()
                && kin.stream().noneMatch(each -> each.connector().equals(slot.connector()));
        return (elsewhere ? problem.preferences().otherConnectorPoints() / waitingByOwner.get(claim.owner()) : 0)
                + problem.preferences().metrePoints() * claim.metresTo(slot)
                + problem.preferences().besideSwitchingPoints() * standing.disturbances(claim, slot);
    }

    /** Steps of the cost of the room left in a slot. */
    List<Relaxation.Step> ofSlot(Slot slot) {
        int taken = standing.claims(slot).size();
        int room = most(slot, slot.capacity() - taken);
        double versatile =
                problem.preferences().versatilePoints() * (slot.roles().size() - 1);
        double splice = problem.preferences().splicePoints();
        if (room == 0 || taken > 1) {
            return List.of(new Relaxation.Step(room, 0));
        }
        if (taken == 1) {
            return List.of(new Relaxation.Step(room, splice / room));
        }
        if (room <= 1) {
            return List.of(new Relaxation.Step(1, versatile));
        }
        double along = (versatile + splice) / room;
        return versatile >= along
                ? List.of(new Relaxation.Step(room, along))
                : List.of(new Relaxation.Step(1, versatile), new Relaxation.Step(room - 1, splice / (room - 1)));
    }

    /** So many of the claims that wait can go to a slot with a room, by their current too where it is limited. */
    private int most(Slot slot, int room) {
        int can = 0;
        double amps = Double.POSITIVE_INFINITY;
        for (Claim claim : waiting) {
            if (ofPair(claim, slot) < Double.POSITIVE_INFINITY) {
                can++;
                amps = Math.min(amps, claim.amps());
            }
        }
        if (slot.limitAmps().isPresent() && amps > 0 && can > 0 && !around.hasExclusions()) {
            double left = slot.limitAmps().getAsDouble() - around.drawnAmps(standing.claims(slot));
            can = (int) Math.min(can, Math.floor(left / amps + NOISE));
        }
        return Math.min(room, can);
    }

    private Object kind(Claim claim) {
        List<Slot> kin = standing.slots(claim.owner());
        List<Object> kind = new ArrayList<>(List.of(
                claim.role(),
                claim.amps(),
                claim.switching(),
                claim.locked(),
                claim.barred(),
                claim.unitMetres(),
                around.units(claim.owner()),
                kin.isEmpty()));
        if (!kin.isEmpty()) {
            kind.add(kin.get(0).unit());
            kind.add(standing.connectors(claim.owner()));
            kind.add(waitingByOwner.get(claim.owner()));
        }
        if (around.hasExclusions()) {
            kind.add(claim.id());
        }
        return kind;
    }

    private Object kind(Slot slot) {
        List<Object> kind = new ArrayList<>(List.of(
                slot.unit(),
                slot.connector(),
                slot.roles(),
                slot.limitAmps(),
                slot.capacity(),
                around.special(slot),
                standing.claims(slot),
                around.budgets(slot)));
        if (!slot.neighbours().isEmpty() || !around.besides(slot).isEmpty()) {
            kind.add(disturbing(slot));
        }
        return kind;
    }

    private List<Integer> disturbing(Slot slot) {
        int switching = 0;
        int sensitive = 0;
        for (Map.Entry<Claim, Slot> each : standing.chosen().entrySet()) {
            String id = each.getValue().id();
            switching += slot.neighbours().contains(id) && each.getKey().switching() ? 1 : 0;
            sensitive += around.besides(slot).contains(id) && each.getKey().isSensitive() ? 1 : 0;
        }
        return List.of(switching, sensitive);
    }
}
