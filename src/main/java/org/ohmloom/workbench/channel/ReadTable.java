package org.ohmloom.workbench.channel;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Component;
import java.awt.event.KeyEvent;
import java.util.function.BiPredicate;
import javax.swing.JTable;
import javax.swing.ListSelectionModel;
import javax.swing.table.AbstractTableModel;
import javax.swing.table.DefaultTableCellRenderer;
import org.ohmloom.workbench.widget.ColumnHeads;
import org.ohmloom.workbench.widget.Keys;
import org.ohmloom.workbench.widget.Tone;

/** A table of texts that is read, one row of it chosen at a time; the whole text of a cell is its tip. */
final class ReadTable extends JTable {

    private static final long serialVersionUID = 1L;

    private final transient BiPredicate<Integer, Integer> soft;

    /**
     * A table.
     *
     * @param widths usual widths of its columns, unscaled px
     * @param soft   whether the text of a row and column is of second rank
     */
    ReadTable(AbstractTableModel model, String name, int[] widths, BiPredicate<Integer, Integer> soft) {
        super(model);
        this.soft = soft;
        setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        setFillsViewportHeight(true);
        setDefaultRenderer(String.class, new Renderer());
        setDefaultRenderer(Object.class, new Renderer());
        getAccessibleContext().setAccessibleName(name);
        getTableHeader().getAccessibleContext().setAccessibleName(name);
        getTableHeader().setReorderingAllowed(false);
        for (int k = 0; k < widths.length; k++) {
            getColumnModel().getColumn(k).setPreferredWidth(UIScale.scale(widths[k]));
        }
        ColumnHeads.keep(this);
        // Tab leaves the table, and F8 belongs to a command.
        Keys.leaveByTab(this);
        Keys.leave(this, KeyEvent.VK_F8);
    }

    /** As wide as its pane, or as its columns ask for where the pane is narrower: it is scrolled then. */
    @Override
    public boolean getScrollableTracksViewportWidth() {
        return getParent() == null || getPreferredSize().width < getParent().getWidth();
    }

    /** Chooses a row and brings it into view; none for -1. */
    void choose(int row) {
        if (row < 0 || row >= getRowCount()) {
            clearSelection();
        } else {
            setRowSelectionInterval(row, row);
            scrollRectToVisible(getCellRect(row, 0, true));
        }
    }

    private final class Renderer extends DefaultTableCellRenderer {
        private static final long serialVersionUID = 1L;

        @Override
        public Component getTableCellRendererComponent(
                JTable table, Object value, boolean selected, boolean focused, int row, int column) {
            super.getTableCellRendererComponent(table, value, selected, focused, row, column);
            setToolTipText(String.valueOf(value));
            if (!selected) {
                setForeground((soft.test(row, column) ? Tone.SOFT : Tone.PLAIN).colour());
            }
            return this;
        }
    }
}
