package org.ohmloom.workbench;

import java.util.List;
import org.ohmloom.model.ElementId;

/**
 * One kind of thing as a list: its columns and its rows.
 *
 * @param <R> type of the rows
 */
interface Sheet<R> {

    /** What the list holds, in the plural. */
    String title();

    List<Column<R>> columns();

    /** The rows in the order of their ids. */
    List<R> rows(Readout readout);

    /** Id of the element a row is about. */
    ElementId id(R row);
}
