package org.ohmloom.workbench.channel;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.table.AbstractTableModel;
import net.miginfocom.swing.MigLayout;
import org.ohmloom.model.Pin;
import org.ohmloom.signal.unit.UnitDescription;
import org.ohmloom.workbench.words.Words;

/** The pins of a unit that is not in the harness yet. */
final class UnitPins extends JPanel {

    private static final long serialVersionUID = 1L;

    private final Model model;

    UnitPins(Words words) {
        super(new MigLayout("insets 0, fill"));
        model = new Model(words);
        ReadTable table =
                new ReadTable(model, words.get("unit.pins"), new int[] {70, 60, 260, 220}, (row, column) -> false);
        table.setName("unit-pins");
        add(new JScrollPane(table), "grow, push");
    }

    void show(UnitDescription unit) {
        model.show(unit);
    }

    private static final class Model extends AbstractTableModel {
        private static final long serialVersionUID = 1L;

        private final transient Words words;
        private transient List<Pin> pins = List.of();
        private final transient Map<String, String> cavities = new HashMap<>();

        Model(Words words) {
            this.words = words;
        }

        void show(UnitDescription unit) {
            pins = unit.unit().pins();
            cavities.clear();
            unit.connectors()
                    .forEach((connector, places) ->
                            places.forEach((cavity, pin) -> cavities.putIfAbsent(pin, connector + " " + cavity)));
            fireTableDataChanged();
        }

        @Override
        public int getRowCount() {
            return pins == null ? 0 : pins.size();
        }

        @Override
        public int getColumnCount() {
            return 4;
        }

        @Override
        public String getColumnName(int column) {
            return words.get(
                    switch (column) {
                        case 0 -> "pin.pin";
                        case 1 -> "pin.cavity";
                        case 2 -> "pin.roles";
                        default -> "pin.limits";
                    });
        }

        @Override
        public Object getValueAt(int row, int column) {
            Pin pin = pins.get(row);
            return switch (column) {
                case 0 -> pin.name();
                case 1 -> cavities.getOrDefault(pin.name(), "");
                case 2 -> PinWords.roles(pin);
                default -> PinWords.limits(pin);
            };
        }
    }
}
