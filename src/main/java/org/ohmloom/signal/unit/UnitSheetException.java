package org.ohmloom.signal.unit;

/** Thrown when a text describes no control unit; its message is one line that names the place and what would be right. */
public final class UnitSheetException extends Exception {

    private static final long serialVersionUID = 1L;

    UnitSheetException(String message) {
        super(message);
    }
}
