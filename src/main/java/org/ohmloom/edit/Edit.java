package org.ohmloom.edit;

import org.jspecify.annotations.Nullable;
import org.ohmloom.model.Harness;
import org.ohmloom.words.Text;

/**
 * A change to a harness as a value with a label. Undo steps back one snapshot, so no edit knows its own inverse.
 */
public interface Edit {

    /** What it does, as the menu shows it: "Set conductor of W3". */
    Text label();

    /** The changed harness; the same instance when nothing changes. */
    Harness apply(Harness before);

    /** Edits with the same key within a short pause count as one step; null for an edit that never merges. */
    default @Nullable Object mergeKey() {
        return null;
    }
}
