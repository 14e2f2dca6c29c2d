package org.ohmloom.units;

import org.ohmloom.words.UnfitException;

/**
 * A text is not the quantity or conductor size that was asked for.
 *
 * <p>The message is one line for the person who typed the text: what is wrong, and what would be right.
 */
public final class QuantityFormatException extends UnfitException {
    private static final long serialVersionUID = 1L;

    /** Creates the refusal with its one-line sentence, as {@link UnfitException} takes it. */
    public QuantityFormatException(String template, Object... values) {
        super(template, values);
    }
}
