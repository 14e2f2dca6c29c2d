package org.ohmloom.bundle.length;

import static org.ohmloom.units.Require.notNegative;

import java.util.Optional;

/**
 * One part of the length a wire is cut to.
 *
 * @param kind        what it is for
 * @param end         the end it belongs to, as in "X1.3"; empty for the whole wire
 * @param millimetres how much, mm, 0 or more
 * @param source      the table row, the element of the harness, or the formula with both
 */
public record LengthPart(Kind kind, Optional<String> end, double millimetres, String source) {

    /** What lengths are for. */
    public enum Kind {
        ENTERED("entered as cut"),
        ROUTE("route over the bundle segments"),
        TWIST("take-up of the twist"),
        CONNECTOR_DEPTH("into the connector"),
        STRIP("strip"),
        SERVICE_LOOP("service loop"),
        RETERMINATION("re-termination"),
        DRIP_LOOP("drip loop"),
        SPLICE_OVERLAP("overlap in the splice"),
        ROUNDING("rounded up");

        private final String words;

        Kind(String words) {
            this.words = words;
        }

        /** It in words. */
        public String words() {
            return words;
        }
    }

    public LengthPart {
        notNegative(millimetres, "part of a length");
    }

    /** The part in words, as in "strip at X1.3". */
    public String words() {
        return kind.words() + end.map(each -> " at " + each).orElse("");
    }
}
