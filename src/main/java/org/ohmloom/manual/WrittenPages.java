package org.ohmloom.manual;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** The pages the program writes itself, from its rules, tables and formulas; they are kept with the others. */
public final class WrittenPages {

    private WrittenPages() {}

    /** Their Markdown by the id of the page. */
    public static Map<String, String> all() {
        Map<String, String> pages = new LinkedHashMap<>(RulePages.write());
        pages.putAll(TablePages.write());
        Map<String, String> titles = new LinkedHashMap<>();
        pages.forEach((id, text) -> titles.put(id, Page.of(id, text).title()));
        pages.putAll(FormulaPages.write(id -> Optional.ofNullable(titles.get(id))
                .or(() -> Manual.bundledPage(id).map(Page::title))
                .orElse(id)));
        return pages;
    }

    /** The page of a rule. */
    public static String ofRule(String rule) {
        return RulePages.id(rule);
    }

    /** The page of the formula or the table that a sentence of a result cites; empty when it cites none that has one. */
    public static Optional<String> citedIn(String sentence) {
        return FormulaPages.citedIn(sentence).or(() -> TablePages.citedIn(sentence));
    }
}
