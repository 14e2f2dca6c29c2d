package org.ohmloom.analysis;

/** Thrown when a harness cannot be analysed at all, for example because its design basis is not known. */
public final class AnalysisRefusedException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    /** Refuses with one line that says what is wrong and what would be right. */
    public AnalysisRefusedException(String message) {
        super(message);
    }
}
