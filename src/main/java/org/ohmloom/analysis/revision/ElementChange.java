package org.ohmloom.analysis.revision;

import java.util.List;
import org.ohmloom.words.Text;

/**
 * What became of one element of the harness.
 *
 * @param kind   kind of element in words: "wire", "connector"
 * @param id     identity in the new revision, in the old one when it is removed; empty for what has none (title block, design rules)
 * @param was    identity in the old revision when it is renumbered, else empty
 * @param name   what people call it, empty when it has no name of its own
 * @param change what became of it
 * @param fields fields with other contents; of an added or removed one all that say something
 */
public record ElementChange(String kind, String id, String was, String name, Change change, List<FieldChange> fields) {

    public ElementChange {
        fields = List.copyOf(fields);
    }

    /** The kind of element in any language. */
    public Text kindText() {
        return RevisionWords.text(kind);
    }
}
