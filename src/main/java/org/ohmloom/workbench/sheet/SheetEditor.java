package org.ohmloom.workbench.sheet;

import com.formdev.flatlaf.FlatClientProperties;
import java.awt.Component;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.awt.event.MouseEvent;
import java.util.EventObject;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.AbstractCellEditor;
import javax.swing.JComponent;
import javax.swing.JTable;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import javax.swing.SwingConstants;
import javax.swing.table.TableCellEditor;
import org.ohmloom.workbench.widget.TextChanges;
import org.ohmloom.workbench.widget.TextUndo;
import org.ohmloom.workbench.words.Words;

/**
 * Edits a cell as text. What does not fit stays in the cell, marked, with the reason beside it, until it is mended or
 * given up with Escape.
 */
final class SheetEditor extends AbstractCellEditor implements TableCellEditor {
    private static final Words WORDS = Words.of("sheets");

    private static final long serialVersionUID = 1L;

    private final JTextField field = new JTextField();
    private final transient Consumer<String> problem;
    private transient Checking checking = text -> {};
    private boolean forAllSelected;

    /** Refuses a text with {@link IllegalArgumentException}. */
    @FunctionalInterface
    private interface Checking {
        void check(String text);
    }

    /**
     * An editor.
     *
     * @param problem takes what is wrong with the text, or nothing when it is right
     * @param entered what Enter does
     */
    SheetEditor(Consumer<String> problem, Runnable entered) {
        this.problem = problem;
        field.setHorizontalAlignment(SwingConstants.TRAILING);
        field.putClientProperty("JComboBox.isTableCellEditor", Boolean.TRUE);
        TextUndo.install(field);
        field.addActionListener(pressed -> entered.run());
        KeyStroke fill = KeyStroke.getKeyStroke(KeyEvent.VK_ENTER, InputEvent.CTRL_DOWN_MASK);
        field.registerKeyboardAction(
                pressed -> {
                    forAllSelected = true;
                    if (!stopCellEditing()) {
                        forAllSelected = false;
                    }
                },
                fill,
                JComponent.WHEN_FOCUSED);
        TextChanges.listen(field, this::clear);
    }

    /** The text field of the editor. */
    JTextField field() {
        return field;
    }

    /** Whether the text is meant for every selected row, once asked. */
    boolean takeForAllSelected() {
        boolean taken = forAllSelected;
        forAllSelected = false;
        return taken;
    }

    @Override
    public boolean isCellEditable(EventObject event) {
        return !(event instanceof MouseEvent mouse) || mouse.getClickCount() >= 2;
    }

    @Override
    public Component getTableCellEditorComponent(JTable table, Object value, boolean selected, int row, int column) {
        SheetModel<?> model = (SheetModel<?>) table.getModel();
        int modelRow = table.convertRowIndexToModel(row);
        int modelColumn = table.convertColumnIndexToModel(column);
        checking = text -> model.parse(List.of(modelRow), modelColumn, text);
        Column<?> kind = model.column(modelColumn);
        field.setText(model.start(modelRow, modelColumn));
        field.setHorizontalAlignment(kind.numeric() ? SwingConstants.TRAILING : SwingConstants.LEADING);
        field.getAccessibleContext()
                .setAccessibleName(WORDS.get("sheet-editor.of", model.getColumnName(modelColumn), model.id(modelRow)));
        TextUndo.forget(field);
        clear();
        field.selectAll();
        return field;
    }

    @Override
    public Object getCellEditorValue() {
        return field.getText();
    }

    @Override
    public boolean stopCellEditing() {
        try {
            checking.check(field.getText());
        } catch (IllegalArgumentException wrong) {
            field.putClientProperty(FlatClientProperties.OUTLINE, FlatClientProperties.OUTLINE_ERROR);
            field.setToolTipText(Words.said(wrong));
            field.getAccessibleContext().setAccessibleDescription(Words.said(wrong));
            problem.accept(Words.said(wrong));
            return false;
        }
        return super.stopCellEditing();
    }

    @Override
    public void cancelCellEditing() {
        clear();
        super.cancelCellEditing();
    }

    private void clear() {
        field.putClientProperty(FlatClientProperties.OUTLINE, null);
        field.setToolTipText(null);
        problem.accept("");
    }
}
