package org.ohmloom.pack;

import java.util.Optional;
import org.ohmloom.model.WireColour;

/**
 * One line of the bills of materials whose quantity differs between two revisions.
 *
 * @param group       group of the bill in words
 * @param number      part number, empty where none is chosen
 * @param maker       its maker, empty where not known
 * @param description what it is
 * @param colour      colour of a wire
 * @param unit        what is counted: pieces, m
 * @param pieces      whether whole pieces are counted
 * @param before      quantity in the old revision
 * @param after       quantity in the new one
 */
public record PartChange(
        String group,
        String number,
        String maker,
        String description,
        Optional<WireColour> colour,
        String unit,
        boolean pieces,
        double before,
        double after) {

    /** How much more. */
    public double difference() {
        return after - before;
    }
}
