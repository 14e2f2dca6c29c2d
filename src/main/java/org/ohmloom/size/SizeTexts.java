package org.ohmloom.size;

import org.ohmloom.model.StateId;
import org.ohmloom.solve.envelope.Combination;
import org.ohmloom.words.MessageBundle;
import org.ohmloom.words.Text;

/** Why a conductor or a device has its size, from the bundle {@code sizes}. */
final class SizeTexts {

    private static final MessageBundle TEXTS = MessageBundle.beside(SizeTexts.class, "sizes");

    private SizeTexts() {}

    /** A text of the bundle with its gaps filled. */
    static Text text(String key, Object... values) {
        return TEXTS.text(key, values);
    }

    /** A state of the harness by its id, or that it is a combination of loads that nobody named. */
    static Text state(StateId state) {
        return Combination.isUnnamed(state) ? text("state.worst") : text("state.named", state);
    }
}
