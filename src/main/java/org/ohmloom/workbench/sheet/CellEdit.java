package org.ohmloom.workbench.sheet;

import java.util.List;
import org.ohmloom.edit.Edit;

/**
 * How the cells of a column are edited.
 *
 * @param <R> type of the rows
 */
public interface CellEdit<R> {

    /** Whether the cell of a row can be edited. */
    default boolean suits(R row) {
        return true;
    }

    /** The text editing starts from. */
    String start(R row);

    /**
     * The edit that puts what was typed into the cells of the rows.
     *
     * @throws IllegalArgumentException when the text is not what is needed there; the message says what would be right
     */
    Edit parse(List<R> rows, String typed);
}
