package org.ohmloom.workbench.sheet;

import java.awt.Component;
import javax.swing.JLabel;
import javax.swing.JTable;
import javax.swing.SwingConstants;
import javax.swing.UIManager;
import javax.swing.table.JTableHeader;
import javax.swing.table.TableCellRenderer;

/** Paints the head of a column on the side its cells stand on. */
final class HeadRenderer implements TableCellRenderer {

    @Override
    public Component getTableCellRendererComponent(
            JTable table, Object value, boolean selected, boolean focused, int row, int column) {
        TableCellRenderer usual = (TableCellRenderer) UIManager.get("TableHeader.renderer");
        TableCellRenderer renderer = usual == null ? new JTableHeader().getDefaultRenderer() : usual;
        Component painted = renderer.getTableCellRendererComponent(table, value, selected, focused, row, column);
        if (painted instanceof JLabel label && table.getModel() instanceof SheetModel<?> model) {
            boolean numeric =
                    model.column(table.convertColumnIndexToModel(column)).numeric();
            label.setHorizontalAlignment(numeric ? SwingConstants.TRAILING : SwingConstants.LEADING);
        }
        return painted;
    }
}
