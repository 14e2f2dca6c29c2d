package org.ohmloom.store;

import org.ohmloom.words.Refusals;
import org.ohmloom.words.WordedException;

/** Thrown when a text is no table; its message is one line that names the file, the place and what is wrong. */
public final class CsvTableException extends WordedException {

    private static final long serialVersionUID = 1L;

    CsvTableException(String template, Object... values) {
        super(Refusals.text(template, values), null);
    }
}
