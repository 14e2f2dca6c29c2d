package org.ohmloom.bundle.length;

import java.util.List;
import java.util.OptionalDouble;
import org.ohmloom.model.WireId;
import org.ohmloom.tables.LengthTolerance;

/**
 * How long a wire is cut: the length of its way and what it gets on top, or the length a person entered. It is also the
 * length its resistance and its copper are reckoned with: all of it conducts.
 *
 * @param wire      the wire
 * @param parts     what it is made of; never empty
 * @param metres    their sum, m
 * @param tolerance how much longer it may be; it is never shorter
 */
public record CutLength(WireId wire, List<LengthPart> parts, double metres, LengthTolerance tolerance) {

    private static final double MILLIMETRES_PER_METRE = 1000;

    public CutLength {
        parts = List.copyOf(parts);
    }

    /** So much longer it may be, m. */
    public double toleranceMetres() {
        return tolerance.metres(metres);
    }

    /** Whether a person entered it. */
    public boolean isEntered() {
        return parts.stream().anyMatch(part -> part.kind() == LengthPart.Kind.ENTERED);
    }

    /** Length of the way alone, m; empty where the length is entered. */
    public OptionalDouble routeMetres() {
        return parts.stream()
                .filter(part -> part.kind() == LengthPart.Kind.ROUTE)
                .mapToDouble(part -> part.millimetres() / MILLIMETRES_PER_METRE)
                .findFirst();
    }

    /** What comes on top of the way, m; 0 where the length is entered. */
    public double allowanceMetres() {
        return isEntered() ? 0 : metres - routeMetres().orElse(0);
    }
}
