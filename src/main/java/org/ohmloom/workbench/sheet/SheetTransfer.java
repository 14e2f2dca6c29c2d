package org.ohmloom.workbench.sheet;

import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.StringSelection;
import java.awt.datatransfer.Transferable;
import java.awt.datatransfer.UnsupportedFlavorException;
import java.io.IOException;
import java.util.Collections;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import javax.swing.JComponent;
import javax.swing.TransferHandler;
import org.ohmloom.workbench.words.Words;

/** Copies rows with every digit, separated by tabs, and pastes blocks of cells. */
final class SheetTransfer extends TransferHandler {
    private static final Words WORDS = Words.of("sheets");

    private static final long serialVersionUID = 1L;

    private final transient Consumer<String> problem;

    /**
     * A handler.
     *
     * @param problem takes the reason when nothing was pasted
     */
    SheetTransfer(Consumer<String> problem) {
        this.problem = problem;
    }

    @Override
    public int getSourceActions(JComponent component) {
        return COPY;
    }

    @Override
    protected Transferable createTransferable(JComponent component) {
        SheetTable table = (SheetTable) component;
        String text = IntStream.of(table.getSelectedRows())
                .mapToObj(row -> IntStream.range(0, table.getColumnCount())
                        .mapToObj(column -> ((CellText) table.getValueAt(row, column)).exact())
                        .collect(Collectors.joining("\t")))
                .collect(Collectors.joining("\n"));
        return new StringSelection(text);
    }

    @Override
    public boolean canImport(TransferSupport support) {
        return !support.isDrop() && support.isDataFlavorSupported(DataFlavor.stringFlavor);
    }

    @Override
    public boolean importData(TransferSupport support) {
        SheetTable table = (SheetTable) support.getComponent();
        int firstRow = table.getSelectedRow();
        int firstColumn = table.getColumnModel().getSelectionModel().getLeadSelectionIndex();
        if (firstRow < 0 || firstColumn < 0) {
            problem.accept(WORDS.get("sheet-transfer.select-the-cell-to"));
            return false;
        }
        try {
            String block = (String) support.getTransferable().getTransferData(DataFlavor.stringFlavor);
            List<Integer> rows = IntStream.range(firstRow, table.getRowCount())
                    .map(table::convertRowIndexToModel)
                    .boxed()
                    .toList();
            List<Integer> columns = IntStream.range(firstColumn, table.getColumnCount())
                    .map(table::convertColumnIndexToModel)
                    .boxed()
                    .toList();
            return table.change(plan(table, rows, columns, block));
        } catch (IllegalArgumentException unfit) {
            problem.accept(Words.said(unfit));
            return false;
        } catch (UnsupportedFlavorException | IOException unreadable) {
            problem.accept(WORDS.get("sheet-transfer.the-clipboard-holds-no"));
            return false;
        }
    }

    /** One cell goes into every selected row, a block from the first cell on. */
    private static CellChanges plan(SheetTable table, List<Integer> rows, List<Integer> columns, String block) {
        List<List<String>> cells = BlockPaste.cells(block);
        List<Integer> selected = table.selectedModelRows();
        if (cells.size() == 1 && cells.get(0).size() == 1 && selected.size() > 1) {
            return CellChanges.of(
                    WORDS.get("sheet-transfer.paste"),
                    table.sheet(),
                    selected.stream()
                            .map(row -> new int[] {row, columns.get(0)})
                            .toList(),
                    Collections.nCopies(selected.size(), cells.get(0).get(0)));
        }
        return BlockPaste.plan(table.sheet(), rows, columns, block);
    }
}
