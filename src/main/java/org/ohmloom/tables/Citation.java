package org.ohmloom.tables;

/**
 * Where a value comes from.
 *
 * @param document the standard or regulation; "none" where the trade's habit is all there is
 * @param edition  its edition, or "not stated"
 * @param table    the table, figure or clause
 * @param row      the row (and column) the value was read from
 * @param status   how well it is founded
 */
public record Citation(String document, String edition, String table, String row, Status status) {
    /** Marks a missing document or edition in a table file. */
    static final String NONE = "none";

    private static final String NOT_STATED = "not stated";

    /**
     * The citation on one line, as in "FAA AC 43.13-1B CHG 1 (2001), Table 11-9, row 14 AWG"; the status follows in
     * brackets unless it is published.
     */
    public String text() {
        StringBuilder text = new StringBuilder();
        if (!document.equals(NONE)) {
            text.append(document);
            if (!edition.equals(NONE) && !edition.equals(NOT_STATED)) {
                text.append(datedByColon() ? ":" : " ").append(edition);
            }
            text.append(", ");
        }
        text.append(table);
        if (!row.isBlank()) {
            text.append(", row ").append(row);
        }
        if (status != Status.PUBLISHED) {
            text.append(" (").append(status.words()).append(')');
        }
        return text.toString();
    }

    /** ISO and IEC write the year of a standard after a colon. */
    private boolean datedByColon() {
        return edition.matches("\\d{4}") && (document.startsWith("ISO ") || document.startsWith("IEC "));
    }

    /** The same place with another row text. */
    Citation withRow(String newRow) {
        return new Citation(document, edition, table, newRow, status);
    }

    /** The same place, said to be no better founded than the given status. */
    Citation noBetterThan(Status limit) {
        return new Citation(document, edition, table, row, status.weaker(limit));
    }
}
