package org.ohmloom.workbench.study;

import java.awt.Component;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.JLabel;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.ListSelectionModel;
import javax.swing.table.DefaultTableCellRenderer;
import org.ohmloom.model.ElementId;
import org.ohmloom.solve.PointDrop;
import org.ohmloom.units.Formats;
import org.ohmloom.workbench.widget.FormTable;
import org.ohmloom.workbench.widget.ReadRows;
import org.ohmloom.workbench.words.TradeWords;
import org.ohmloom.workbench.words.Words;

/** The way between two points part by part: what each loses, and its share in the whole. */
final class DropTable extends JScrollPane {

    private static final long serialVersionUID = 1L;
    private static final int WIDTH = 520;
    private static final int ROWS = 4;
    private static final int WORDS = 2;

    private final transient Words words = Words.of("currents");
    private final ReadRows rows = new ReadRows(List.of(
            words.get("part"), words.get("what"), words.get("current"), words.get("part-drop"), words.get("share")));
    private final JTable table = new FormTable(rows, WIDTH, ROWS);
    private transient Optional<PointDrop> shown = Optional.empty();
    private boolean filling;

    /**
     * A table.
     *
     * @param picked takes the element of the part a person selects
     */
    DropTable(Consumer<String> picked) {
        setName("currents-parts-scroll");
        table.setName("currents-parts");
        table.getAccessibleContext().setAccessibleName(words.get("parts"));
        table.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        DefaultTableCellRenderer numbers = new DefaultTableCellRenderer();
        numbers.setHorizontalAlignment(JLabel.TRAILING);
        for (int k = WORDS; k < rows.getColumnCount(); k++) {
            table.getColumnModel().getColumn(k).setCellRenderer(numbers);
        }
        table.getSelectionModel().addListSelectionListener(event -> {
            if (!filling && !event.getValueIsAdjusting()) {
                element(table.getSelectedRow()).ifPresent(picked);
            }
        });
        setViewportView(table);
        setVisible(false);
    }

    /** Shows the parts of a drop; nothing without one or without parts. */
    void show(Optional<PointDrop> drop) {
        if (drop.equals(shown)) {
            return;
        }
        shown = drop;
        filling = true;
        try {
            rows.setRowCount(0);
            drop.ifPresent(known -> known.parts().forEach(part -> rows.addRow(cells(known, part))));
        } finally {
            filling = false;
        }
        setVisible(rows.getRowCount() > 0);
        Component parent = getParent();
        if (parent != null) {
            parent.validate();
        }
    }

    private Object[] cells(PointDrop drop, PointDrop.Part part) {
        return new Object[] {
            part.flow().branch().id().value(),
            words.get("kind." + TradeWords.lower(part.flow().branch().kind()).replace(' ', '-')),
            Formats.amps(part.amps()),
            Formats.volts(part.dropVolts()),
            drop.share(part).isPresent() ? Formats.percent(drop.share(part).getAsDouble()) : ""
        };
    }

    private Optional<String> element(int row) {
        return shown.filter(drop -> row >= 0 && row < drop.parts().size())
                .flatMap(drop -> drop.parts().get(row).flow().branch().element())
                .map(ElementId::value);
    }
}
