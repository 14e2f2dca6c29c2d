package org.ohmloom.analysis.revision;

import org.ohmloom.words.Constants;

/** What became of a thing from one revision to the next. */
public enum Change {
    /** Only the new revision has it. */
    ADDED,
    /** Only the old revision has it. */
    REMOVED,
    /** Both have it, with other contents. */
    CHANGED,
    /** Both have it with the same contents under different identities. */
    RENUMBERED;

    /** What people call it, in English. */
    public String word() {
        return Constants.text(this).english();
    }
}
