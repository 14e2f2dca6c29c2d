package org.ohmloom.model;

import static org.ohmloom.units.Require.notBlank;

import java.util.Optional;

/**
 * What is laid over a bundle segment.
 *
 * @param kind what sort of covering
 * @param text size or make in words, for example "12 mm nominal"
 * @param part entry of the parts list
 */
public record Covering(Kind kind, String text, Optional<PartId> part) {

    /** Sorts of covering. */
    public enum Kind {
        TAPE,
        BRAIDED_SLEEVE,
        CONDUIT,
        HEAT_SHRINK,
        TUBE
    }

    public Covering {
        notBlank(text, "text of a covering");
    }
}
