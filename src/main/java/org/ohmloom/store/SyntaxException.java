package org.ohmloom.store;

/** Thrown inside this package when a text is not JSON; leaves it as a {@link HarnessFileException}. */
final class SyntaxException extends Exception {
    private static final long serialVersionUID = 1L;

    private final int line;
    private final int column;

    /** A problem at a line and a column, both counted from 1. */
    SyntaxException(int line, int column, String problem) {
        super(problem);
        this.line = line;
        this.column = column;
    }

    /** The place as line:column. */
    String place() {
        return line + ":" + column;
    }

    String problem() {
        return String.valueOf(getMessage());
    }
}
