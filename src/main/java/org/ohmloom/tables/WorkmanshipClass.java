package org.ohmloom.tables;

import org.ohmloom.words.Refusals;

/**
 * A class of workmanship a harness is asked to be made to.
 *
 * @param number   its number, 1 to 3
 * @param title    what it is called
 * @param meaning  what it is for
 * @param citation the standard
 */
public record WorkmanshipClass(int number, String title, String meaning, Citation citation) {

    /** Reads a row with the columns class, title and meaning. */
    static WorkmanshipClass read(RowReader row) {
        String number = row.text("class");
        if (!number.matches("[1-3]")) {
            throw row.unfit("class", Refusals.text("'%s' is no class of workmanship; write 1, 2 or 3", number));
        }
        return new WorkmanshipClass(
                Integer.parseInt(number), row.text("title"), row.text("meaning"), row.citation(number, "class"));
    }

    /** The class for a title block or a note: "class 2, dedicated service (IPC/WHMA-A-620)". */
    public String text() {
        return "class " + number + ", " + title + " (" + citation.document() + ")";
    }
}
