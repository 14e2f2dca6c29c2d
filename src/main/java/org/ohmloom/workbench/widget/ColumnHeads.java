package org.ohmloom.workbench.widget;

import javax.swing.JLabel;
import javax.swing.JTable;
import javax.swing.SwingConstants;
import javax.swing.table.TableColumn;

/** The heads of the columns of a table that shares its width among them. */
public final class ColumnHeads {

    private ColumnHeads() {}

    /** Writes heads where the cells begin. */
    public static void begin(JTable table) {
        if (table.getTableHeader().getDefaultRenderer() instanceof JLabel head) {
            head.setHorizontalAlignment(SwingConstants.LEADING);
        }
    }

    /** Keeps every column as wide as its head is written. */
    public static void keep(JTable table) {
        begin(table);
        for (int k = 0; k < table.getColumnCount(); k++) {
            TableColumn column = table.getColumnModel().getColumn(k);
            int wide = table.getTableHeader()
                    .getDefaultRenderer()
                    .getTableCellRendererComponent(table, column.getHeaderValue(), false, false, -1, k)
                    .getPreferredSize()
                    .width;
            column.setMinWidth(wide);
            column.setPreferredWidth(Math.max(wide, column.getPreferredWidth()));
        }
    }
}
