package org.ohmloom.store;

import org.ohmloom.words.Text;

/** Thrown inside this package when a text is not JSON; leaves it as a {@link HarnessFileException}. */
final class SyntaxException extends Exception {
    private static final long serialVersionUID = 1L;

    private final int line;
    private final int column;
    private final transient Text problem;

    /** A problem at a line and a column, both counted from 1. */
    SyntaxException(int line, int column, Text problem) {
        super(problem.english());
        this.problem = problem;
        this.line = line;
        this.column = column;
    }

    /** The place as line:column. */
    String place() {
        return line + ":" + column;
    }

    Text problem() {
        return problem;
    }
}
