package org.ohmloom.workbench.channel;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import javax.swing.table.AbstractTableModel;
import org.ohmloom.model.SignalClass;
import org.ohmloom.model.WireColour;
import org.ohmloom.model.WiringRules;
import org.ohmloom.workbench.words.TradeWords;
import org.ohmloom.workbench.words.Words;

/** Colours by what a wire carries, as codes in the order they are taken; nothing for the usual ones. */
final class ColourModel extends AbstractTableModel {

    private static final long serialVersionUID = 1L;

    private final transient Words words;
    private final transient Map<SignalClass, String> typed = new EnumMap<>(SignalClass.class);

    ColourModel(Words words, WiringRules now) {
        this.words = words;
        now.colours()
                .forEach(each -> typed.put(
                        each.signalClass(),
                        each.choices().stream().map(WireColour::text).collect(Collectors.joining(", "))));
    }

    /**
     * The colours asked for.
     *
     * @throws IllegalArgumentException when a code is none; one sentence says which
     */
    List<WiringRules.Colours> colours() {
        List<WiringRules.Colours> all = new ArrayList<>();
        typed.forEach((signalClass, text) -> {
            List<WireColour> choices = Arrays.stream(text.split("[,;]"))
                    .map(String::strip)
                    .filter(code -> !code.isEmpty())
                    .map(WireColour::parse)
                    .toList();
            if (!choices.isEmpty()) {
                all.add(new WiringRules.Colours(signalClass, choices));
            }
        });
        return all;
    }

    @Override
    public int getRowCount() {
        return SignalClass.values().length;
    }

    @Override
    public int getColumnCount() {
        return 2;
    }

    @Override
    public String getColumnName(int column) {
        return words.get(column == 0 ? "wiring.carries" : "wiring.codes");
    }

    @Override
    public boolean isCellEditable(int row, int column) {
        return column == 1;
    }

    @Override
    public Object getValueAt(int row, int column) {
        SignalClass signalClass = SignalClass.values()[row];
        return column == 0 ? TradeWords.signal(signalClass) : typed.getOrDefault(signalClass, "");
    }

    @Override
    public void setValueAt(Object value, int row, int column) {
        typed.put(SignalClass.values()[row], String.valueOf(value).strip());
        fireTableCellUpdated(row, column);
    }
}
