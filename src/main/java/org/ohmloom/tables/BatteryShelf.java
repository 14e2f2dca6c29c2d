package org.ohmloom.tables;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.ohmloom.words.Refusals;

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
                throw row.unfit("type", Refusals.text("'%s' is already there; choose another name", row.text("type")));
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
                throw row.unfit("value", Refusals.text("'%s' is below zero; write 0 or more", row.text("value")));
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
            throw row.unfit(column, Refusals.text("'%s' is already there; keep one row for it", text));
        }
        return true;
    }

    private static String by(RowReader row, List<String> choices) {
        String by = row.text("by");
        if (!choices.contains(by)) {
            throw row.unfit("by", Refusals.text("'%s' is not known; write one of %s", by, String.join(", ", choices)));
        }
        return by;
    }

    private static double at(RowReader row) {
        double at = row.plainNumber("at");
        if (row.text("by").equals(PULSE) && at <= 0) {
            throw row.unfit("at", Refusals.text("'%s' is not more than zero; write a time in s", row.text("at")));
        }
        return at;
    }

    private static double percent(RowReader row) {
        double charge = row.number(CHARGE, "1") * 100;
        if (charge < 0 || charge > 100) {
            throw row.unfit(CHARGE, Refusals.text("'%s' is not a charge level; write 0 to 100 %%", row.text(CHARGE)));
        }
        return Math.round(charge * 1e6) / 1e6;
    }

    /** The types by id; refuses rows of a type that is not listed, and a type that misses a curve. */
    Map<String, BatteryType> types() {
        firstUse.forEach((type, row) -> {
            if (!types.containsKey(type)) {
                throw row.unfit(
                        "type",
                        Refusals.text("'%s' is in no list of battery types; add it there, or correct it", type));
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
            throw row.unfit("type", Refusals.text("'%s' has no rows of %s by %s; add them to a table", type, of, by));
        }
        return new CitedCurve(type + ", " + by, UNITS.get(by), by.equals(PULSE), rows);
    }

    private static CitedValue value(RowReader row, String column) {
        return new CitedValue(row.positive(column, "1"), row.citation(row.text("type"), column));
    }
}
