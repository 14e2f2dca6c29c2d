package org.ohmloom.signal.pins;

import static org.ohmloom.units.Require.notBlank;
import static org.ohmloom.units.Require.positive;

import java.util.Collections;
import java.util.Set;
import java.util.TreeSet;

/**
 * A limit on the current of several slots together: outputs on one driver, pins on one reference supply.
 *
 * @param name      what limits it
 * @param slots     ids of the slots
 * @param limitAmps most current of all claims on them together, A, more than 0
 */
public record Budget(String name, Set<String> slots, double limitAmps) {

    public Budget {
        notBlank(name, "name of a budget");
        positive(limitAmps, "limit of %s", name);
        slots = Collections.unmodifiableSet(new TreeSet<>(slots));
    }
}
