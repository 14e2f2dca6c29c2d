package org.ohmloom.workbench.sheet;

import java.util.List;
import org.ohmloom.workbench.desk.Readout;

/**
 * One kind of thing as a list: its columns and its rows.
 *
 * @param <R> type of the rows
 */
public interface Sheet<R> {

    /** What the list holds, in the plural. */
    String title();

    List<Column<R>> columns();

    /** The rows in their order. */
    List<R> rows(Readout readout);

    /** What tells a row from all others and stays while its numbers change. */
    String key(R row);

    /** Ids of the elements that are selected with a row. */
    List<String> about(R row);

    /** What can be added to it. */
    default List<Adding> adds() {
        return List.of();
    }
}
