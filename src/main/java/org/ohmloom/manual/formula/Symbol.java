package org.ohmloom.manual.formula;

import java.util.List;

/**
 * A symbol of a formula.
 *
 * @param sign    as it stands in the formula
 * @param meaning what it is
 * @param unit    its unit; empty for a ratio or a count
 */
public record Symbol(String sign, String meaning, String unit) {

    /** Reads symbols, one a line: {@code I | current | A}. */
    static List<Symbol> of(String lines) {
        return lines.lines()
                .map(line -> line.split("\\s*\\|\\s*", -1))
                .map(parts -> new Symbol(parts[0].strip(), parts[1], parts.length > 2 ? parts[2].strip() : ""))
                .toList();
    }
}
