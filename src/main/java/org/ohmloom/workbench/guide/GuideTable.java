package org.ohmloom.workbench.guide;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Component;
import java.util.List;
import java.util.Vector;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.swing.DefaultCellEditor;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.JTextField;
import javax.swing.table.DefaultTableModel;
import net.miginfocom.swing.MigLayout;
import org.ohmloom.workbench.widget.FormTable;
import org.ohmloom.workbench.widget.PaneTitle;
import org.ohmloom.workbench.widget.WrappedText;
import org.ohmloom.workbench.words.Words;

/** A short list to fill in: one row a thing, with buttons to add and take out rows. */
final class GuideTable extends JPanel {

    private static final long serialVersionUID = 1L;
    private static final int WIDTH = 620;
    private static final int VISIBLE_ROWS = 6;

    private final DefaultTableModel model = new DefaultTableModel();
    private final JTable table = new FormTable(model, WIDTH, VISIBLE_ROWS);
    private final transient Supplier<List<String>> fresh;

    /**
     * A column.
     *
     * @param head    its head
     * @param choices what may be chosen; empty for one that is typed
     */
    record Head(String head, Supplier<List<String>> choices) {
        static Head typed(String head) {
            return new Head(head, List::of);
        }
    }

    /**
     * A list.
     *
     * @param name  name of the table, for tests and readers
     * @param title what stands above it
     * @param about what to enter
     * @param fresh a new row
     */
    GuideTable(String name, String title, String about, List<Head> heads, Supplier<List<String>> fresh) {
        super(new MigLayout("insets 0, fill, wrap 1, gapy 4", "[grow,fill]"));
        this.fresh = fresh;
        Words words = Words.of("guide");
        heads.forEach(head -> model.addColumn(head.head()));
        for (int k = 0; k < heads.size(); k++) {
            table.getColumnModel().getColumn(k).setCellEditor(editor(heads.get(k), name));
            table.getColumnModel().getColumn(k).setPreferredWidth(widest(heads.get(k)));
        }
        table.setName("guide-" + name);
        table.getAccessibleContext().setAccessibleName(title);
        table.setSurrendersFocusOnKeystroke(true);
        table.putClientProperty("terminateEditOnFocusLost", true);
        table.setFillsViewportHeight(true);
        add(PaneTitle.of(title));
        add(WrappedText.of(about, "Ohmloom.soft", 0), "wmin 0");
        add(new JScrollPane(table), "grow, push, hmin 40");
        JPanel buttons = new JPanel(new MigLayout("insets 0, gapx 6"));
        JButton more = new JButton(words.get("add-row"));
        more.setName("add-" + name);
        more.addActionListener(event -> addRow());
        JButton less = new JButton(words.get("remove-row"));
        less.setName("remove-" + name);
        less.addActionListener(event -> removeRow());
        buttons.add(more);
        buttons.add(less);
        add(buttons, "hmin pref");
    }

    private int widest(Head head) {
        return Stream.concat(Stream.of(head.head()), head.choices().get().stream())
                        .mapToInt(text -> table.getFontMetrics(table.getFont()).stringWidth(text))
                        .max()
                        .orElse(0)
                + UIScale.scale(24);
    }

    JTable table() {
        return table;
    }

    /** Adds a row and begins to type in it. */
    private void addRow() {
        commit();
        row(fresh.get());
        int last = model.getRowCount() - 1;
        table.setRowSelectionInterval(last, last);
        table.scrollRectToVisible(table.getCellRect(last, 0, true));
        table.editCellAt(last, 0);
        table.requestFocusInWindow();
    }

    void row(List<String> cells) {
        model.addRow(new Vector<>(cells));
    }

    private void removeRow() {
        if (table.isEditing()) {
            table.getCellEditor().cancelCellEditing();
        }
        int row = table.getSelectedRow();
        if (row >= 0) {
            model.removeRow(row);
        }
    }

    /** Takes over what is being typed. */
    void commit() {
        if (table.isEditing()) {
            table.getCellEditor().stopCellEditing();
        }
    }

    /** What is entered, row by row. */
    List<List<String>> rows() {
        commit();
        return IntStream.range(0, model.getRowCount())
                .mapToObj(row -> IntStream.range(0, model.getColumnCount())
                        .mapToObj(column ->
                                String.valueOf(model.getValueAt(row, column)).strip())
                        .toList())
                .toList();
    }

    private static DefaultCellEditor editor(Head head, String name) {
        if (head.choices().get().isEmpty()) {
            JTextField field = new JTextField();
            field.setName("edit-" + name);
            field.getAccessibleContext().setAccessibleName(head.head());
            DefaultCellEditor editor = new DefaultCellEditor(field);
            editor.setClickCountToStart(1);
            return editor;
        }
        JComboBox<String> box = new JComboBox<>();
        box.getAccessibleContext().setAccessibleName(head.head());
        box.putClientProperty("JComboBox.isTableCellEditor", true);
        return new Choosing(box, head.choices());
    }

    /** A choice whose entries are looked up when it opens. */
    private static final class Choosing extends DefaultCellEditor {
        private static final long serialVersionUID = 1L;
        private final JComboBox<String> box;
        private final transient Supplier<List<String>> choices;

        Choosing(JComboBox<String> box, Supplier<List<String>> choices) {
            super(box);
            this.box = box;
            this.choices = choices;
        }

        @Override
        public Component getTableCellEditorComponent(
                JTable table, Object value, boolean isSelected, int row, int column) {
            box.removeAllItems();
            choices.get().forEach(box::addItem);
            return super.getTableCellEditorComponent(table, value, isSelected, row, column);
        }
    }
}
