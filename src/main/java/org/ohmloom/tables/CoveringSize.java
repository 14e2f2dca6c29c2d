package org.ohmloom.tables;

import java.util.OptionalDouble;
import org.ohmloom.words.Refusals;

/**
 * A covering in one size.
 *
 * @param id           its name in harness files, as in "conduit-10"
 * @param kind         the sort of covering, as in "CONDUIT"
 * @param words        what it is, for people
 * @param insideMinMm  smallest inside diameter, mm: recovered, or of the thinnest bundle; empty for a fixed bore
 * @param insideMaxMm  largest inside diameter, mm: as supplied, of the thickest bundle, or the bore; empty for tape
 * @param wallMm       wall, or thickness of tape, mm
 * @param widthMm      width of tape, mm
 * @param limitCelsius highest temperature it stands, deg C
 * @param citation     the row
 */
public record CoveringSize(
        String id,
        String kind,
        String words,
        OptionalDouble insideMinMm,
        OptionalDouble insideMaxMm,
        double wallMm,
        OptionalDouble widthMm,
        double limitCelsius,
        Citation citation) {

    /** Reads a row with the columns id, kind, words, insideMin, insideMax, wall, width and limit. */
    static CoveringSize read(RowReader row) {
        String id = row.text("id");
        OptionalDouble smallest = row.optionalPositive("insideMin", "mm");
        OptionalDouble largest = row.optionalPositive("insideMax", "mm");
        if (smallest.isPresent() && smallest.getAsDouble() >= largest.orElse(0)) {
            throw row.unfit(
                    "insideMin", Refusals.text("it is not less than insideMax; write the smaller diameter here"));
        }
        return new CoveringSize(
                id,
                row.text("kind"),
                row.text("words"),
                smallest,
                largest,
                row.positive("wall", "mm"),
                row.optionalPositive("width", "mm"),
                row.number("limit", "C"),
                row.citation(id, "wall"));
    }
}
