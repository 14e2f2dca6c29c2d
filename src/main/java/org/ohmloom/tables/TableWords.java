package org.ohmloom.tables;

import java.util.Locale;
import org.ohmloom.words.MessageBundle;
import org.ohmloom.words.Text;

/** What rows of tables say in words: those of our own tables in any language, a builder's own as they stand. */
final class TableWords {

    private static final MessageBundle TEXTS = MessageBundle.beside(TableWords.class, "table-words");

    private TableWords() {}

    /** The words of a cell. */
    static Text text(String cell) {
        String key = cell.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-");
        return TEXTS.has(key) && TEXTS.get(Locale.ROOT, key).equals(cell) ? TEXTS.text(key) : Text.of(cell);
    }
}
