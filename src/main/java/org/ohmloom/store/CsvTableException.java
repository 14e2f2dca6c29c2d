package org.ohmloom.store;

/** Thrown when a text is no table; its message is one line that names the file, the place and what is wrong. */
public final class CsvTableException extends Exception {

    private static final long serialVersionUID = 1L;

    CsvTableException(String message) {
        super(message);
    }
}
