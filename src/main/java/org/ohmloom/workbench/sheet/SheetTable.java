package org.ohmloom.workbench.sheet;

import com.formdev.flatlaf.util.UIScale;
import java.awt.event.KeyEvent;
import java.awt.event.MouseEvent;
import java.util.EventObject;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import javax.swing.JTable;
import javax.swing.KeyStroke;
import javax.swing.ListSelectionModel;
import javax.swing.RowFilter;
import javax.swing.table.JTableHeader;
import javax.swing.table.TableColumn;
import javax.swing.table.TableRowSorter;
import org.jspecify.annotations.Nullable;
import org.ohmloom.edit.Edit;
import org.ohmloom.workbench.widget.Keys;
import org.ohmloom.workbench.widget.Samples;
import org.ohmloom.workbench.words.Words;

/** A list on screen: sorted by clicking a head, filtered by words, edited in place. */
public final class SheetTable extends JTable {
    private static final Words WORDS = Words.of("sheets");

    private static final long serialVersionUID = 1L;

    private final transient SheetModel<?> sheet;
    private final transient TableRowSorter<SheetModel<?>> sorter;
    private final SheetEditor editor;
    private final transient Consumer<String> problem;
    private final transient ShownColumns shown;
    private transient ChangePreview preview = ChangesPane::ask;

    /**
     * A table.
     *
     * @param problem takes what is wrong with a text being edited, or nothing when it is right
     */
    public SheetTable(SheetModel<?> sheet, Samples samples, Consumer<String> problem) {
        super(sheet);
        this.sheet = sheet;
        this.problem = problem;
        this.sorter = new TableRowSorter<>(sheet);
        this.editor = new SheetEditor(problem, this::entered);
        setRowSorter(sorter);
        setDefaultRenderer(CellText.class, new SheetRenderer(samples));
        setDefaultEditor(CellText.class, editor);
        setAutoResizeMode(AUTO_RESIZE_OFF);
        setSelectionMode(ListSelectionModel.MULTIPLE_INTERVAL_SELECTION);
        setSurrendersFocusOnKeystroke(true);
        setFillsViewportHeight(true);
        setTransferHandler(new SheetTransfer(problem));
        // Otherwise an added column makes all columns anew and hidden ones come back.
        setAutoCreateColumnsFromModel(false);
        putClientProperty("terminateEditOnFocusLost", Boolean.FALSE);
        // The table's own use of F8, and of Ctrl+Insert to copy, would take them from the commands.
        Keys.leave(this, KeyEvent.VK_F8);
        Keys.leave(this, Keys.menu(KeyEvent.VK_INSERT));
        setColumnWidths();
        this.shown = new ShownColumns(this);
        bind("fill-down", Keys.menu(KeyEvent.VK_D), this::fillDown);
        bind("fill-down", Keys.menu(KeyEvent.VK_ENTER), this::fillDown);
        bind("open-cell", Keys.plain(KeyEvent.VK_ENTER), this::openOrNext);
        TabFromCell.install(this);
        bind("clear-cells", Keys.plain(KeyEvent.VK_DELETE), () -> typeAll(""));
    }

    /** Finishes the open cell and goes to the row that stood below, where only one row is selected. */
    private void entered() {
        int row = getEditingRow();
        int column = getEditingColumn();
        boolean one = getSelectedRowCount() <= 1;
        Optional<String> next =
                Optional.of(row + 1).filter(each -> each < getRowCount()).map(this::id);
        if (editor.stopCellEditing() && one) {
            // Another identity may have taken the row elsewhere.
            int stays = getSelectedRow() < 0 ? row : getSelectedRow();
            focus(
                    next.map(sheet::rowOf)
                            .filter(each -> each >= 0)
                            .map(this::convertRowIndexToView)
                            .orElse(stays),
                    column);
        }
    }

    private String id(int row) {
        return sheet.id(convertRowIndexToModel(row));
    }

    private void below(int row, int column) {
        focus(Math.min(row + 1, getRowCount() - 1), column);
    }

    private void focus(int row, int column) {
        if (row >= 0 && row < getRowCount() && column >= 0 && column < getColumnCount()) {
            changeSelection(row, column, false, false);
        }
    }

    /** The column with the focus, as shown; -1 where none has it. */
    int focusColumn() {
        return getColumnModel().getSelectionModel().getLeadSelectionIndex();
    }

    /** Gives a column the focus, as shown, where none has it; rows stay selected as they are. */
    void focusColumn(int column) {
        if (focusColumn() < 0 && column >= 0 && column < getColumnCount()) {
            getColumnModel().getSelectionModel().setSelectionInterval(column, column);
        }
    }

    /** Opens the cell with the focus; one that cannot be edited is passed over. */
    private void openOrNext() {
        int row = getSelectedRow();
        int column = focusColumn();
        if (row >= 0 && column >= 0 && editCellAt(row, column)) {
            editor.field().requestFocusInWindow();
        } else if (row >= 0) {
            below(row, column);
        }
    }

    private void bind(String name, KeyStroke keys, Runnable task) {
        Keys.bind(this, WHEN_ANCESTOR_OF_FOCUSED_COMPONENT, keys, name, task);
    }

    /** Which columns are shown. */
    public ShownColumns shown() {
        return shown;
    }

    /** Shows what would change by another preview than the dialog. */
    public void previewBy(ChangePreview changed) {
        preview = changed;
    }

    /** Rows of the model that are selected, in the order shown. */
    public List<Integer> selectedModelRows() {
        return IntStream.of(getSelectedRows())
                .map(this::convertRowIndexToModel)
                .boxed()
                .toList();
    }

    private int leadColumn() {
        int lead = focusColumn();
        return lead < 0 || lead >= getColumnCount() ? -1 : convertColumnIndexToModel(lead);
    }

    /** Puts what stands in the first selected row of the column with the focus into the other selected rows, as one step. */
    public void fillDown() {
        List<Integer> rows = selectedModelRows();
        int column = leadColumn();
        if (rows.size() < 2 || column < 0) {
            problem.accept(WORDS.get("sheet-table.select-the-cell-to"));
        } else {
            tell(() -> sheet.fill(rows.get(0), rows.subList(1, rows.size()), column));
        }
    }

    /** Types a text into the column with the focus in every selected row, as one step. */
    void typeAll(String text) {
        List<Integer> rows = selectedModelRows();
        int column = leadColumn();
        if (!rows.isEmpty() && column >= 0) {
            tell(() -> sheet.type(rows, column, text));
        }
    }

    /** Does it, or says what is wrong. */
    private void tell(Runnable task) {
        try {
            task.run();
            problem.accept("");
        } catch (IllegalArgumentException unfit) {
            problem.accept(Words.said(unfit));
        }
    }

    /** Asks about changes and makes those agreed to, as one step; whether any was made. */
    public boolean change(CellChanges changes) {
        if (changes.cells().isEmpty()) {
            problem.accept(WORDS.get("sheet-table.nothing-would-change"));
            return false;
        }
        boolean plain = changes.cells().size() == 1 && changes.refused().isEmpty();
        Optional<Edit> agreed = plain ? changes.edit() : preview.ask(this, changes);
        agreed.ifPresent(sheet::apply);
        return agreed.isPresent();
    }

    public SheetModel<?> sheet() {
        return sheet;
    }

    /** Shows only rows that hold all the words. */
    public void filter(String words) {
        List<String> wanted = List.of(words.strip().toLowerCase(Locale.ROOT).split("\\s+"));
        sorter.setRowFilter(
                words.isBlank()
                        ? null
                        : new RowFilter<>() {
                            @Override
                            public boolean include(Entry<? extends SheetModel<?>, ? extends Integer> entry) {
                                String row = IntStream.range(0, entry.getValueCount())
                                        .mapToObj(entry::getStringValue)
                                        .reduce("", (one, other) -> one + " " + other)
                                        .toLowerCase(Locale.ROOT);
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
        if (event instanceof KeyEvent key && !Keys.isTyping(key)) {
            // Otherwise Ctrl+Z or F8 on a cell would open it instead of reaching the command.
            return false;
        }
        boolean editing = super.editCellAt(row, column, event);
        if (editing && event instanceof KeyEvent) {
            editor.field().setText("");
        }
        return editing;
    }

    @Override
    public void setValueAt(@Nullable Object value, int row, int column) {
        if (editor.takeForAllSelected()) {
            sheet.type(selectedModelRows(), convertColumnIndexToModel(column), String.valueOf(value));
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

    /** Writes the heads of the columns anew where their units changed. */
    void nameHeads() {
        shown.nameHeads();
        getTableHeader().repaint();
    }

    void setColumnWidths() {
        int letter = getFontMetrics(getFont()).charWidth('n');
        for (int view = 0; view < getColumnCount(); view++) {
            int k = convertColumnIndexToModel(view);
            TableColumn column = getColumnModel().getColumn(view);
            int letters =
                    Math.max(sheet.column(k).letters(), sheet.getColumnName(k).length());
            column.setPreferredWidth(letters * letter + UIScale.scale(20));
        }
    }
}
