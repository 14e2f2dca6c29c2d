package org.ohmloom.pack;

import java.util.Optional;
import org.ohmloom.model.WireColour;
import org.ohmloom.words.Text;

/**
 * One line of the bills of materials whose quantity differs between two revisions.
 *
 * @param groupText   group of the bill in words
 * @param numberText  part number, nothing where none is chosen
 * @param maker       its maker, empty where not known
 * @param what        what it is
 * @param colour      colour of a wire
 * @param unitText    what is counted: pieces, m
 * @param pieces      whether whole pieces are counted
 * @param before      quantity in the old revision
 * @param after       quantity in the new one
 */
public record PartChange(
        Text groupText,
        Text numberText,
        String maker,
        Text what,
        Optional<WireColour> colour,
        Text unitText,
        boolean pieces,
        double before,
        double after) {

    /** Group of the bill, in English. */
    String group() {
        return groupText.english();
    }

    /** Part number, or what stands for it, in English; empty where none is chosen. */
    String number() {
        return numberText.english();
    }

    /** What it is, in English. */
    String description() {
        return what.english();
    }

    /** What is counted, in English. */
    String unit() {
        return unitText.english();
    }

    /** How much more. */
    public double difference() {
        return after - before;
    }
}
