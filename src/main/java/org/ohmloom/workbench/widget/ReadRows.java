package org.ohmloom.workbench.widget;

import java.util.List;
import javax.swing.table.DefaultTableModel;

/** Rows of a table that is read, not typed in. */
public final class ReadRows extends DefaultTableModel {

    private static final long serialVersionUID = 1L;

    /** No rows yet. */
    public ReadRows(List<String> heads) {
        super(heads.toArray(), 0);
    }

    @Override
    public boolean isCellEditable(int row, int column) {
        return false;
    }
}
