package org.ohmloom.tables;

import org.ohmloom.words.Refusals;

/**
 * An insulation colour.
 *
 * @param code     its letters in IEC 60757
 * @param name     the colour in words
 * @param srgb     how a drawing shows it, "#RRGGBB"; common practice
 * @param citation where code and name come from
 */
public record WireColourRow(String code, String name, String srgb, Citation citation) {
    /** The colour as a number, 0xRRGGBB. */
    public int rgb() {
        return Integer.parseInt(srgb.substring(1), 16);
    }

    /** Reads a row with the columns code, name and srgb. */
    static WireColourRow read(RowReader row) {
        String code = row.text("code");
        String srgb = row.text("srgb");
        if (!srgb.matches("#[0-9A-F]{6}")) {
            throw row.unfit("srgb", Refusals.text("'%s' is not a colour; write one such as #1E8A3C", srgb));
        }
        return new WireColourRow(code, row.text("name"), srgb, row.citation(code, "code"));
    }
}
