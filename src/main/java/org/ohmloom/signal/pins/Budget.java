package org.ohmloom.signal.pins;

import static org.ohmloom.units.Require.notBlank;
import static org.ohmloom.units.Require.positive;

import java.util.Collections;
import java.util.Set;
import java.util.TreeSet;
import org.ohmloom.words.Text;

/**
 * A limit on the current of several slots together: outputs on one driver, pins on one reference supply.
 *
 * @param words     what limits it
 * @param slots     ids of the slots
 * @param limitAmps most current of all claims on them together, A, more than 0
 */
public record Budget(Text words, Set<String> slots, double limitAmps) {

    public Budget {
        notBlank(words.english(), "name of a budget");
        positive(limitAmps, "limit of %s", words);
        slots = Collections.unmodifiableSet(new TreeSet<>(slots));
    }

    /** What limits it, in English. */
    public String name() {
        return words.english();
    }
}
