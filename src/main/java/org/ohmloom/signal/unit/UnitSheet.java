package org.ohmloom.signal.unit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import org.ohmloom.model.ControlUnit;
import org.ohmloom.model.Pin;
import org.ohmloom.model.PinGroup;
import org.ohmloom.model.PinUse;
import org.ohmloom.store.CsvTable;
import org.ohmloom.store.CsvTableException;
import org.ohmloom.words.Refusals;
import org.ohmloom.words.Worded;

/**
 * Reads the description of a control unit from comma-separated text: a head of lines that begin with {@code #}, then one line for
 * each use of each pin; the first line of a pin is how it is delivered.
 */
public final class UnitSheet {
    private static final String HEAD_KEYS = "title, source, drawAmps, groundToSensorReturnOhms, groundToCaseOhms,"
            + " minimumVolts, inputFarads, inputOhms, nameCharacters, group NAME";

    private final String name;
    private final CsvTable table;
    private final Map<String, String> head = new LinkedHashMap<>();
    private final Map<String, Integer> headLines = new LinkedHashMap<>();
    private final Map<String, List<String>> members = new TreeMap<>();
    private final Map<String, Map<String, String>> connectors = new LinkedHashMap<>();

    private UnitSheet(String text, String name) throws CsvTableException, UnitSheetException {
        this.name = name;
        StringBuilder body = new StringBuilder();
        int line = 0;
        for (String each : text.lines().toList()) {
            line++;
            if (each.strip().startsWith("#")) {
                head(each.strip().substring(1).strip(), line);
                body.append("\n");
            } else {
                body.append(each).append("\n");
            }
        }
        this.table = CsvTable.parse(body.toString(), name);
    }

    private void head(String text, int line) throws UnitSheetException {
        int colon = text.indexOf(':');
        String key = colon < 0 ? text : text.substring(0, colon).strip();
        if (colon < 0 || !isKnown(key)) {
            throw refused(
                    line, "'%s' is no head of a control unit; write one of %s, a colon and the value", key, HEAD_KEYS);
        }
        head.put(key, text.substring(colon + 1).strip());
        headLines.put(key, line);
    }

    private static boolean isKnown(String key) {
        return key.startsWith("group ") || List.of(HEAD_KEYS.split(", ")).contains(key);
    }

    /**
     * Reads a description.
     *
     * @param text the text
     * @param name what to call it in messages, and the unit; a path's last part without its ending
     * @throws CsvTableException  when it is no table; one line for people
     * @throws UnitSheetException when it describes no unit; one line for people that names the place and what would be right
     */
    public static UnitDescription read(String text, String name) throws CsvTableException, UnitSheetException {
        return new UnitSheet(text, name).unit();
    }

    private UnitDescription unit() throws UnitSheetException {
        for (String needed : List.of("pin", "role")) {
            if (!table.heads().contains(needed)) {
                throw refused("no column '%s'; the columns are %s", needed, String.join(", ", PinRow.COLUMNS));
            }
        }
        for (String column : table.heads()) {
            if (!PinRow.COLUMNS.contains(column)) {
                throw refused(
                        "no column is called '%s'; the columns are %s", column, String.join(", ", PinRow.COLUMNS));
            }
        }
        Map<String, List<PinUse>> uses = new LinkedHashMap<>();
        for (CsvTable.Row each : table.rows()) {
            PinRow row = new PinRow(name, table, each);
            PinUse use = row.use();
            List<PinUse> own = uses.computeIfAbsent(row.pin(), pin -> new ArrayList<>());
            if (own.stream().anyMatch(other -> other.role() == use.role())) {
                throw row.wrong("role", "pin %s has this role twice", row.pin());
            }
            own.add(use);
            String pin = row.pin();
            row.group().ifPresent(group -> members.computeIfAbsent(group, key -> new ArrayList<>())
                    .add(pin));
            row.place(connectors);
        }
        if (uses.isEmpty()) {
            throw refused("no pin is listed; write one line for each");
        }
        List<Pin> pins = new ArrayList<>();
        uses.forEach((pin, own) -> pins.add(pin(pin, own)));
        return new UnitDescription(
                shortName(),
                head.getOrDefault("title", shortName()),
                head.getOrDefault("source", "not stated"),
                device(pins),
                connectors);
    }

    private static Pin pin(String pin, List<PinUse> uses) {
        return Pin.of(pin, uses.get(0)).withUses(uses.subList(1, uses.size()));
    }

    private ControlUnit device(List<Pin> pins) throws UnitSheetException {
        List<PinGroup> groups = new ArrayList<>();
        for (Map.Entry<String, List<String>> each : members.entrySet()) {
            String key = "group " + each.getKey();
            OptionalDouble limit = number(key);
            if (limit.isEmpty()) {
                throw refused(
                        "the limit of group %s is missing; write '# %s: 12' for 12 A in the head", each.getKey(), key);
            }
            groups.add(new PinGroup(
                    each.getKey(), each.getValue().stream().distinct().toList(), limit.getAsDouble()));
        }
        for (String key : head.keySet()) {
            if (key.startsWith("group ")
                    && !members.containsKey(key.substring(6).strip())) {
                throw refused(
                        headLines.get(key),
                        "no pin is in %s; write the name of the group into the column 'group' of its pins",
                        key);
            }
        }
        OptionalDouble characters = number("nameCharacters");
        try {
            return new ControlUnit(
                    pins,
                    number("drawAmps").orElse(0),
                    number("groundToSensorReturnOhms"),
                    number("groundToCaseOhms"),
                    number("minimumVolts"),
                    number("inputFarads"),
                    number("inputOhms"),
                    characters.isPresent() ? Optional.of((int) characters.getAsDouble()) : Optional.empty(),
                    groups,
                    List.of());
        } catch (IllegalArgumentException refused) {
            throw new UnitSheetException(new UnitSheetException.Place(name), Worded.of(refused));
        }
    }

    private OptionalDouble number(String key) throws UnitSheetException {
        String text = head.get(key);
        if (text == null || text.isEmpty()) {
            return OptionalDouble.empty();
        }
        try {
            double value = Double.parseDouble(text);
            if (Double.isFinite(value) && value >= 0) {
                return OptionalDouble.of(value);
            }
        } catch (NumberFormatException noNumber) {
            // told below
        }
        throw refused(
                headLines.get(key),
                "'%s' is no number of 0 or more for '%s'; write it with a decimal point and without a unit",
                text,
                key);
    }

    private UnitSheetException refused(String template, Object... values) {
        return new UnitSheetException(new UnitSheetException.Place(name), Refusals.text(template, values));
    }

    private UnitSheetException refused(int line, String template, Object... values) {
        return new UnitSheetException(new UnitSheetException.Place(name, line), Refusals.text(template, values));
    }

    private String shortName() {
        String file = name.substring(Math.max(name.lastIndexOf('/'), name.lastIndexOf('\\')) + 1);
        return file.endsWith(".csv") ? file.substring(0, file.length() - 4) : file;
    }
}
