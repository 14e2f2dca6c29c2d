package org.ohmloom.model;

import java.util.Optional;

/** Thrown when a reference in a harness leads to no element. */
public final class BrokenReferenceException extends IllegalArgumentException {

    private static final long serialVersionUID = 1L;

    private final String place;
    private final String target;
    private final transient Optional<String> nearest;

    BrokenReferenceException(String place, String target, String kind, Optional<String> nearest) {
        super(place + ": no " + kind + " '" + target + "'"
                + nearest.map(near -> "; did you mean '" + near + "'?").orElse("; there is none yet"));
        this.place = place;
        this.target = target;
        this.nearest = nearest;
    }

    /** Where the reference stands: section, id and keys, for example {@code wires/W3/from/connector}. */
    public String place() {
        return place;
    }

    /** What it names. */
    public String target() {
        return target;
    }

    /** The existing name nearest to it by count of changed letters, if there is any name. */
    public Optional<String> nearest() {
        return nearest == null ? Optional.empty() : nearest;
    }
}
