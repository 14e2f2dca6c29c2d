package org.ohmloom.draw.form;

/**
 * A place where runs meet or end.
 *
 * @param id           id of the breakout; of the segment, where a ring is opened
 * @param cardWidthMm  width of the card of what is fitted there, mm; 0 where nothing is
 * @param cardHeightMm height of that card, mm; 0 where nothing is
 */
record FormNode(String id, double cardWidthMm, double cardHeightMm) {

    boolean hasCard() {
        return cardWidthMm > 0;
    }
}
