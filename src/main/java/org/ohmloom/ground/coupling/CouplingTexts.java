package org.ohmloom.ground.coupling;

import org.ohmloom.words.MessageBundle;
import org.ohmloom.words.Text;

/** What is said of wires that couple along bundles, from the bundle {@code couplings}. */
final class CouplingTexts {

    private static final MessageBundle TEXTS = MessageBundle.beside(CouplingTexts.class, "couplings");

    private CouplingTexts() {}

    /** A text of the bundle with its gaps filled. */
    static Text text(String key, Object... values) {
        return TEXTS.text(key, values);
    }
}
