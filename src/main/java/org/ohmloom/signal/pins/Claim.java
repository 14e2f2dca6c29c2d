package org.ohmloom.signal.pins;

import static org.ohmloom.units.Require.notBlank;
import static org.ohmloom.units.Require.notNegative;

import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.ohmloom.model.PinRole;

/**
 * One line of a sensor, load or bus that needs a pin of a control unit.
 *
 * @param id        identity, as {@code B1.signal}
 * @param owner     what it belongs to; claims of one owner are kept on one connector where they can
 * @param role      what the pin must be able to be
 * @param amps      current it takes from or gives to the pin, A, 0 or more
 * @param switching whether it switches at a duty cycle, and so disturbs its neighbours
 * @param locked    id of the slot a person has chosen for it
 * @param barred    ids of the slots it cannot go to although their role suits, as those that tell another range
 * @param unitMetres how far it runs to each unit, m; a unit that is not named is at no distance
 */
public record Claim(
        String id,
        String owner,
        PinRole role,
        double amps,
        boolean switching,
        Optional<String> locked,
        Set<String> barred,
        Map<String, Double> unitMetres) {

    /** A claim that is as near to one unit as to another. */
    public Claim(
            String id,
            String owner,
            PinRole role,
            double amps,
            boolean switching,
            Optional<String> locked,
            Set<String> barred) {
        this(id, owner, role, amps, switching, locked, barred, Map.of());
    }

    /** A claim that may go to every slot of its role. */
    public Claim(String id, String owner, PinRole role, double amps, boolean switching, Optional<String> locked) {
        this(id, owner, role, amps, switching, locked, Set.of());
    }

    public Claim {
        barred = Set.copyOf(barred);
        unitMetres = Map.copyOf(unitMetres);
        unitMetres.forEach((unit, metres) -> notNegative(metres, "distance of claim %s to %s", id, unit));
        notBlank(id, "id of a claim");
        notBlank(owner, "owner of claim %s", id);
        notNegative(amps, "current of claim %s", id);
    }

    /** Whether a switching neighbour disturbs it: what is read as a voltage, a resistance or an edge. */
    public boolean isSensitive() {
        return role.isInput() && role != PinRole.SWITCH_TO_BATTERY_INPUT && role != PinRole.SWITCH_TO_GROUND_INPUT;
    }

    /** How far it runs to a slot, m. */
    double metresTo(Slot slot) {
        return unitMetres.getOrDefault(slot.unit(), 0.0);
    }

    /** That of its identity alone: allocations look up by it millions of times. */
    @Override
    public int hashCode() {
        return id.hashCode();
    }
}
