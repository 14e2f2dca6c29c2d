package org.ohmloom.cli;

import org.ohmloom.analysis.Analysis;
import org.ohmloom.review.Severity;

/** Exit statuses of the command line contract. */
final class ExitStatus {

    /** No error findings. */
    static final int CLEAN = 0;

    /** Error findings that are not accepted. */
    static final int ERRORS_FOUND = 1;

    /** Wrong usage, or a file that cannot be read or written. */
    static final int UNUSABLE = 2;

    private ExitStatus() {}

    /** Status for an analysis. */
    static int of(Analysis analysis) {
        return analysis.count(Severity.ERROR) > 0 ? ERRORS_FOUND : CLEAN;
    }
}
