package org.ohmloom.review;

import static org.ohmloom.units.Require.notBlank;

/**
 * A part of the evidence that takes longer than currents, temperatures and sizes do, so that it may follow them later. In the
 * order in which they are told of.
 */
public enum StudyPart {
    /** Sizes chosen for all wires together; until then each is what its wire needs by itself. */
    SIZES("sizes"),
    /** Worst currents and drops over all allowed combinations of loads. */
    ENVELOPE("worst combinations"),
    /** Loads and control units followed while they start. */
    STARTS("starts"),
    /** Charge balance of every state, timed sequences, load analysis. */
    CHARGE("charge balance"),
    /** What every protective device carries, protects and clears. */
    PROTECTION("protection"),
    /** Offsets of the reference points, and who makes them. */
    OFFSETS("ground offsets"),
    /** Ground points and loops of the return network. */
    LOOPS("ground loops"),
    /** What the returns do to each reading. */
    SENSORS("sensor errors"),
    /** Returns opened in turn. */
    LOST_RETURNS("lost returns"),
    /** What switching wires put onto signals beside them. */
    COUPLINGS("couplings"),
    /** Cross-sections and coverings of the bundles, places of the splices. */
    BUNDLES("bundles");

    private final String words;

    StudyPart(String words) {
        this.words = notBlank(words, "words of a study");
    }

    /** What people call it, in lower case. */
    public String words() {
        return words;
    }
}
