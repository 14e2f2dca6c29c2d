package org.ohmloom.workbench.study;

import org.ohmloom.workbench.words.Words;

/**
 * What a tab beside the layout is called.
 *
 * @param key   stable kebab-case text
 * @param title what stands on the tab
 * @param about what it answers, in a sentence
 */
public record TabName(String key, String title, String about) {

    /** The name of the tab of a study. */
    public static TabName of(Study<?> study) {
        return new TabName(study.key(), study.title(), study.about());
    }

    /** The name of the tab whose texts are the topic of its key. */
    public static TabName of(String key) {
        Words words = Words.of(key);
        return new TabName(key, words.get("title"), words.get("title.about"));
    }
}
