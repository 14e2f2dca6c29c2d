package org.ohmloom.signal.pins;

import static org.ohmloom.units.Require.positive;

import java.util.Collections;
import java.util.Set;
import java.util.TreeSet;

/**
 * Claims that never all draw together: only the largest so many of them count against a limit of current. A claim is in at most
 * one of these.
 *
 * @param claims ids of the claims
 * @param most   how many of them draw at once at most, 1 or more
 */
public record AtMost(Set<String> claims, int most) {

    public AtMost {
        claims = Collections.unmodifiableSet(new TreeSet<>(claims));
        positive(most, "claims that draw at once");
    }
}
