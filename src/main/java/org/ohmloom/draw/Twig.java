package org.ohmloom.draw;

import java.util.Optional;

/**
 * One row at a breakout: a card, or a tie with what hangs beyond it. Relative to its bush.
 *
 * @param card     the card, if it is one
 * @param tie      the tie, if it is one
 * @param beyond   what hangs at the far end of the tie
 * @param runMm    length of the line to the card or to the far breakout, mm
 * @param topMm    upper side, mm
 * @param heightMm height, mm
 * @param lineMm   where its line runs, mm
 */
record Twig(
        Optional<Card> card,
        Optional<Tie> tie,
        Optional<Bush> beyond,
        double runMm,
        double topMm,
        double heightMm,
        double lineMm) {

    double widthMm() {
        return runMm
                + card.map(Card::widthMm).orElse(0.0)
                + beyond.map(Bush::widthMm).orElse(0.0);
    }
}
