package org.ohmloom.draw;

import java.util.Map;

/**
 * How a board speaks of what it leaves out.
 *
 * @param letters  letters of the match lines by id of the tie that is cut
 * @param onSheets whether it is cut into sheets, so that each cut is a match line with the place of its other side
 */
record Elsewhere(Map<String, String> letters, boolean onSheets) {

    /** What stands for the place of the other side until all sheets are laid out: no place is wider. */
    static final String PLACE = "sheet\u00a0999, zone\u00a0W99";

    private static final String WIDEST_LETTER = "WW";

    /** A board on the screen: whole. */
    static final Elsewhere SCREEN = new Elsewhere(Map.of(), false);

    /** Sheets whose cuts are not settled yet. */
    static final Elsewhere UNSETTLED = new Elsewhere(Map.of(), true);

    Elsewhere {
        letters = Map.copyOf(letters);
    }

    String letter(Tie tie) {
        return letters.getOrDefault(tie.id(), WIDEST_LETTER);
    }
}
