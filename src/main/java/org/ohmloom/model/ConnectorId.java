package org.ohmloom.model;

/**
 * Identity of a connector; survives renaming and is what files and findings refer to.
 *
 * @param value the text, for example {@code X1}; see {@link ElementId#check(String)}
 */
public record ConnectorId(String value) implements ElementId {

    public ConnectorId {
        ElementId.check(value);
    }

    @Override
    public String toString() {
        return value;
    }
}
