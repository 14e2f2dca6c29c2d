package org.ohmloom.review;

/**
 * A part of the evidence that takes longer than currents, temperatures and sizes do, so that it may follow them later. In the
 * order in which they are told of.
 */
public enum StudyPart {
    /** Sizes chosen for all wires together; until then each is what its wire needs by itself. */
    SIZES,
    /** Worst currents and drops over all allowed combinations of loads. */
    ENVELOPE,
    /** Loads and control units followed while they start. */
    STARTS,
    /** Charge balance of every state, timed sequences, load analysis. */
    CHARGE,
    /** What every protective device carries, protects and clears. */
    PROTECTION,
    /** Offsets of the reference points, and who makes them. */
    OFFSETS,
    /** Ground points and loops of the return network. */
    LOOPS,
    /** What the returns do to each reading. */
    SENSORS,
    /** Returns opened in turn. */
    LOST_RETURNS,
    /** What switching wires put onto signals beside them. */
    COUPLINGS,
    /** Cross-sections and coverings of the bundles, places of the splices. */
    BUNDLES
}
