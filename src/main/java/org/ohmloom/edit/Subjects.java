package org.ohmloom.edit;

import java.util.Collection;

/** Words for what an edit is about. */
final class Subjects {

    private Subjects() {}

    /** The one thing by its id, several by their count. */
    static String text(Collection<?> ids, String plural) {
        return ids.size() == 1 ? ids.iterator().next().toString() : ids.size() + " " + plural;
    }
}
