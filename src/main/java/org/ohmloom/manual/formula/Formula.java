package org.ohmloom.manual.formula;

import java.util.List;

/**
 * A formula the results cite.
 *
 * @param key        stable kebab-case text
 * @param title      what it gives
 * @param expression the formula
 * @param symbols    its symbols
 * @param about      when it holds and what it leaves out
 * @param source     document, edition, clause; or the words "from memory" or "algebra" beside them
 * @param cited      words by which a result names it; empty where results only name what it gives
 * @param seen       ids of pages where its results are seen
 * @param worked     the worked example
 */
public record Formula(
        String key,
        String title,
        String expression,
        List<Symbol> symbols,
        String about,
        String source,
        String cited,
        List<String> seen,
        Worked worked) {

    public Formula {
        symbols = List.copyOf(symbols);
        seen = List.copyOf(seen);
    }

    /** The same, with words by which a result names it. */
    Formula citedAs(String words) {
        return new Formula(key, title, expression, symbols, about, source, words, seen, worked);
    }
}
