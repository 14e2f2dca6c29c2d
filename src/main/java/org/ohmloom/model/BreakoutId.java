package org.ohmloom.model;

/**
 * Identity of a breakout or an end of the physical harness; survives renaming and is what files and findings refer to.
 *
 * @param value the text, for example {@code B1}; see {@link ElementId#check(String)}
 */
public record BreakoutId(String value) implements ElementId {

    public BreakoutId {
        ElementId.check(value);
    }

    @Override
    public String toString() {
        return value;
    }
}
