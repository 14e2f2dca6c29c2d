package org.ohmloom.workbench.lists;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ohmloom.model.ElementId;
import org.ohmloom.workbench.desk.Readout;
import org.ohmloom.workbench.sheet.Adding;
import org.ohmloom.workbench.sheet.CellEdit;
import org.ohmloom.workbench.sheet.Column;
import org.ohmloom.workbench.sheet.ElementSheet;

/**
 * A list of results in which what is entered can be typed too.
 *
 * @param sheet the list
 * @param edits how further columns of it are edited, by their keys
 * @param more  columns behind its own
 * @param adds  what can be added
 * @param <R>   type of the rows
 */
record EditedSheet<R>(ElementSheet<R> sheet, Map<String, CellEdit<R>> edits, List<Column<R>> more, List<Adding> adds)
        implements ElementSheet<R> {

    @Override
    public String title() {
        return sheet.title();
    }

    @Override
    public List<Column<R>> columns() {
        List<Column<R>> columns = new ArrayList<>();
        for (Column<R> column : sheet.columns()) {
            columns.add(Optional.ofNullable(edits.get(column.key()))
                    .map(column::edited)
                    .orElse(column));
        }
        columns.addAll(more);
        return columns;
    }

    @Override
    public List<R> rows(Readout readout) {
        return sheet.rows(readout);
    }

    @Override
    public String key(R row) {
        return sheet.key(row);
    }

    @Override
    public List<String> about(R row) {
        return sheet.about(row);
    }

    @Override
    public ElementId id(R row) {
        return sheet.id(row);
    }
}
