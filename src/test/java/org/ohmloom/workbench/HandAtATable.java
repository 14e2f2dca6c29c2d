package org.ohmloom.workbench;

import java.awt.Component;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.Toolkit;
import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.StringSelection;
import java.awt.event.KeyEvent;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;
import javax.swing.JLabel;
import javax.swing.JTable;

/** A hand at one table of a window: cells are gone to, typed down, read as they are painted, copied and pasted over. */
public final class HandAtATable {

    private static final int MOST_TURNS = 40;

    private final CountedHand hand;
    private final JTable table;

    /** At the table of a name. */
    public HandAtATable(CountedHand hand, String name) {
        this.hand = hand;
        this.table = (JTable) CountedHand.see(name);
    }

    /** How many rows are shown. */
    int rows() {
        return OnEventThread.get(table::getRowCount);
    }

    /** Waits until so many rows are shown. */
    void awaitRows(int count) {
        OnEventThread.await(count + " rows in " + table.getName(), () -> table.getRowCount() == count);
    }

    /**
     * Types into a column from a cell downwards, Enter after each; an empty text leaves a cell as it is.
     *
     * @param row what the first column says of the first row
     */
    public void type(String row, String column, String... texts) {
        goTo(row, column);
        for (String text : texts) {
            if (!text.isEmpty()) {
                hand.type(text);
            }
            hand.shortcut(text.isEmpty() ? KeyEvent.VK_DOWN : KeyEvent.VK_ENTER);
        }
    }

    /** Pastes a block from a cell on; what would change is agreed to. */
    public void paste(String row, String column, String block) {
        Toolkit.getDefaultToolkit().getSystemClipboard().setContents(new StringSelection(block), null);
        goTo(row, column);
        hand.shortcut(KeyEvent.VK_CONTROL, KeyEvent.VK_V);
        hand.click("changes-apply");
        OnEventThread.await("the changes to close", () -> !CountedHand.isSeen("changes-apply"));
    }

    /** What a cell shows, once it is gone to. */
    public String shown(String row, String column) {
        goTo(row, column);
        return OnEventThread.get(() -> {
            int down = rowOf(row);
            int across = columnOf(column);
            if (!table.getVisibleRect().intersects(table.getCellRect(down, across, true))) {
                throw new AssertionError(column + " of " + row + " cannot be seen");
            }
            Component cell = table.prepareRenderer(table.getCellRenderer(down, across), down, across);
            return ((JLabel) cell).getText();
        });
    }

    /** What a row gives when it is copied out, by what the heads say. */
    public Map<String, String> copied(String row) throws Exception {
        goTo(row, OnEventThread.get(() -> heads().get(0)));
        hand.shortcut(KeyEvent.VK_CONTROL, KeyEvent.VK_C);
        String[] cells = ((String)
                        Toolkit.getDefaultToolkit().getSystemClipboard().getData(DataFlavor.stringFlavor))
                .split("\t", -1);
        List<String> heads = OnEventThread.get(this::heads);
        Map<String, String> texts = new TreeMap<>();
        IntStream.range(0, cells.length).forEach(k -> texts.put(heads.get(k), cells[k]));
        return texts;
    }

    /** Goes to a cell by the arrow keys, after a click on its row where the table has not the keyboard. */
    private void goTo(String row, String column) {
        int down = OnEventThread.get(() -> rowOf(row));
        if (OnEventThread.get(() -> !table.isFocusOwner() || leadRow() < 0 || leadColumn() < 0)) {
            scrollTo(down);
            hand.clickAt(table, OnEventThread.get(() -> {
                Rectangle first = table.getCellRect(down, 0, true);
                return new Point(Math.max(first.x, table.getVisibleRect().x) + 12, first.y + first.height / 2);
            }));
        }
        arrows(down - OnEventThread.get(this::leadRow), KeyEvent.VK_DOWN, KeyEvent.VK_UP);
        arrows(
                OnEventThread.get(() -> columnOf(column)) - OnEventThread.get(this::leadColumn),
                KeyEvent.VK_RIGHT,
                KeyEvent.VK_LEFT);
    }

    /** Turns the wheel until a row is seen whole. */
    private void scrollTo(int row) {
        for (int turns = 0; turns < MOST_TURNS; turns++) {
            int beyond = OnEventThread.get(() -> {
                Rectangle cell = table.getCellRect(row, 0, true);
                Rectangle seen = table.getVisibleRect();
                return cell.y < seen.y ? -1 : cell.y + cell.height > seen.y + seen.height ? 1 : 0;
            });
            if (beyond == 0) {
                return;
            }
            hand.turn(table, beyond);
        }
        throw new AssertionError("row " + row + " of " + table.getName() + " cannot be seen");
    }

    private void arrows(int steps, int forward, int back) {
        for (int k = 0; k < Math.abs(steps); k++) {
            hand.shortcut(steps > 0 ? forward : back);
        }
    }

    private int leadRow() {
        return table.getSelectionModel().getLeadSelectionIndex();
    }

    private int leadColumn() {
        return table.getColumnModel().getSelectionModel().getLeadSelectionIndex();
    }

    private List<String> heads() {
        return IntStream.range(0, table.getColumnCount())
                .mapToObj(table.getColumnModel()::getColumn)
                .map(column -> String.valueOf(column.getHeaderValue()))
                .toList();
    }

    private int columnOf(String head) {
        return of(heads(), head);
    }

    private int rowOf(String row) {
        return of(
                IntStream.range(0, table.getRowCount())
                        .mapToObj(each -> String.valueOf(table.getValueAt(each, 0)))
                        .toList(),
                row);
    }

    private int of(List<String> all, String wanted) {
        if (!all.contains(wanted)) {
            throw new AssertionError("no " + wanted + " in " + table.getName() + " but " + all);
        }
        return all.indexOf(wanted);
    }
}
