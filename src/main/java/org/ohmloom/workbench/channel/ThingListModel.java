package org.ohmloom.workbench.channel;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javax.swing.table.AbstractTableModel;
import org.ohmloom.edit.Edit;
import org.ohmloom.edit.FreshIds;
import org.ohmloom.edit.PutElements;
import org.ohmloom.model.Element;
import org.ohmloom.model.Harness;
import org.ohmloom.workbench.channel.ListedThing.Column;
import org.ohmloom.workbench.words.TradeWords;
import org.ohmloom.workbench.words.Words;

/** The list of sensors and actuators as it is typed or pasted; its last column says what is wrong with a row. */
final class ThingListModel extends AbstractTableModel {

    private static final long serialVersionUID = 1L;

    private final transient Words words;
    private final transient Harness harness;
    private final transient List<Map<Column, String>> rows = new ArrayList<>();

    ThingListModel(Words words, Harness harness) {
        this.words = words;
        this.harness = harness;
        keepEmptyRow();
    }

    private void keepEmptyRow() {
        if (rows.isEmpty() || !thing(rows.size() - 1).isEmpty()) {
            rows.add(new EnumMap<>(Column.class));
        }
    }

    private ListedThing thing(int row) {
        return new ListedThing(harness, words, rows.get(row));
    }

    /** Puts lines of cells parted by tabs in, from a row and column on; a first line of titles says which column is which. */
    void paste(String block, int row, int column) {
        List<String[]> lines = block.replace("\r\n", "\n")
                .lines()
                .filter(line -> !line.isBlank())
                .map(line -> line.split("\t", -1))
                .toList();
        if (lines.isEmpty()) {
            return;
        }
        Map<Integer, Column> titles = titles(lines.get(0));
        int at = Math.max(0, row);
        for (String[] line : lines.subList(titles.isEmpty() ? 0 : 1, lines.size())) {
            while (at >= rows.size()) {
                rows.add(new EnumMap<>(Column.class));
            }
            for (int k = 0; k < line.length; k++) {
                int place = Math.max(0, column) + k;
                Column into = titles.isEmpty()
                        ? place < Column.values().length ? Column.values()[place] : null
                        : titles.get(k);
                if (into != null) {
                    rows.get(at).put(into, line[k].strip());
                }
            }
            at++;
        }
        keepEmptyRow();
        fireTableDataChanged();
    }

    /** Which column each title names; none unless the line has two titles at least. */
    private Map<Integer, Column> titles(String[] line) {
        Map<Integer, Column> titles = new LinkedHashMap<>();
        for (int k = 0; k < line.length; k++) {
            for (Column column : Column.values()) {
                if (title(column).equalsIgnoreCase(line[k].strip())) {
                    titles.put(k, column);
                }
            }
        }
        return titles.size() < 2 ? Map.of() : titles;
    }

    private String title(Column column) {
        return words.get("list." + TradeWords.lower(column));
    }

    void remove(int row) {
        rows.remove(row);
        keepEmptyRow();
        fireTableDataChanged();
    }

    /** What is wrong with a row; nothing for one that fits and for an empty one. */
    String problem(int row) {
        if (thing(row).isEmpty()) {
            return "";
        }
        try {
            thing(row).component(new FreshIds(harness));
            return "";
        } catch (IllegalArgumentException unfit) {
            return Words.said(unfit);
        }
    }

    /** How many rows are filled in. */
    int filled() {
        return (int) rows.stream()
                .filter(row -> !new ListedThing(harness, words, row).isEmpty())
                .count();
    }

    /** How many of them do not fit. */
    int unfit() {
        int unfit = 0;
        for (int row = 0; row < rows.size(); row++) {
            unfit += problem(row).isEmpty() ? 0 : 1;
        }
        return unfit;
    }

    /**
     * The edit that adds what is listed.
     *
     * @throws IllegalArgumentException when a row does not fit
     */
    Edit edit() {
        FreshIds fresh = new FreshIds(harness);
        List<Element> elements = new ArrayList<>();
        for (int row = 0; row < rows.size(); row++) {
            if (!thing(row).isEmpty()) {
                elements.add(thing(row).component(fresh));
            }
        }
        return new PutElements(words.text("list.edit", elements.size()), elements);
    }

    @Override
    public int getRowCount() {
        return rows == null ? 0 : rows.size();
    }

    @Override
    public int getColumnCount() {
        return Column.values().length + 1;
    }

    @Override
    public String getColumnName(int column) {
        return column < Column.values().length ? title(Column.values()[column]) : words.get("list.problem");
    }

    @Override
    public boolean isCellEditable(int row, int column) {
        return column < Column.values().length;
    }

    @Override
    public Object getValueAt(int row, int column) {
        return column < Column.values().length ? rows.get(row).getOrDefault(Column.values()[column], "") : problem(row);
    }

    @Override
    public void setValueAt(Object value, int row, int column) {
        rows.get(row).put(Column.values()[column], value == null ? "" : value.toString());
        int before = rows.size();
        keepEmptyRow();
        if (rows.size() > before) {
            fireTableRowsInserted(before, rows.size() - 1);
        }
        fireTableRowsUpdated(row, row);
    }
}
