package org.ohmloom.tables;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Gathers the rows of the battery tables by type, then makes one {@link BatteryType} of each. */
final class BatteryShelf {
    private static final String OPEN_CIRCUIT = "open circuit";
    private static final String RESISTANCE = "resistance";
    private static final String ACCEPTANCE = "acceptance";
    private static final String TEMPERATURE = "temperature";
    private static final String CHARGE = "charge";
    private static final String PULSE = "pulse";
    private static final Map<String, String> UNITS = Map.of(TEMPERATURE, "C", CHARGE, "%", PULSE, "s");

    /** One curve while its rows are gathered. */
    private record Key(String type, String of, String by) {}

    private final Map<String, RowReader> types = new LinkedHashMap<>();
    private final Map<Key, TreeMap<Double, CitedValue>> curves = new LinkedHashMap<>();
    private final Map<String, RowReader> firstUse = new LinkedHashMap<>();

    void addTypes(SheetReader sheet) {
        sheet.rows(row -> {
            RowReader earlier = types.putIfAbsent(row.text("type"), row);
            if (earlier != null) {
                throw row.wrong("type", "'" + row.text("type") + "' is already there", "choose another name");
            }
            return row;
        });
    }

    void addOpenCircuit(SheetReader sheet) {
        sheet.rows(row -> add(row, OPEN_CIRCUIT, CHARGE, percent(row), row.positive("cellVolts", "V"), "cellVolts"));
    }

    void addResistances(SheetReader sheet) {
        sheet.rows(row -> add(
                row,
                RESISTANCE,
                by(row, UNITS.keySet().stream().sorted().toList()),
                at(row),
                row.positive("factor", "1"),
                "factor"));
    }

    void addAcceptances(SheetReader sheet) {
        sheet.rows(row -> {
            double value = row.number("value", "1");
            if (value < 0) {
                throw row.wrong("value", "'" + row.text("value") + "' is below zero", "write 0 or more");
            }
            return add(row, ACCEPTANCE, by(row, List.of(CHARGE, TEMPERATURE)), at(row), value, "value");
        });
    }

    private boolean add(RowReader row, String of, String by, double at, double value, String column) {
        String type = row.text("type");
        firstUse.putIfAbsent(type, row);
        String text = type + ", " + by + " " + row.text(of.equals(OPEN_CIRCUIT) ? CHARGE : "at") + " " + UNITS.get(by);
        CitedValue before = curves.computeIfAbsent(new Key(type, of, by), key -> new TreeMap<>())
                .putIfAbsent(at, new CitedValue(value, row.citation(text, column)));
        if (before != null) {
            throw row.wrong(column, "'" + text + "' is already there", "keep one row for it");
        }
        return true;
    }

    private static String by(RowReader row, List<String> choices) {
        String by = row.text("by");
        if (!choices.contains(by)) {
            throw row.wrong("by", "'" + by + "' is not known", "write one of " + String.join(", ", choices));
        }
        return by;
    }

    private static double at(RowReader row) {
        double at = row.plainNumber("at");
        if (row.text("by").equals(PULSE) && at <= 0) {
            throw row.wrong("at", "'" + row.text("at") + "' is not more than zero", "write a time in s");
        }
        return at;
    }

    private static double percent(RowReader row) {
        double charge = row.number(CHARGE, "1") * 100;
        if (charge < 0 || charge > 100) {
            throw row.wrong(CHARGE, "'" + row.text(CHARGE) + "' is not a charge level", "write 0 to 100 %");
        }
        return Math.round(charge * 1e6) / 1e6;
    }

    /** The types by id; refuses rows of a type that is not listed, and a type that misses a curve. */
    Map<String, BatteryType> types() {
        firstUse.forEach((type, row) -> {
            if (!types.containsKey(type)) {
                throw row.wrong("type", "'" + type + "' is in no list of battery types", "add it there, or correct it");
            }
        });
        Map<String, BatteryType> all = new LinkedHashMap<>();
        types.forEach((type, row) -> all.put(
                type,
                new BatteryType(
                        type,
                        row.text("title"),
                        curve(row, OPEN_CIRCUIT, CHARGE),
                        curve(row, RESISTANCE, TEMPERATURE),
                        curve(row, RESISTANCE, CHARGE),
                        curve(row, RESISTANCE, PULSE),
                        curve(row, ACCEPTANCE, CHARGE),
                        curve(row, ACCEPTANCE, TEMPERATURE),
                        value(row, "peukertExponent"),
                        value(row, "chargeEfficiency"),
                        value(row, "chargeResistanceFactor"))));
        return all;
    }

    private CitedCurve curve(RowReader row, String of, String by) {
        String type = row.text("type");
        TreeMap<Double, CitedValue> rows = curves.get(new Key(type, of, by));
        if (rows == null) {
            throw row.wrong("type", "'" + type + "' has no rows of " + of + " by " + by, "add them to a table");
        }
        return new CitedCurve(type + ", " + by, UNITS.get(by), by.equals(PULSE), rows);
    }

    private static CitedValue value(RowReader row, String column) {
        return new CitedValue(row.positive(column, "1"), row.citation(row.text("type"), column));
    }
}
