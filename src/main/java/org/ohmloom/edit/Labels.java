package org.ohmloom.edit;

import java.util.Collection;
import org.ohmloom.words.MessageBundle;
import org.ohmloom.words.Text;

/** What edits are called, from the bundle {@code edits}. */
public final class Labels {

    private static final MessageBundle TEXTS = MessageBundle.beside(Labels.class, "edits");

    private Labels() {}

    /** A text of the bundle with its gaps filled. */
    public static Text text(String key, Object... values) {
        return TEXTS.text(key, values);
    }

    /**
     * What an edit is about: the one thing by its id, several by their count.
     *
     * @param plural {@code wires}, {@code loads} or {@code things}
     */
    public static Text subjects(Collection<?> ids, String plural) {
        return ids.size() == 1
                ? Text.of(ids.iterator().next())
                : TEXTS.text("subjects." + plural, String.valueOf(ids.size()));
    }
}
