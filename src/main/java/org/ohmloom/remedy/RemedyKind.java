package org.ohmloom.remedy;

import org.ohmloom.words.Constants;
import org.ohmloom.words.Text;

/** The usual remedies of returns. */
public enum RemedyKind {
    OWN_RETURN,
    MOVED_GROUND,
    SINGLE_POINT,
    LARGER_RETURN,
    SECOND_RETURN,
    LIFTED_SHIELD,
    OPENED_LOOP,
    TWISTED,
    SHIELDED,
    NEW_GROUND_POINT,
    CLEANED_JOINT,
    COMBINED;

    /** The kind in words. */
    public Text words() {
        return Constants.text(this);
    }
}
