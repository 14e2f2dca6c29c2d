package org.ohmloom.model;

/**
 * Identity of a bundle segment; survives renaming and is what files and findings refer to.
 *
 * @param value the text, for example {@code SEG1}; see {@link ElementId#check(String)}
 */
public record SegmentId(String value) implements ElementId {

    public SegmentId {
        ElementId.check(value);
    }

    @Override
    public String toString() {
        return value;
    }
}
