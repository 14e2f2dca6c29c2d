package org.ohmloom.workbench.channel;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import javax.swing.table.AbstractTableModel;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.PinRole;
import org.ohmloom.model.Sensor;
import org.ohmloom.signal.unit.ChannelProblem.UnitPin;
import org.ohmloom.workbench.words.TradeWords;
import org.ohmloom.workbench.words.Words;

/** The sensors, loads and relays with what each needs and the pin it has or would get. */
final class NeedModel extends AbstractTableModel {

    private static final long serialVersionUID = 1L;

    /** The columns. */
    enum Column {
        PLAN,
        WHAT,
        PIN,
        NEEDS,
        USE,
        RATE
    }

    private final transient Words words;
    private final transient Runnable changed;
    private final transient UsualRates rates;
    private final transient Set<ComponentId> without = new HashSet<>();
    private transient List<PinNeed> needs = List.of();
    private transient Map<ComponentId, UnitPin> proposed = Map.of();

    /**
     * No rows yet.
     *
     * @param changed called when a person takes something into the plan or out of it
     */
    NeedModel(Words words, UsualRates rates, Runnable changed) {
        this.words = words;
        this.rates = rates;
        this.changed = changed;
    }

    void show(List<PinNeed> shown) {
        needs = List.copyOf(shown);
        Set<ComponentId> there =
                needs.stream().map(need -> need.component().id()).collect(Collectors.toSet());
        without.retainAll(there);
        fireTableDataChanged();
    }

    /** Shows where a plan would put them. */
    void propose(Map<ComponentId, UnitPin> changes) {
        proposed = Map.copyOf(changes);
        if (!needs.isEmpty()) {
            fireTableRowsUpdated(0, needs.size() - 1);
        }
    }

    /** What is to get no pin. */
    Set<ComponentId> without() {
        return Set.copyOf(without);
    }

    PinNeed need(int row) {
        return needs.get(row);
    }

    /** The row of a component; -1 when there is none. */
    int rowOf(String id) {
        for (int row = 0; row < needs.size(); row++) {
            if (needs.get(row).id().equals(id)) {
                return row;
            }
        }
        return -1;
    }

    @Override
    public int getRowCount() {
        return needs == null ? 0 : needs.size();
    }

    @Override
    public int getColumnCount() {
        return Column.values().length;
    }

    @Override
    public String getColumnName(int column) {
        return words.get("need." + TradeWords.lower(Column.values()[column]));
    }

    @Override
    public Class<?> getColumnClass(int column) {
        return Column.values()[column] == Column.PLAN ? Boolean.class : String.class;
    }

    @Override
    public boolean isCellEditable(int row, int column) {
        return Column.values()[column] == Column.PLAN && !needs.get(row).lines().isEmpty();
    }

    @Override
    public void setValueAt(Object value, int row, int column) {
        ComponentId id = needs.get(row).component().id();
        if (Boolean.TRUE.equals(value) ? without.remove(id) : without.add(id)) {
            fireTableCellUpdated(row, column);
            changed.run();
        }
    }

    @Override
    public Object getValueAt(int row, int column) {
        PinNeed need = needs.get(row);
        return switch (Column.values()[column]) {
            case PLAN -> !need.lines().isEmpty()
                    && !without.contains(need.component().id());
            case WHAT -> need.id() + "  " + need.component().name();
            case NEEDS -> needed(need);
            case USE -> need.component().device() instanceof Sensor sensor ? PinWords.use(sensor) : "";
            case RATE -> need.component().device() instanceof Sensor sensor ? rates.text(sensor) : "";
            case PIN -> pin(need);
        };
    }

    private String needed(PinNeed need) {
        if (need.lines().isEmpty()) {
            return words.get("need.none");
        }
        String main = need.mainLine().map(line -> PinWords.role(line.role())).orElse("");
        return main
                + (need.needs(PinRole.REFERENCE_SUPPLY) ? words.get("need.with-supply") : "")
                + (need.needs(PinRole.SENSOR_RETURN) ? words.get("need.with-return") : "");
    }

    private String pin(PinNeed need) {
        String now = need.at().map(at -> at.unit() + "." + at.pin()).orElse("");
        Optional<String> next = Optional.ofNullable(
                        proposed.get(need.component().id()))
                .map(at -> at.unit() + "." + at.pin())
                .filter(text -> !text.equals(now));
        if (now.isEmpty() && next.isEmpty()) {
            return need.wiredTo()
                    .map(at -> words.get("need.wired", at.unit() + "." + at.pin()))
                    .orElse("");
        }
        String lock = need.isLocked() ? words.get("need.locked") : "";
        return next.map(text -> now.isEmpty() ? "→ " + text : now + " → " + text)
                        .orElse(now)
                + lock;
    }
}
