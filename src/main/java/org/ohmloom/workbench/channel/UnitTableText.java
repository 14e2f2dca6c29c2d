package org.ohmloom.workbench.channel;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Vector;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import javax.swing.table.DefaultTableModel;
import org.ohmloom.signal.unit.UnitDescription;
import org.ohmloom.signal.unit.UnitSheetText;
import org.ohmloom.workbench.words.Words;

/** The cells of a unit that is typed, and the sheet they make. */
final class UnitTableText {

    /** Before the name of a group in the head of a sheet: a key of the file, the same in every language. */
    private static final String FORM = "group ";

    private static final List<String> HEAD = List.of(
            "title",
            "source",
            "drawAmps",
            "groundToSensorReturnOhms",
            "groundToCaseOhms",
            "minimumVolts",
            "inputFarads",
            "inputOhms",
            "nameCharacters");

    private static final int GROUPS = 3;

    private final Words words = Words.of("channels");
    private final DefaultTableModel head = new DefaultTableModel() {
        private static final long serialVersionUID = 1L;

        @Override
        public boolean isCellEditable(int row, int column) {
            return column > 0 || row >= HEAD.size();
        }
    };
    private final DefaultTableModel pins = new DefaultTableModel();

    UnitTableText() {
        head.addColumn(words.get("unit.of"));
        head.addColumn(words.get("unit.value"));
        UnitSheetText.COLUMNS.forEach(column -> pins.addColumn(words.get("column." + column)));
    }

    /** What is said of the unit, line by line; below it limits of groups of pins: name and limit. */
    DefaultTableModel head() {
        return head;
    }

    /** A row for each use of each pin. */
    DefaultTableModel pins() {
        return pins;
    }

    /** What may be chosen in which column of the pins. */
    Map<Integer, List<String>> choices() {
        Map<Integer, List<String>> choices = new LinkedHashMap<>();
        for (int k = 0; k < UnitSheetText.COLUMNS.size(); k++) {
            List<String> words = UnitSheetText.choices(UnitSheetText.COLUMNS.get(k));
            if (!words.isEmpty()) {
                List<String> all = new ArrayList<>(words);
                all.add(0, "");
                choices.put(k, all);
            }
        }
        return choices;
    }

    /** Begins with a unit there is. */
    void begin(UnitDescription unit) {
        UnitSheetText text = UnitSheetText.of(unit);
        head.setRowCount(0);
        HEAD.forEach(key ->
                head.addRow(new Object[] {words.get("head." + key), text.head().getOrDefault(key, "")}));
        text.head().forEach((key, value) -> {
            if (key.startsWith("group ")) {
                head.addRow(new Object[] {key.substring("group ".length()), value});
            }
        });
        while (head.getRowCount() < HEAD.size() + GROUPS) {
            head.addRow(new Object[] {"", ""});
        }
        pins.setRowCount(0);
        text.rows()
                .forEach(row -> pins.addRow(new Vector<>(UnitSheetText.COLUMNS.stream()
                        .map(column -> row.getOrDefault(column, ""))
                        .toList())));
    }

    /** Adds an empty row below another, or at the end. */
    void addRow(int below) {
        Vector<String> empty =
                new Vector<>(UnitSheetText.COLUMNS.stream().map(column -> "").toList());
        pins.insertRow(below < 0 ? pins.getRowCount() : below + 1, empty);
    }

    private UnitSheetText text() {
        Map<String, String> said = new LinkedHashMap<>();
        for (int row = 0; row < head.getRowCount(); row++) {
            String value = cell(head, row, 1);
            String key = row < HEAD.size() ? HEAD.get(row) : cell(head, row, 0);
            if (!value.isEmpty() && !key.isEmpty()) {
                said.put(row < HEAD.size() ? key : FORM + key, value);
            }
        }
        List<Map<String, String>> rows = IntStream.range(0, pins.getRowCount())
                .mapToObj(row -> IntStream.range(0, UnitSheetText.COLUMNS.size())
                        .boxed()
                        .collect(Collectors.toMap(UnitSheetText.COLUMNS::get, column -> cell(pins, row, column))))
                .toList();
        return new UnitSheetText(said, rows);
    }

    private static String cell(DefaultTableModel model, int row, int column) {
        Object value = model.getValueAt(row, column);
        return value == null ? "" : value.toString().strip();
    }

    String csv() {
        return text().csv();
    }

    /** Lines of the sheet before the first row of the pins. */
    int linesBefore() {
        return text().linesBefore();
    }

    /** A name for its file, without the ending. */
    String fileName() {
        return cell(head, 0, 1)
                .toLowerCase(Locale.ROOT)
                .replaceAll("[^a-z0-9]+", "-")
                .replaceAll("^-|-$", "");
    }
}
