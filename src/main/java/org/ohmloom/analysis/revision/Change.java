package org.ohmloom.analysis.revision;

/** What became of a thing from one revision to the next. */
public enum Change {
    /** Only the new revision has it. */
    ADDED("added"),
    /** Only the old revision has it. */
    REMOVED("removed"),
    /** Both have it, with other contents. */
    CHANGED("changed"),
    /** Both have it with the same contents under different identities. */
    RENUMBERED("renumbered");

    private final String word;

    Change(String word) {
        this.word = word;
    }

    /** What people call it. */
    public String word() {
        return word;
    }
}
