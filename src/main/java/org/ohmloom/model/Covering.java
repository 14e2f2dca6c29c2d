package org.ohmloom.model;

import static org.ohmloom.units.Require.notBlank;
import static org.ohmloom.units.Require.within;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What is laid over a bundle segment.
 *
 * @param kind            what sort of covering
 * @param text            size or make in words, for example "12 mm nominal"
 * @param part            entry of the parts list
 * @param size            its size, as the table {@code covering-sizes} or a builder's own names it
 * @param overlapFraction share of a tape's width that lies over the turn before, 0 to 0.9
 * @param endFinish       how its ends are held
 */
public record Covering(
        Kind kind,
        String text,
        Optional<PartId> part,
        Optional<String> size,
        OptionalDouble overlapFraction,
        Optional<EndFinish> endFinish) {

    /** Sorts of covering. */
    public enum Kind {
        TAPE,
        BRAIDED_SLEEVE,
        CONDUIT,
        HEAT_SHRINK,
        TUBE
    }

    /** How the end of a covering is held. */
    public enum EndFinish {
        TAPED,
        HEAT_SHRINK,
        CLAMPED,
        TIED,
        BOOT,
        OPEN
    }

    public Covering {
        notBlank(text, "text of a covering");
        size.ifPresent(value -> notBlank(value, "size of a covering"));
        overlapFraction.ifPresent(value -> within(value, 0, 0.9, "overlap of a covering"));
    }

    /** A covering whose size is known in words only. */
    public Covering(Kind kind, String text, Optional<PartId> part) {
        this(kind, text, part, Optional.empty(), OptionalDouble.empty(), Optional.empty());
    }

    /** This covering in another size. */
    public Covering withSize(String changed, String words) {
        return new Covering(kind, words, Optional.empty(), Optional.of(changed), overlapFraction, endFinish);
    }
}
