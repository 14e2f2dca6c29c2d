package org.ohmloom.manual;

import java.util.LinkedHashMap;
import java.util.Map;

/** The pages the program writes itself, from its rules, tables and formulas; they are kept with the others. */
public final class WrittenPages {

    private WrittenPages() {}

    /** Their Markdown by the id of the page. */
    public static Map<String, String> all() {
        Map<String, String> pages = new LinkedHashMap<>();
        pages.putAll(RulePages.write());
        return pages;
    }
}
