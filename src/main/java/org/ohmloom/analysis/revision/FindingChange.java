package org.ohmloom.analysis.revision;

import org.ohmloom.review.Finding;
import org.ohmloom.words.Text;

/**
 * A finding that came, went, was accepted or no longer is.
 *
 * @param finding the finding as the new revision has it; of one that went as the old one had it
 * @param change  added or removed; changed when it is another severity or another acceptance
 * @param was     how it stood in the old revision when it changed: its severity and whether it was accepted
 */
public record FindingChange(Finding finding, Change change, Text was) {

    /** What people say of such a finding: it is new, gone or changed. */
    public Text text() {
        return RevisionWords.text(
                switch (change) {
                    case ADDED -> "new";
                    case REMOVED -> "gone";
                    case CHANGED, RENUMBERED -> "changed";
                });
    }

    /** The same in English. */
    public String word() {
        return text().english();
    }
}
