package org.ohmloom.bundle.section;

import org.ohmloom.words.MessageBundle;
import org.ohmloom.words.Text;

/** How thick bundles get and how coverings suit them, from the bundle {@code bundles}. */
final class BundleTexts {

    private static final MessageBundle TEXTS = MessageBundle.beside(BundleTexts.class, "bundles");

    private BundleTexts() {}

    /** A text of the bundle with its gaps filled. */
    static Text text(String key, Object... values) {
        return TEXTS.text(key, values);
    }
}
