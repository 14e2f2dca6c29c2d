package org.ohmloom.workbench.pinview;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.swing.table.AbstractTableModel;
import org.ohmloom.draw.CavityView;
import org.ohmloom.edit.CavityUse;
import org.ohmloom.edit.EndOfWire;
import org.ohmloom.model.CavityGrid;
import org.ohmloom.model.Connector;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Wire;
import org.ohmloom.workbench.words.Words;

/** The cavities of a connector in the rows and columns they lie in. */
final class CavityModel extends AbstractTableModel {

    private static final long serialVersionUID = 1L;

    private transient Optional<Harness> harness = Optional.empty();
    private transient Optional<Connector> connector = Optional.empty();
    private transient List<List<String>> places = List.of();
    private transient List<CavityUse> uses = List.of();

    /** Shows a connector of a harness, or nothing; whether rows and columns are others than before. */
    boolean show(Optional<Harness> now, Optional<Connector> shown, CavityGrid.Side side) {
        List<List<String>> before = places;
        harness = now;
        connector = shown;
        places = shown.map(each -> CavityView.places(each, side)).orElse(List.of());
        uses = shown.map(each -> CavityUse.of(now.orElseThrow(), each)).orElse(List.of());
        boolean other = !places.equals(before);
        if (other) {
            fireTableStructureChanged();
        } else {
            fireTableDataChanged();
        }
        return other;
    }

    Optional<Connector> connector() {
        return connector;
    }

    /** The use of the cavity at a place; empty where there is none. */
    Optional<CavityUse> use(int row, int column) {
        if (row < 0
                || column < 0
                || row >= places.size()
                || column >= places.get(row).size()) {
            return Optional.empty();
        }
        return use(places.get(row).get(column));
    }

    /** The use of the cavity of that name. */
    Optional<CavityUse> use(String cavity) {
        return uses.stream().filter(use -> use.cavity().name().equals(cavity)).findFirst();
    }

    /** What cannot stay so, as a person reads it. */
    static String said(Words words, CavityUse.Clash clash) {
        return words.get("clash." + clash.name().toLowerCase(Locale.ROOT));
    }

    /** Everything that cannot stay as it is. */
    List<CavityUse> clashing() {
        return uses.stream().filter(use -> !use.clashes().isEmpty()).toList();
    }

    List<CavityUse> uses() {
        return uses;
    }

    /** The wire of an end. */
    Wire wire(EndOfWire end) {
        return harness.orElseThrow().wires().get(end.wire());
    }

    /** Row and column of a cavity. */
    Optional<int[]> place(String cavity) {
        for (int row = 0; row < places.size(); row++) {
            int column = places.get(row).indexOf(cavity);
            if (column >= 0) {
                return Optional.of(new int[] {row, column});
            }
        }
        return Optional.empty();
    }

    @Override
    public int getRowCount() {
        // the table asks while this object is still being made
        return places == null ? 0 : places.size();
    }

    @Override
    public int getColumnCount() {
        return places == null ? 0 : places.stream().mapToInt(List::size).max().orElse(0);
    }

    @Override
    public Object getValueAt(int row, int column) {
        return use(row, column).map(CavityModel::words).orElse("");
    }

    private static String words(CavityUse use) {
        StringBuilder words = new StringBuilder(use.cavity().name());
        use.ends().forEach(end -> words.append(' ').append(end.wire()));
        return words.toString();
    }
}
