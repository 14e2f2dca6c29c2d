package org.ohmloom.workbench.channel;

import java.awt.Dimension;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.IntConsumer;
import javax.swing.DefaultCellEditor;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.JTextField;
import javax.swing.event.TableModelEvent;
import javax.swing.table.DefaultTableModel;
import net.miginfocom.swing.MigLayout;
import org.ohmloom.workbench.widget.FormTable;
import org.ohmloom.workbench.words.Words;

/** Rows of texts typed into a table, with buttons below that add, remove and move them. */
final class TypedRows extends JPanel {

    private static final long serialVersionUID = 1L;
    private static final int WIDTH = 860;
    private static final int ROWS = 7;

    private final transient Words words;
    private final String name;
    private final DefaultTableModel model;
    private final JTable table;
    private final JPanel buttons = new JPanel(new MigLayout("insets 0, gapx 6"));
    private int fixed;
    private boolean filling;

    /**
     * Rows.
     *
     * @param name    begins the names of table and buttons
     * @param columns what stands over the columns
     */
    TypedRows(Words words, String name, String spoken, List<String> columns) {
        super(new MigLayout("insets 6 0 0 0, fill, wrap 1, gapy 6", "[grow,fill]"));
        this.words = words;
        this.name = name;
        this.model = new DefaultTableModel(columns.toArray(), 0) {
            private static final long serialVersionUID = 1L;

            @Override
            public boolean isCellEditable(int row, int column) {
                return column >= fixed;
            }
        };
        this.table = new FormTable(model, WIDTH, ROWS);
        table.setName(name);
        table.getAccessibleContext().setAccessibleName(spoken);
        table.getTableHeader().getAccessibleContext().setAccessibleName(spoken);
        table.getTableHeader().setReorderingAllowed(false);
        table.setSurrendersFocusOnKeystroke(true);
        table.putClientProperty("terminateEditOnFocusLost", true);
        table.setFillsViewportHeight(true);
        JTextField field = new JTextField();
        field.getAccessibleContext().setAccessibleName(spoken);
        table.setDefaultEditor(Object.class, new DefaultCellEditor(field));
        add(new JScrollPane(table), "grow, push");
        add(buttons, "growx");
    }

    /** Does something after every change a person makes; handed the row, or -1 for several. */
    void onChange(IntConsumer task) {
        model.addTableModelListener(event -> {
            if (!filling) {
                boolean one = event.getType() == TableModelEvent.UPDATE && event.getFirstRow() == event.getLastRow();
                task.accept(one ? event.getFirstRow() : -1);
            }
        });
    }

    /** What can be chosen in a column; anything else that stands there stays until another is chosen. */
    void choices(int column, List<String> choices) {
        JComboBox<String> box = new JComboBox<>(choices.toArray(new String[0]));
        box.putClientProperty("JComboBox.isTableCellEditor", true);
        box.getAccessibleContext().setAccessibleName(model.getColumnName(column));
        table.getColumnModel().getColumn(column).setCellEditor(new DefaultCellEditor(box));
    }

    /** Lets nobody type into the first columns, and shows so many rows. */
    void fixed(int columns, int rowsShown) {
        fixed = columns;
        table.setPreferredScrollableViewportSize(
                new Dimension(table.getPreferredScrollableViewportSize().width, rowsShown * table.getRowHeight()));
    }

    /** Widths of the columns, unscaled px. */
    void widths(Integer... widths) {
        for (int k = 0; k < widths.length; k++) {
            table.getColumnModel().getColumn(k).setPreferredWidth(com.formdev.flatlaf.util.UIScale.scale((int)
                    widths[k]));
        }
    }

    /** A button below the table. */
    JButton button(String key, Runnable task) {
        JButton made = new JButton(words.get(key));
        made.setName(name + key.substring(key.lastIndexOf('.')).replace('.', '-'));
        made.setToolTipText(words.get(key + ".about"));
        made.addActionListener(event -> {
            commit();
            task.run();
        });
        buttons.add(made);
        return made;
    }

    /** Buttons that remove the chosen row and move it up and down. */
    void rowButtons(boolean ordered) {
        button("rows.remove", () -> {
            if (table.getSelectedRow() >= 0) {
                model.removeRow(table.getSelectedRow());
            }
        });
        if (ordered) {
            button("rows.up", () -> move(-1));
            button("rows.down", () -> move(1));
        }
    }

    private void move(int by) {
        int row = table.getSelectedRow();
        if (row >= 0 && row + by >= 0 && row + by < model.getRowCount()) {
            model.moveRow(row, row, row + by);
            table.changeSelection(row + by, 0, false, false);
        }
    }

    /** Takes in what is being typed. */
    void commit() {
        if (table.isEditing()) {
            table.getCellEditor().stopCellEditing();
        }
    }

    /** The rows as they stand. */
    List<List<String>> rows() {
        List<List<String>> rows = new ArrayList<>();
        for (int row = 0; row < model.getRowCount(); row++) {
            List<String> cells = new ArrayList<>();
            for (int column = 0; column < model.getColumnCount(); column++) {
                Object value = model.getValueAt(row, column);
                cells.add(value == null ? "" : value.toString().strip());
            }
            rows.add(cells);
        }
        return rows;
    }

    /** Puts other rows in. */
    void fill(List<List<String>> rows) {
        filling = true;
        try {
            model.setRowCount(0);
            rows.forEach(row -> model.addRow(row.toArray()));
        } finally {
            filling = false;
        }
        model.fireTableDataChanged();
    }

    /** Puts a row in at the end and chooses it. */
    void addRow(String... cells) {
        model.addRow(Arrays.copyOf(cells, model.getColumnCount(), Object[].class));
        table.changeSelection(model.getRowCount() - 1, 0, false, false);
    }

    /** Puts a text in a cell without that being a change of its own. */
    void put(int row, int column, String text) {
        filling = true;
        try {
            model.setValueAt(text, row, column);
        } finally {
            filling = false;
        }
    }

    JTable table() {
        return table;
    }
}
