package org.ohmloom.model;

import static org.ohmloom.units.Require.notBlank;

/**
 * One line of the revision table.
 *
 * @param index       letter or number of the revision
 * @param date        date, ISO 8601 text
 * @param by          who made it
 * @param description what changed
 */
public record Revision(String index, String date, String by, String description) {

    public Revision {
        notBlank(index, "index of a revision");
    }
}
