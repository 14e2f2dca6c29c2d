package org.ohmloom.pack;

import org.ohmloom.words.Refusals;
import org.ohmloom.words.WordedException;

/** Says in one line why a build pack was not written, and what would be right. */
public final class PackException extends WordedException {

    private static final long serialVersionUID = 1L;

    /** One line for people, as {@link Refusals#text} takes it. */
    public PackException(String template, Object... values) {
        super(Refusals.text(template, values), null);
    }

    /** One line for people, and what led to it. */
    public PackException(Throwable cause, String template, Object... values) {
        super(Refusals.text(template, values), cause);
    }
}
