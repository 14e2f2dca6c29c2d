package org.ohmloom.workbench.channel;

import java.awt.Component;
import java.util.List;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.table.AbstractTableModel;
import javax.swing.table.DefaultTableCellRenderer;
import net.miginfocom.swing.MigLayout;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireColour;
import org.ohmloom.signal.wiring.WiringMade;
import org.ohmloom.workbench.widget.Samples;
import org.ohmloom.workbench.words.TradeWords;
import org.ohmloom.workbench.words.Words;

/** The wires that would be made, each with its ends and a sample of its colour. */
final class WirePreview extends JPanel {

    private static final long serialVersionUID = 1L;
    private static final int COLOUR = 3;

    private final Model model;

    WirePreview(Words words, Samples samples) {
        super(new MigLayout("insets 0, fill"));
        this.model = new Model(words);
        ReadTable table = new ReadTable(
                model, words.get("wiring.preview"), new int[] {130, 110, 110, 70, 120}, (row, column) -> false);
        table.setName("wiring-preview");
        table.getColumnModel().getColumn(COLOUR).setCellRenderer(new Swatches(samples));
        add(new JScrollPane(table), "grow, push");
    }

    void show(WiringMade made) {
        model.show(made.wires());
    }

    private final class Swatches extends DefaultTableCellRenderer {
        private static final long serialVersionUID = 1L;

        private final transient Samples samples;

        Swatches(Samples samples) {
            this.samples = samples;
        }

        @Override
        public Component getTableCellRendererComponent(
                JTable table, Object value, boolean selected, boolean focused, int row, int column) {
            super.getTableCellRendererComponent(table, value, selected, focused, row, column);
            setIcon(model.wires
                    .get(row)
                    .colour()
                    .map(colour -> samples.icon(Samples.swatch(colour)))
                    .orElse(null));
            return this;
        }
    }

    private static final class Model extends AbstractTableModel {
        private static final long serialVersionUID = 1L;

        private final transient Words words;
        private transient List<Wire> wires = List.of();

        Model(Words words) {
            this.words = words;
        }

        void show(List<Wire> made) {
            wires = made;
            fireTableDataChanged();
        }

        @Override
        public int getRowCount() {
            return wires == null ? 0 : wires.size();
        }

        @Override
        public int getColumnCount() {
            return 5;
        }

        @Override
        public String getColumnName(int column) {
            return words.get(
                    switch (column) {
                        case 0 -> "wire.circuit";
                        case 1 -> "wire.from";
                        case 2 -> "wire.to";
                        case COLOUR -> "wire.colour";
                        default -> "wire.carries";
                    });
        }

        @Override
        public Object getValueAt(int row, int column) {
            Wire wire = wires.get(row);
            return switch (column) {
                case 0 -> wire.circuit().orElse("");
                case 1 -> wire.from().text();
                case 2 -> wire.to().text();
                case COLOUR -> wire.colour().map(WireColour::text).orElse("");
                default -> TradeWords.signal(wire.signalClass());
            };
        }
    }
}
