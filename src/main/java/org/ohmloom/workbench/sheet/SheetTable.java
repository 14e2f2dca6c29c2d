package org.ohmloom.workbench.sheet;

import com.formdev.flatlaf.util.UIScale;
import java.awt.event.KeyEvent;
import java.awt.event.MouseEvent;
import java.util.EventObject;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import javax.swing.JTable;
import javax.swing.ListSelectionModel;
import javax.swing.RowFilter;
import javax.swing.table.JTableHeader;
import javax.swing.table.TableColumn;
import javax.swing.table.TableRowSorter;
import org.jspecify.annotations.Nullable;
import org.ohmloom.workbench.widget.Keys;
import org.ohmloom.workbench.widget.Samples;

/** A list on screen: sorted by clicking a head, filtered by words, edited in place. */
public final class SheetTable extends JTable {

    private static final long serialVersionUID = 1L;

    private final transient SheetModel<?> sheet;
    private final transient TableRowSorter<SheetModel<?>> sorter;
    private final SheetEditor editor;

    /**
     * A table.
     *
     * @param problem takes what is wrong with a text being edited, or nothing when it is right
     */
    public SheetTable(SheetModel<?> sheet, Samples samples, Consumer<String> problem) {
        super(sheet);
        this.sheet = sheet;
        this.sorter = new TableRowSorter<>(sheet);
        this.editor = new SheetEditor(problem);
        setRowSorter(sorter);
        setDefaultRenderer(CellText.class, new SheetRenderer(samples));
        setDefaultEditor(CellText.class, editor);
        setAutoResizeMode(AUTO_RESIZE_OFF);
        setSelectionMode(ListSelectionModel.MULTIPLE_INTERVAL_SELECTION);
        setSurrendersFocusOnKeystroke(true);
        setFillsViewportHeight(true);
        setTransferHandler(new SheetTransfer(problem));
        putClientProperty("terminateEditOnFocusLost", Boolean.FALSE);
        // The table's own use of F8 would take it from the command.
        getInputMap(WHEN_ANCESTOR_OF_FOCUSED_COMPONENT).put(Keys.plain(KeyEvent.VK_F8), "none");
        setColumnWidths();
    }

    public SheetModel<?> sheet() {
        return sheet;
    }

    /** Shows only rows that hold all the words. */
    public void filter(String words) {
        List<String> wanted =
                List.of(words.strip().toLowerCase(java.util.Locale.ROOT).split("\\s+"));
        sorter.setRowFilter(
                words.isBlank()
                        ? null
                        : new RowFilter<>() {
                            @Override
                            public boolean include(Entry<? extends SheetModel<?>, ? extends Integer> entry) {
                                String row = IntStream.range(0, entry.getValueCount())
                                        .mapToObj(entry::getStringValue)
                                        .reduce("", (one, other) -> one + " " + other)
                                        .toLowerCase(java.util.Locale.ROOT);
                                return wanted.stream().allMatch(row::contains);
                            }
                        });
    }

    /** Finishes an open cell; whether none is open any more. */
    public boolean commit() {
        return !isEditing() || getCellEditor().stopCellEditing();
    }

    @Override
    public boolean editCellAt(int row, int column, EventObject event) {
        if (event instanceof KeyEvent key && !isTyping(key)) {
            // Otherwise Ctrl+Z or F8 on a cell would open it instead of reaching the command.
            return false;
        }
        boolean editing = super.editCellAt(row, column, event);
        if (editing && event instanceof KeyEvent) {
            editor.field().setText("");
        }
        return editing;
    }

    private static boolean isTyping(KeyEvent key) {
        char typed = key.getKeyChar();
        return !key.isControlDown()
                && !key.isMetaDown()
                && !key.isAltDown()
                && typed != KeyEvent.CHAR_UNDEFINED
                && !Character.isISOControl(typed);
    }

    @Override
    public void setValueAt(@Nullable Object value, int row, int column) {
        if (editor.takeForAllSelected()) {
            List<Integer> rows = IntStream.of(getSelectedRows())
                    .map(this::convertRowIndexToModel)
                    .boxed()
                    .toList();
            sheet.type(rows, convertColumnIndexToModel(column), String.valueOf(value));
        } else {
            super.setValueAt(value, row, column);
        }
    }

    @Override
    protected JTableHeader createDefaultTableHeader() {
        JTableHeader header = new JTableHeader(columnModel) {
            private static final long serialVersionUID = 1L;

            @Override
            public @Nullable String getToolTipText(MouseEvent event) {
                int index = columnAtPoint(event.getPoint());
                return index < 0
                        ? null
                        : sheet.column(convertColumnIndexToModel(index)).tip();
            }
        };
        header.setDefaultRenderer(new HeadRenderer());
        return header;
    }

    private void setColumnWidths() {
        int letter = getFontMetrics(getFont()).charWidth('n');
        for (int k = 0; k < sheet.getColumnCount(); k++) {
            TableColumn column = getColumnModel().getColumn(k);
            int letters =
                    Math.max(sheet.column(k).letters(), sheet.column(k).head().length());
            column.setPreferredWidth(letters * letter + UIScale.scale(20));
        }
    }
}
