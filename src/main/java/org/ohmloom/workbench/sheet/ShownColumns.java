package org.ohmloom.workbench.sheet;

import com.formdev.flatlaf.util.UIScale;
import java.util.ArrayList;
import java.util.Enumeration;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.swing.Timer;
import javax.swing.event.ChangeEvent;
import javax.swing.event.ListSelectionEvent;
import javax.swing.event.TableColumnModelEvent;
import javax.swing.event.TableColumnModelListener;
import javax.swing.table.TableColumn;
import org.ohmloom.workbench.words.Term;

/** Which columns of a list are shown, in which order and how wide; kept from one start to the next by the keys of the columns. */
public final class ShownColumns {

    private static final String BETWEEN = "|";
    private static final String WIDTH = "=";
    private static final String HIDDEN = "-";
    private static final int PAUSE_MILLIS = 300;

    private final SheetTable table;
    private final List<TableColumn> all = new ArrayList<>();
    private Consumer<String> memory = text -> {};
    private boolean quiet = true;

    ShownColumns(SheetTable table) {
        this.table = table;
        for (int k = 0; k < table.getColumnCount(); k++) {
            all.add(table.getColumnModel().getColumn(k));
        }
        for (TableColumn column : List.copyOf(all)) {
            if (table.sheet().column(column.getModelIndex()).detail()) {
                table.removeColumn(column);
            }
        }
    }

    /**
     * Takes up what is kept and keeps every change.
     *
     * @param kept   what was kept
     * @param memory keeps it
     */
    void keep(Optional<String> kept, Consumer<String> memory) {
        this.memory = memory;
        kept.ifPresent(this::restore);
        Timer timer = new Timer(PAUSE_MILLIS, event -> this.memory.accept(text()));
        timer.setRepeats(false);
        table.getColumnModel().addColumnModelListener(new TableColumnModelListener() {
            @Override
            public void columnAdded(TableColumnModelEvent event) {
                changed();
            }

            @Override
            public void columnRemoved(TableColumnModelEvent event) {
                changed();
            }

            @Override
            public void columnMoved(TableColumnModelEvent event) {
                if (event.getFromIndex() != event.getToIndex()) {
                    changed();
                }
            }

            @Override
            public void columnMarginChanged(ChangeEvent event) {
                changed();
            }

            @Override
            public void columnSelectionChanged(ListSelectionEvent event) {}

            private void changed() {
                if (!quiet) {
                    timer.restart();
                }
            }
        });
        quiet = false;
    }

    /** Writes the heads of all columns, shown or not, as the list names them now. */
    void nameHeads() {
        all.forEach(column -> column.setHeaderValue(table.sheet().getColumnName(column.getModelIndex())));
    }

    private Column<?> told(TableColumn column) {
        return table.sheet().column(column.getModelIndex());
    }

    private String key(TableColumn column) {
        return told(column).key();
    }

    /** What all columns are called, in the order of the list. */
    List<Term> terms() {
        return all.stream().map(column -> told(column).term()).toList();
    }

    /** Whether the column of a key is shown. */
    public boolean isShown(String key) {
        return shown().stream().anyMatch(column -> key(column).equals(key));
    }

    private List<TableColumn> shown() {
        List<TableColumn> columns = new ArrayList<>();
        Enumeration<TableColumn> each = table.getColumnModel().getColumns();
        while (each.hasMoreElements()) {
            columns.add(each.nextElement());
        }
        return columns;
    }

    /** Shows a column, at its place among those shown, or hides it; the last one stays. */
    public void show(String key, boolean wanted) {
        TableColumn column =
                all.stream().filter(each -> key(each).equals(key)).findFirst().orElseThrow();
        if (wanted && !isShown(key)) {
            table.addColumn(column);
            int before = (int) shown().stream()
                    .filter(each -> each != column && each.getModelIndex() < column.getModelIndex())
                    .count();
            table.moveColumn(table.getColumnCount() - 1, before);
        } else if (!wanted && isShown(key) && table.getColumnCount() > 1) {
            table.removeColumn(column);
        }
    }

    /** Shows what a list shows by itself. */
    public void reset() {
        for (TableColumn column : all) {
            show(key(column), true);
        }
        for (int k = 0; k < all.size(); k++) {
            int index = all.get(k).getModelIndex();
            table.moveColumn(table.convertColumnIndexToView(index), k);
        }
        for (TableColumn column : all) {
            show(key(column), !told(column).detail());
        }
        table.setColumnWidths();
    }

    /** What is kept: shown columns from left to right with their widths, unscaled, then hidden ones. */
    public String text() {
        List<TableColumn> shown = shown();
        return Stream.concat(
                        shown.stream()
                                .map(column ->
                                        key(column) + WIDTH + Math.round(UIScale.unscale((float) column.getWidth()))),
                        all.stream().filter(column -> !shown.contains(column)).map(column -> HIDDEN + key(column)))
                .collect(Collectors.joining(BETWEEN));
    }

    private void restore(String text) {
        int place = 0;
        for (String part : text.split("\\|")) {
            boolean hidden = part.startsWith(HIDDEN);
            Optional<TableColumn> kept = named(hidden ? part.substring(1) : part.replaceFirst("=\\d+$", ""));
            if (kept.isEmpty()) {
                continue;
            }
            String key = key(kept.get());
            show(key, !hidden);
            if (!hidden && isShown(key)) {
                table.moveColumn(shown().indexOf(kept.get()), Math.min(place++, table.getColumnCount() - 1));
                String width = part.substring(part.lastIndexOf(WIDTH) + 1);
                if (width.matches("\\d{1,4}")) {
                    kept.get().setPreferredWidth(UIScale.scale(Integer.parseInt(width)));
                }
            }
        }
    }

    /** The column of a key; by its title where it was kept before columns had keys. */
    private Optional<TableColumn> named(String kept) {
        return all.stream()
                .filter(column ->
                        key(column).equals(kept) || told(column).title().equals(kept))
                .findFirst();
    }
}
