package org.ohmloom.workbench.states;

import com.formdev.flatlaf.FlatClientProperties;
import com.formdev.flatlaf.util.UIScale;
import java.awt.Component;
import java.awt.Font;
import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.StringSelection;
import java.awt.datatransfer.Transferable;
import java.awt.datatransfer.UnsupportedFlavorException;
import java.awt.event.KeyEvent;
import java.io.IOException;
import java.util.ArrayList;
import java.util.EventObject;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import javax.swing.DefaultCellEditor;
import javax.swing.JComponent;
import javax.swing.JTable;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import javax.swing.TransferHandler;
import javax.swing.table.DefaultTableCellRenderer;
import org.ohmloom.workbench.sheet.CellChanges;
import org.ohmloom.workbench.sheet.ChangePreview;
import org.ohmloom.workbench.sheet.ChangesPane;
import org.ohmloom.workbench.widget.ColumnHeads;
import org.ohmloom.workbench.widget.Keys;
import org.ohmloom.workbench.widget.TextUndo;
import org.ohmloom.workbench.widget.Tone;
import org.ohmloom.workbench.words.Words;

/**
 * The matrix on screen. Typing opens the cell; Ctrl+Enter fills all selected cells, Space switches them on or off, Delete lets the
 * states say nothing of them; blocks are copied and pasted.
 */
final class MatrixTable extends JTable {

    private static final long serialVersionUID = 1L;

    private final MatrixModel matrix;
    private final transient Words words;
    private final transient Consumer<String> problem;
    private final JTextField field = new JTextField();
    private transient ChangePreview preview = ChangesPane::ask;
    private boolean forAll;

    MatrixTable(MatrixModel model, Words words, Consumer<String> problem) {
        super(model);
        this.matrix = model;
        this.words = words;
        this.problem = problem;
        setName("states-matrix");
        getAccessibleContext().setAccessibleName(words.get("matrix"));
        getTableHeader().setReorderingAllowed(false);
        ColumnHeads.begin(this);
        getTableHeader().getAccessibleContext().setAccessibleName(words.get("matrix-columns"));
        setCellSelectionEnabled(true);
        setAutoResizeMode(AUTO_RESIZE_OFF);
        setFillsViewportHeight(true);
        setSurrendersFocusOnKeystroke(true);
        putClientProperty("terminateEditOnFocusLost", Boolean.FALSE);
        setDefaultRenderer(Object.class, new Renderer(model));
        setDefaultEditor(Object.class, editor());
        setTransferHandler(new Blocks(this));
        bind("switch", Keys.plain(KeyEvent.VK_SPACE), this::switchChosen);
        bind("say-nothing", Keys.plain(KeyEvent.VK_DELETE), () -> typeAll(""));
        bind("fill-down", Keys.menu(KeyEvent.VK_D), this::fillFromFirst);
        Keys.leave(this, KeyEvent.VK_F6, KeyEvent.VK_F8);
    }

    private void bind(String name, KeyStroke keys, Runnable task) {
        Keys.bind(this, WHEN_ANCESTOR_OF_FOCUSED_COMPONENT, keys, name, task);
    }

    /** Shows what a block would change by another preview than the dialog. */
    void previewBy(ChangePreview changed) {
        preview = changed;
    }

    /** The selected cells of states. */
    List<int[]> chosen() {
        List<int[]> places = new ArrayList<>();
        for (int row : getSelectedRows()) {
            for (int column : getSelectedColumns()) {
                if (column >= MatrixModel.FIRST) {
                    places.add(new int[] {row, column});
                }
            }
        }
        return places;
    }

    private String value(int[] place) {
        return String.valueOf(getValueAt(place[0], place[1]));
    }

    private void switchChosen() {
        List<int[]> places = chosen();
        if (!places.isEmpty()) {
            boolean on = places.stream()
                    .anyMatch(place -> value(place).isEmpty() || value(place).startsWith("off"));
            typeAll(on ? "on" : "off");
        }
    }

    private void fillFromFirst() {
        List<int[]> places = chosen();
        if (places.size() > 1) {
            typeAll(value(places.get(0)));
        }
    }

    /** Types a text into all selected cells, as one step. */
    void typeAll(String text) {
        List<int[]> places = chosen();
        if (!places.isEmpty()) {
            try {
                matrix.type(places, text);
                problem.accept("");
            } catch (IllegalArgumentException unfit) {
                problem.accept(Words.said(unfit));
            }
        }
    }

    private DefaultCellEditor editor() {
        field.putClientProperty("JComboBox.isTableCellEditor", Boolean.TRUE);
        TextUndo.install(field);
        DefaultCellEditor editor = new DefaultCellEditor(field) {
            private static final long serialVersionUID = 1L;

            {
                // Enter goes on to the cell below.
                field.removeActionListener(delegate);
            }

            @Override
            public boolean stopCellEditing() {
                try {
                    matrix.parse(
                            forAll ? chosen() : List.of(new int[] {getEditingRow(), getEditingColumn()}),
                            field.getText());
                } catch (IllegalArgumentException unfit) {
                    field.putClientProperty(FlatClientProperties.OUTLINE, FlatClientProperties.OUTLINE_ERROR);
                    problem.accept(Words.said(unfit));
                    forAll = false;
                    return false;
                }
                return super.stopCellEditing();
            }

            @Override
            public boolean shouldSelectCell(EventObject event) {
                return false;
            }

            @Override
            public Component getTableCellEditorComponent(
                    JTable table, Object value, boolean selected, int row, int column) {
                field.putClientProperty(FlatClientProperties.OUTLINE, null);
                problem.accept("");
                field.getAccessibleContext()
                        .setAccessibleName(words.get("cell", matrix.subject(row).text(), getColumnName(column)));
                return super.getTableCellEditorComponent(table, value, selected, row, column);
            }
        };
        editor.setClickCountToStart(2);
        field.addActionListener(pressed -> {
            int row = getEditingRow();
            int column = getEditingColumn();
            if (editor.stopCellEditing()) {
                changeSelection(Math.min(row + 1, getRowCount() - 1), column, false, false);
            }
        });
        field.registerKeyboardAction(
                pressed -> {
                    forAll = true;
                    editor.stopCellEditing();
                    forAll = false;
                },
                Keys.menu(KeyEvent.VK_ENTER),
                JComponent.WHEN_FOCUSED);
        return editor;
    }

    @Override
    public boolean editCellAt(int row, int column, EventObject event) {
        if (event instanceof KeyEvent key && !Keys.isTyping(key)) {
            return false;
        }
        boolean editing = super.editCellAt(row, column, event);
        if (editing && event instanceof KeyEvent) {
            field.setText("");
        }
        return editing;
    }

    @Override
    public void setValueAt(Object value, int row, int column) {
        if (forAll) {
            typeAll(String.valueOf(value));
        } else {
            super.setValueAt(value, row, column);
        }
    }

    /** Finishes an open cell; whether none is open any more. */
    boolean commit() {
        return !isEditing() || getCellEditor().stopCellEditing();
    }

    /**
     * Gives columns their widths.
     *
     * @param narrow whether there is something beside, so that two states must stand in half the room
     */
    void arrange(boolean narrow) {
        int letter = getFontMetrics(getFont()).charWidth('n');
        int[] first = narrow ? new int[] {6, 11, 6} : new int[] {10, 24, 16};
        for (int k = 0; k < getColumnCount(); k++) {
            int letters = k < first.length
                    ? first[k]
                    : narrow ? 8 : Math.max(11, getColumnName(k).length());
            getColumnModel().getColumn(k).setPreferredWidth(letters * letter + UIScale.scale(16));
        }
    }

    /** Pastes a block from the first selected cell on, after showing what it changes. */
    boolean paste(String block) {
        List<int[]> places = chosen();
        if (places.isEmpty()) {
            problem.accept(words.get("select-cell"));
            return false;
        }
        List<CellChanges.Cell> cells = new ArrayList<>();
        List<String> lines = block.replace("\r\n", "\n").lines().toList();
        for (int k = 0; k < lines.size(); k++) {
            String[] texts = lines.get(k).split("\t", -1);
            for (int m = 0; m < texts.length; m++) {
                int row = places.get(0)[0] + k;
                int column = places.get(0)[1] + m;
                if (row < getRowCount() && column < getColumnCount()) {
                    matrix.change(row, column, texts[m]).ifPresent(cells::add);
                } else {
                    cells.add(CellChanges.Cell.refused("", "", "", texts[m], words.get("no-cell")));
                }
            }
        }
        if (cells.isEmpty()) {
            return false;
        }
        preview.ask(this, new CellChanges(words.get("paste"), cells)).ifPresent(matrix::apply);
        return true;
    }

    /** Blocks of cells to and from a spreadsheet. */
    private static final class Blocks extends TransferHandler {
        private static final long serialVersionUID = 1L;

        private final MatrixTable table;

        Blocks(MatrixTable table) {
            this.table = table;
        }

        @Override
        public int getSourceActions(JComponent component) {
            return COPY;
        }

        @Override
        protected Transferable createTransferable(JComponent component) {
            return new StringSelection(IntStream.of(table.getSelectedRows())
                    .mapToObj(row -> IntStream.of(table.getSelectedColumns())
                            .mapToObj(column -> String.valueOf(table.getValueAt(row, column)))
                            .collect(Collectors.joining("\t")))
                    .collect(Collectors.joining("\n")));
        }

        @Override
        public boolean canImport(TransferSupport support) {
            return !support.isDrop() && support.isDataFlavorSupported(DataFlavor.stringFlavor);
        }

        @Override
        public boolean importData(TransferSupport support) {
            try {
                return table.paste((String) support.getTransferable().getTransferData(DataFlavor.stringFlavor));
            } catch (UnsupportedFlavorException | IOException unreadable) {
                return false;
            }
        }
    }

    /** What is on stands out, what is off or not said is soft; cells of a row that differ are told by a sign as well. */
    private static final class Renderer extends DefaultTableCellRenderer {
        private static final long serialVersionUID = 1L;

        private final MatrixModel matrix;

        Renderer(MatrixModel matrix) {
            this.matrix = matrix;
        }

        @Override
        public Component getTableCellRendererComponent(
                JTable table, Object value, boolean selected, boolean focused, int row, int column) {
            super.getTableCellRendererComponent(table, value, selected, focused, row, column);
            String text = String.valueOf(value);
            boolean state = column >= MatrixModel.FIRST;
            boolean on = state && !text.isEmpty() && !text.startsWith("off");
            boolean two = state && matrix.states().size() == 2 && matrix.differs(matrix.subject(row));
            setText(text.isEmpty() && state ? "–" : (two ? "≠ " : "") + text);
            setFont(on ? table.getFont().deriveFont(Font.BOLD) : table.getFont());
            if (!selected) {
                setForeground((on || !state && column < 2 ? Tone.PLAIN : Tone.SOFT).colour());
            }
            return this;
        }
    }
}
