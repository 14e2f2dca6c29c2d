package org.ohmloom.workbench.sheet;

import com.formdev.flatlaf.util.UIScale;
import java.util.ArrayList;
import java.util.Enumeration;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import javax.swing.Timer;
import javax.swing.event.ChangeEvent;
import javax.swing.event.ListSelectionEvent;
import javax.swing.event.TableColumnModelEvent;
import javax.swing.event.TableColumnModelListener;
import javax.swing.table.TableColumn;

/** Which columns of a list are shown, in which order and how wide; kept from one start to the next by the titles of the columns. */
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

    private String title(TableColumn column) {
        return table.sheet().column(column.getModelIndex()).title();
    }

    /** The titles of all columns, in the order of the list. */
    public List<String> titles() {
        return all.stream().map(this::title).toList();
    }

    public boolean isShown(String title) {
        return shown().stream().anyMatch(column -> title(column).equals(title));
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
    public void show(String title, boolean wanted) {
        TableColumn column = all.stream()
                .filter(each -> title(each).equals(title))
                .findFirst()
                .orElseThrow();
        if (wanted && !isShown(title)) {
            table.addColumn(column);
            int before = (int) shown().stream()
                    .filter(each -> each != column && each.getModelIndex() < column.getModelIndex())
                    .count();
            table.moveColumn(table.getColumnCount() - 1, before);
        } else if (!wanted && isShown(title) && table.getColumnCount() > 1) {
            table.removeColumn(column);
        }
    }

    /** Shows what a list shows by itself. */
    public void reset() {
        for (TableColumn column : all) {
            show(title(column), true);
        }
        for (int k = 0; k < all.size(); k++) {
            int index = all.get(k).getModelIndex();
            table.moveColumn(table.convertColumnIndexToView(index), k);
        }
        for (TableColumn column : all) {
            show(title(column), !table.sheet().column(column.getModelIndex()).detail());
        }
        table.setColumnWidths();
    }

    /** What is kept: shown columns from left to right with their widths, unscaled, then hidden ones. */
    public String text() {
        List<String> parts = new ArrayList<>();
        Set<String> seen = new HashSet<>();
        for (TableColumn column : shown()) {
            parts.add(title(column) + WIDTH + Math.round(UIScale.unscale((float) column.getWidth())));
            seen.add(title(column));
        }
        titles().stream().filter(title -> !seen.contains(title)).forEach(title -> parts.add(HIDDEN + title));
        return String.join(BETWEEN, parts);
    }

    private void restore(String text) {
        int place = 0;
        for (String part : text.split("\\|")) {
            boolean hidden = part.startsWith(HIDDEN);
            String title = hidden ? part.substring(1) : part.replaceFirst("=\\d+$", "");
            if (!titles().contains(title)) {
                continue;
            }
            show(title, !hidden);
            if (!hidden && isShown(title)) {
                int view = index(title);
                table.moveColumn(view, Math.min(place++, table.getColumnCount() - 1));
                String width = part.substring(Math.min(part.length(), title.length() + 1));
                if (width.matches("\\d{1,4}")) {
                    int px = UIScale.scale(Integer.parseInt(width));
                    table.getColumnModel().getColumn(index(title)).setPreferredWidth(px);
                }
            }
        }
    }

    private int index(String title) {
        List<TableColumn> columns = shown();
        for (int k = 0; k < columns.size(); k++) {
            if (title(columns.get(k)).equals(title)) {
                return k;
            }
        }
        return 0;
    }
}
