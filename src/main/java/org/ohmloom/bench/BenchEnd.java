package org.ohmloom.bench;

import java.util.Optional;
import org.ohmloom.model.ContactPart;
import org.ohmloom.model.NaturalOrder;

/**
 * A place of a net where a probe can touch.
 *
 * @param text    where it is, as it stands on the drawing: "X1.3", "G2, terminal of W7"
 * @param contact the contact in that cavity, if one is chosen
 */
public record BenchEnd(String text, Optional<ContactPart> contact) implements Comparable<BenchEnd> {

    @Override
    public int compareTo(BenchEnd other) {
        return NaturalOrder.INSTANCE.compare(text, other.text);
    }
}
