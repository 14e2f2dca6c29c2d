package org.ohmloom.analysis.revision;

import java.util.List;
import org.ohmloom.words.Text;

/**
 * The words of a field, down from the element: "cavity 3, contact".
 *
 * @param above what it is a field of, in any language; nothing for the element itself
 * @param head what stands before the last word, with what comes between
 * @param said the same in any language
 * @param last the last word
 * @param word the same in any language; as it is where it is typed
 */
record FieldPath(Text above, String head, Text said, String last, Text word) {

    /** The field of a component that says what it is. */
    private static final String DEVICE = "device";

    /** The element itself. */
    static final FieldPath START = new FieldPath(Text.NONE, "", Text.NONE, "", Text.NONE);

    String english() {
        return head + last;
    }

    Text text() {
        return Text.joined("", List.of(said, word));
    }

    /** A field of what this leads to; a component is its device: what belongs to it needs no second name. */
    FieldPath field(String words) {
        return english().isEmpty() || english().equals(DEVICE)
                ? of(Text.NONE, "", Text.NONE, words)
                : of(text(), english() + ", ", Text.joined("", List.of(text(), Text.of(", "))), words);
    }

    /** One of several by what tells it from the others. */
    FieldPath one(String name) {
        return new FieldPath(
                above, english() + " ", Text.joined("", List.of(text(), Text.of(" "))), name, Text.of(name));
    }

    /** One of what this names many of. */
    FieldPath singular(String component) {
        return component.endsWith("ies")
                ? of(above, head, said, last.substring(0, last.length() - 3) + "y")
                : last.endsWith("s") ? of(above, head, said, last.substring(0, last.length() - 1)) : this;
    }

    private static FieldPath of(Text above, String head, Text said, String words) {
        return new FieldPath(above, head, said, words, RevisionWords.text(words));
    }
}
