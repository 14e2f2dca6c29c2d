package org.ohmloom.tables;

import java.util.OptionalDouble;
import org.ohmloom.words.Refusals;

/**
 * How much longer than asked a wire may be; it is never shorter.
 *
 * @param upToMetres   longest wire this row is for, m; empty for the last one
 * @param plusMetres   so much longer, m; empty where it is a share
 * @param plusFraction so much longer as a share of the length; empty where it is a length
 * @param citation     the row
 */
public record LengthTolerance(
        OptionalDouble upToMetres, OptionalDouble plusMetres, OptionalDouble plusFraction, Citation citation) {

    /** Reads a row with the columns upTo, plus and plusShare, one of the last two empty. */
    static LengthTolerance read(RowReader row) {
        OptionalDouble upTo = row.optionalPositive("upTo", "m");
        OptionalDouble plus = row.optionalPositive("plus", "m");
        OptionalDouble share = row.optionalPositive("plusShare", "1");
        if (plus.isPresent() == share.isPresent()) {
            throw row.unfit(
                    "plus",
                    Refusals.text("a length and a share are given, or neither; write one of plus and plusShare"));
        }
        String name = upTo.isPresent() ? "up to " + row.text("upTo") + " m" : "longer";
        return new LengthTolerance(upTo, plus, share, row.citation(name, plus.isPresent() ? "plus" : "plusShare"));
    }

    /** How much longer a wire of that length may be, m. */
    public double metres(double lengthMetres) {
        return plusMetres.orElse(plusFraction.orElse(0) * lengthMetres);
    }
}
