package org.ohmloom.bench;

import org.ohmloom.words.Constants;

/** What a measured value says of the harness it was measured on. */
public enum Verdict {
    /** Within its limit. */
    PASSED,
    /** Beyond its limit. */
    FAILED,
    /** There is nothing to hold it against, or it proves nothing. */
    NOT_JUDGED;

    /** What people say, in English. */
    public String words() {
        return Constants.text(this).english();
    }
}
