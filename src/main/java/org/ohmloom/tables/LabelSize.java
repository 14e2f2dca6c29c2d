package org.ohmloom.tables;

import java.util.Arrays;
import java.util.OptionalDouble;
import org.ohmloom.words.Refusals;

/**
 * A label in one size.
 *
 * @param id          its name, as in "wrap-25x9"
 * @param kind        the sort of label
 * @param words       what it is, for people
 * @param widthMm     along the wire, mm; of a sleeve the longest it is cut
 * @param heightMm    of the printed part, mm; of a sleeve nothing is entered
 * @param aroundMm    what goes round the wire, mm: of a wrap-around label printed part and clear tail, of a flag the stretch
 *                    between its halves
 * @param suppliedMm  inside diameter of a sleeve as supplied, mm
 * @param recoveredMm inside diameter of a sleeve recovered, mm
 * @param citation    the row
 */
public record LabelSize(
        String id,
        Kind kind,
        String words,
        double widthMm,
        OptionalDouble heightMm,
        OptionalDouble aroundMm,
        OptionalDouble suppliedMm,
        OptionalDouble recoveredMm,
        Citation citation) {

    /** Sorts of label. */
    public enum Kind {
        /** Heat-shrink sleeve, slid on before the end is crimped. */
        SLEEVE,
        /** Wrapped round, a clear tail over the print. */
        WRAP,
        /** Two halves stuck together, standing off the wire. */
        FLAG
    }

    /** The thinnest that it holds on, mm. */
    public double leastMm() {
        return switch (kind) {
            case SLEEVE -> recoveredMm.orElseThrow();
                // on anything thinner the printed part would lie over itself
            case WRAP -> heightMm.orElseThrow() / Math.PI;
            case FLAG -> 0;
        };
    }

    /** The thickest that it goes over, mm. */
    public double mostMm() {
        return switch (kind) {
            case SLEEVE -> suppliedMm.orElseThrow();
                // once round, and the tail covers the print
            case WRAP -> (aroundMm.orElseThrow() - heightMm.orElseThrow()) / Math.PI;
            case FLAG -> aroundMm.orElseThrow() / Math.PI;
        };
    }

    /** Reads a row with the columns id, kind, words, width, height, around, supplied and recovered. */
    static LabelSize read(RowReader row) {
        String id = row.text("id");
        Kind kind = Arrays.stream(Kind.values())
                .filter(each -> each.name().equals(row.text("kind")))
                .findFirst()
                .orElseThrow(
                        () -> row.unfit("kind", Refusals.text("no such sort of label; write SLEEVE, WRAP or FLAG")));
        LabelSize size = new LabelSize(
                id,
                kind,
                row.text("words"),
                row.positive("width", "mm"),
                row.optionalPositive("height", "mm"),
                row.optionalPositive("around", "mm"),
                row.optionalPositive("supplied", "mm"),
                row.optionalPositive("recovered", "mm"),
                row.citation(id, "width"));
        if (kind == Kind.SLEEVE) {
            filled(row, "supplied", size.suppliedMm);
            filled(row, "recovered", size.recoveredMm);
        } else {
            filled(row, "height", size.heightMm);
            filled(row, "around", size.aroundMm);
        }
        if (size.leastMm() >= size.mostMm()) {
            throw row.unfit(
                    kind == Kind.SLEEVE ? "recovered" : "around",
                    Refusals.text(
                            kind == Kind.SLEEVE
                                    ? "the label holds on nothing: it would have to be thicker than %s mm and thinner than %s mm; write the smaller diameter here"
                                    : "the label holds on nothing: it would have to be thicker than %s mm and thinner than %s mm; write the length of printed part and clear tail together, more than twice the height",
                            size.leastMm(),
                            size.mostMm()));
        }
        return size;
    }

    private static void filled(RowReader row, String column, OptionalDouble value) {
        if (value.isEmpty()) {
            throw row.unfit(column, Refusals.text("the cell is empty; write a number of mm"));
        }
    }
}
