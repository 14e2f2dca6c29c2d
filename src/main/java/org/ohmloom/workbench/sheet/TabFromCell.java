package org.ohmloom.workbench.sheet;

import java.awt.event.ActionEvent;
import java.util.List;
import javax.swing.AbstractAction;
import javax.swing.Action;

/**
 * Goes on from a cell with Tab. What was typed may move its row, where the list is sorted by that column: it goes on in that row,
 * not in the one that stands at its old place now.
 */
final class TabFromCell extends AbstractAction {

    private static final long serialVersionUID = 1L;

    private final transient SheetTable table;
    private final transient Action usual;

    private TabFromCell(SheetTable table, Action usual) {
        this.table = table;
        this.usual = usual;
    }

    /** Lets both directions of a table go on so. */
    static void install(SheetTable table) {
        for (String name : List.of("selectNextColumnCell", "selectPreviousColumnCell")) {
            table.getActionMap()
                    .put(name, new TabFromCell(table, table.getActionMap().get(name)));
        }
    }

    @Override
    public void actionPerformed(ActionEvent event) {
        int column = table.getEditingColumn();
        if (table.isEditing() && table.getSelectedRowCount() == 1 && table.commit() && table.getSelectedRow() >= 0) {
            table.changeSelection(table.getSelectedRow(), column, false, false);
        }
        usual.actionPerformed(event);
    }
}
