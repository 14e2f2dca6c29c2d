package org.ohmloom.workbench.words;

/**
 * What something is called, with what tells it from others in every language.
 *
 * @param key  where it stands in its bundle
 * @param text in the language of the display
 */
public record Term(String key, String text) {

    @Override
    public String toString() {
        return text;
    }
}
