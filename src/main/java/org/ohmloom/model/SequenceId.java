package org.ohmloom.model;

/**
 * Identity of a timed sequence of operating states; survives renaming and is what files and findings refer to.
 *
 * @param value the text, for example {@code day-out}; see {@link ElementId#check(String)}
 */
public record SequenceId(String value) implements ElementId {

    public SequenceId {
        ElementId.check(value);
    }

    @Override
    public String toString() {
        return value;
    }
}
