package org.ohmloom.model;

import static org.ohmloom.units.Require.notBlank;

import java.util.List;
import java.util.Optional;

/**
 * The fields of the title block (ISO 7200:2004) and the revision table.
 *
 * @param title              title of the harness
 * @param supplementaryTitle second line of the title
 * @param number             identification number of the document
 * @param owner              legal owner
 * @param creator            who made it
 * @param approver           who approved it
 * @param date               date of issue, ISO 8601 text
 * @param language           language code, for example {@code en}
 * @param revisions          revisions, oldest first; the last is the current one
 */
public record TitleBlock(
        String title,
        Optional<String> supplementaryTitle,
        String number,
        Optional<String> owner,
        Optional<String> creator,
        Optional<String> approver,
        Optional<String> date,
        Optional<String> language,
        List<Revision> revisions) {

    public TitleBlock {
        notBlank(title, "title of the harness");
        notBlank(number, "number of the harness");
        revisions = List.copyOf(revisions);
    }

    /** A title block with a title and a number. */
    public static TitleBlock of(String title, String number) {
        return new TitleBlock(
                title,
                Optional.empty(),
                number,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                List.of());
    }

    /** Index of the current revision, or {@code -} before the first. */
    public String currentRevision() {
        return revisions.isEmpty() ? "-" : revisions.get(revisions.size() - 1).index();
    }
}
