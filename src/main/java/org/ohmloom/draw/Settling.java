package org.ohmloom.draw;

import java.util.ArrayList;
import java.util.List;

/**
 * Moves cards that a person has put on one another, or on what is written along the harness, up or down to the nearest
 * free place.
 */
final class Settling {

    private static final double AIR_MM = 0.4;
    private static final double STEP_MM = 1;
    private static final int MOST_STEPS = 400;

    private Settling() {}

    /** The cards in their places, the first ones staying where they are. */
    static List<Board.Placed> apart(List<Board.Placed> cards, List<Extent> written) {
        List<Extent> taken = new ArrayList<>(written);
        List<Board.Placed> settled = new ArrayList<>();
        for (Board.Placed placed : cards) {
            Extent free = free(placed.extent(), taken);
            taken.add(free);
            settled.add(new Board.Placed(placed.card(), free, placed.mirror(), placed.joint()));
        }
        return settled;
    }

    private static Extent free(Extent wanted, List<Extent> taken) {
        for (int step = 0; step <= MOST_STEPS; step++) {
            for (int side : new int[] {1, -1}) {
                Extent tried = wanted.moved(0, side * step * STEP_MM);
                Extent air = tried.grown(AIR_MM);
                if (taken.stream().noneMatch(air::overlaps)) {
                    return tried;
                }
            }
        }
        return wanted;
    }
}
