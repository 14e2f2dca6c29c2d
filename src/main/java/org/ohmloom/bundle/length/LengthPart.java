package org.ohmloom.bundle.length;

import static org.ohmloom.units.Require.notNegative;

import java.util.Optional;
import org.ohmloom.words.Constants;
import org.ohmloom.words.MessageBundle;
import org.ohmloom.words.Text;

/**
 * One part of the length a wire is cut to.
 *
 * @param kind        what it is for
 * @param end         the end it belongs to, as in "X1.3"; empty for the whole wire
 * @param millimetres how much, mm, 0 or more
 * @param told        where it comes from: the table row, the element of the harness, or the formula with both
 */
public record LengthPart(Kind kind, Optional<Text> end, double millimetres, Text told) {

    static final MessageBundle TEXTS = MessageBundle.beside(LengthPart.class, "lengths");

    /** What lengths are for. */
    public enum Kind {
        ENTERED,
        ROUTE,
        TWIST,
        CONNECTOR_DEPTH,
        STRIP,
        SERVICE_LOOP,
        RETERMINATION,
        DRIP_LOOP,
        SPLICE_OVERLAP,
        ROUNDING;

        /** It in words, in English. */
        public String words() {
            return Constants.text(this).english();
        }
    }

    public LengthPart {
        notNegative(millimetres, "part of a length");
    }

    /** The part in words, as in "strip at X1.3". */
    public Text text() {
        Text what = Constants.text(kind);
        return end.map(each -> TEXTS.text("at", what, each)).orElse(what);
    }

    /** Where it comes from, in English. */
    public String source() {
        return told.english();
    }
}
