package org.ohmloom.signal.pins;

import org.ohmloom.words.Text;

/**
 * One reason why an allocation is not free.
 *
 * @param why why, in words
 * @param costPoints  how much, 0 or more
 */
public record CostPart(Text why, double costPoints) {

    /** Why, in English. */
    public String reason() {
        return why.english();
    }
}
