package org.ohmloom.analysis.revision;

import org.ohmloom.words.Text;

/**
 * One field of an element with other contents.
 *
 * @param aboveText  words of what it is a field of, where that is not the element itself: "cavity 3"
 * @param fieldText  words of the field: "size", "cavity 3, contact"
 * @param beforeText what it was, with its unit; nothing for nothing
 * @param afterText  what it is now, with its unit; nothing for nothing
 */
public record FieldChange(Text aboveText, Text fieldText, Text beforeText, Text afterText) {

    /** What became of an element that has no field to tell: another identity, or nothing. */
    public static FieldChange ofIdentity(ElementChange change) {
        return new FieldChange(
                Text.NONE,
                change.was().isEmpty() ? Text.NONE : Text.of("id"),
                Text.of(change.was()),
                Text.of(change.id()));
    }

    /** Whether there was something and now is nothing. */
    public boolean isGone() {
        return !before().isEmpty() && after().isEmpty();
    }

    /** Words of the field, in English. */
    public String field() {
        return fieldText.english();
    }

    /** What it was, in English. */
    public String before() {
        return beforeText.english();
    }

    /** What it is now, in English. */
    public String after() {
        return afterText.english();
    }
}
