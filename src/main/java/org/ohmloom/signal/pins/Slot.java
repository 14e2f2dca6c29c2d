package org.ohmloom.signal.pins;

import static org.ohmloom.units.Require.notBlank;
import static org.ohmloom.units.Require.positive;
import static org.ohmloom.units.Require.that;

import java.util.Collections;
import java.util.EnumSet;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import org.ohmloom.model.PinRole;

/**
 * A pin of a control unit that claims compete for.
 *
 * @param id         identity, as {@code U1.AN3}
 * @param unit       the unit it is on; all lines of one owner go to one unit
 * @param connector  the connector it is in
 * @param roles      what it can be, at least one
 * @param capacity   how many claims it takes, 1 or more: several sensors share one reference supply
 * @param limitAmps  most current of all its claims together, A, more than 0, if limited
 * @param neighbours ids of the slots beside it in the connector
 */
public record Slot(
        String id,
        String unit,
        String connector,
        Set<PinRole> roles,
        int capacity,
        OptionalDouble limitAmps,
        Set<String> neighbours) {

    /** A slot of the only unit there is. */
    public Slot(
            String id,
            String connector,
            Set<PinRole> roles,
            int capacity,
            OptionalDouble limitAmps,
            Set<String> neighbours) {
        this(id, "", connector, roles, capacity, limitAmps, neighbours);
    }

    public Slot {
        notBlank(id, "id of a slot");
        that(!roles.isEmpty(), "slot %s can be nothing", id);
        that(capacity >= 1, "slot %s takes at least one claim, not %s", id, capacity);
        limitAmps.ifPresent(value -> positive(value, "current limit of slot %s", id));
        roles = Collections.unmodifiableSet(EnumSet.copyOf(roles));
        neighbours = Collections.unmodifiableSet(new TreeSet<>(neighbours));
    }

    /** Whether it can serve a claim by itself: by role, by range, by current, and by what a person has chosen. */
    public boolean serves(Claim claim) {
        return roles.contains(claim.role())
                && !claim.barred().contains(id)
                && (limitAmps.isEmpty() || claim.amps() <= limitAmps.getAsDouble())
                && claim.locked().map(id::equals).orElse(true);
    }

    /** That of its identity alone: allocations look up by it millions of times. */
    @Override
    public int hashCode() {
        return id.hashCode();
    }
}
