package org.ohmloom.workbench.sheet;

import java.util.List;
import org.ohmloom.model.ElementId;

/**
 * A list with one row for each element, in the order of their ids.
 *
 * @param <R> type of the rows
 */
public interface ElementSheet<R> extends Sheet<R> {

    /** Id of the element a row is about. */
    ElementId id(R row);

    @Override
    default String key(R row) {
        return id(row).value();
    }

    @Override
    default List<String> about(R row) {
        return List.of(key(row));
    }
}
