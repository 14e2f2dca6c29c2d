package org.ohmloom.draw.form;

import java.util.OptionalDouble;

/**
 * A segment to be laid at its true length, or the leader to a card beside a breakout that runs pass.
 *
 * @param id          id of the segment; of the breakout for a leader
 * @param from        number of the node it begins at
 * @param to          number of the node it ends at
 * @param lengthMm    length along its centre line, mm, more than 0; the least one for a leader
 * @param widthMm     finished diameter, mm, 0 or more
 * @param bendMm      least radius of its centre line in a fold, mm
 * @param wishDegrees direction a person gave it, clockwise from the right, degrees
 * @param leader      whether it is a leader
 */
record FormRun(
        String id,
        int from,
        int to,
        double lengthMm,
        double widthMm,
        double bendMm,
        OptionalDouble wishDegrees,
        boolean leader) {

    int other(int node) {
        return node == from ? to : from;
    }

    boolean touches(int node) {
        return node == from || node == to;
    }

    /** The wish as seen from one of its nodes. */
    OptionalDouble wishFrom(int node) {
        return wishDegrees.isEmpty() || node == from
                ? wishDegrees
                : OptionalDouble.of(Headings.normal(wishDegrees.getAsDouble() + 180));
    }
}
