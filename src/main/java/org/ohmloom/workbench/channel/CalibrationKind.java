package org.ohmloom.workbench.channel;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.ohmloom.model.Calibration;
import org.ohmloom.units.Quantity;
import org.ohmloom.units.Unit;
import org.ohmloom.workbench.words.TypedNumbers;
import org.ohmloom.workbench.words.Words;

/** Kinds of calibration a form takes, with the fields of each. */
enum CalibrationKind {
    SHARE(Calibration.RatiometricLine.class, "low-share", "high-share"),
    VOLTS(Calibration.VoltageLine.class, "low-volts", "high-volts"),
    CURRENT(Calibration.CurrentLine.class, "low-amps", "high-amps"),
    VOLT_TABLE(Calibration.VoltageTable.class),
    OHM_TABLE(Calibration.ResistanceTable.class),
    BETA(Calibration.Beta.class, "at-ohms", "at-celsius", "beta"),
    STEINHART_HART(Calibration.SteinhartHart.class, "sh-a", "sh-b", "sh-c"),
    AMPLIFIED(Calibration.AmplifiedThermocouple.class, "gain", "offset"),
    THERMOCOUPLE(Calibration.Thermocouple.class),
    PULSES(Calibration.PulseLevels.class, "low-level", "high-level", "pulses", "ratio", "tyre", "per-unit"),
    CONTACT(Calibration.SwitchContact.class, "closed", "open");

    /** Rows a table begins with room for. */
    private static final int TABLE_ROWS = 12;

    private final Class<? extends Calibration> model;
    private final List<String> fields;

    CalibrationKind(Class<? extends Calibration> model, String... fields) {
        this.model = model;
        this.fields = List.of(fields);
    }

    /** The kind of a calibration. */
    static CalibrationKind of(Calibration calibration) {
        for (CalibrationKind kind : values()) {
            if (kind.model.isInstance(calibration)) {
                return kind;
            }
        }
        throw new IllegalArgumentException("no form takes " + calibration);
    }

    /** What people call it. */
    String shown() {
        return Words.of("channels")
                .get("kind." + name().toLowerCase(Locale.ROOT).replace('_', '-'));
    }

    boolean isTable() {
        return this == VOLT_TABLE || this == OHM_TABLE;
    }

    /** What stands before each field; of a table, nothing: a person types both cells of a row. */
    List<String> labels() {
        Words words = Words.of("channels");
        return isTable()
                ? Collections.nCopies(TABLE_ROWS, "")
                : fields.stream().map(field -> words.get("field." + field)).toList();
    }

    /** What stands in the fields for a calibration: pairs of the first and second cell of each row. */
    List<String[]> rows(Optional<Calibration> calibration) {
        List<String> labels = labels();
        List<String> values =
                calibration.filter(model::isInstance).map(this::values).orElse(List.of());
        List<String[]> rows = new ArrayList<>();
        if (isTable()) {
            for (int k = 0; k + 1 < values.size(); k += 2) {
                rows.add(new String[] {values.get(k), values.get(k + 1)});
            }
            while (rows.size() < TABLE_ROWS) {
                rows.add(new String[] {"", ""});
            }
        } else {
            for (int k = 0; k < labels.size(); k++) {
                rows.add(new String[] {labels.get(k), k < values.size() ? values.get(k) : ""});
            }
        }
        return rows;
    }

    private List<String> values(Calibration calibration) {
        if (calibration instanceof Calibration.RatiometricLine line) {
            return List.of(percent(line.lowFraction()), percent(line.highFraction()));
        }
        if (calibration instanceof Calibration.VoltageLine line) {
            return List.of(exact(line.lowVolts()), exact(line.highVolts()));
        }
        if (calibration instanceof Calibration.CurrentLine line) {
            return List.of(exact(line.lowAmps()), exact(line.highAmps()));
        }
        if (calibration instanceof Calibration.VoltageTable table) {
            return table.points().stream()
                    .flatMap(point -> Stream.of(exact(point.value()), exact(point.volts())))
                    .toList();
        }
        if (calibration instanceof Calibration.ResistanceTable table) {
            return table.points().stream()
                    .flatMap(point -> Stream.of(exact(point.value()), exact(point.ohms())))
                    .toList();
        }
        if (calibration instanceof Calibration.Beta beta) {
            return List.of(exact(beta.referenceOhms()), exact(beta.referenceCelsius()), exact(beta.betaKelvin()));
        }
        if (calibration instanceof Calibration.SteinhartHart curve) {
            return List.of(exact(curve.a()), exact(curve.b()), exact(curve.c()));
        }
        if (calibration instanceof Calibration.AmplifiedThermocouple couple) {
            return List.of(exact(couple.gainRatio()), exact(couple.offsetVolts()));
        }
        if (calibration instanceof Calibration.PulseLevels pulses) {
            Optional<Calibration.Turns> turns = pulses.turns();
            return List.of(
                    exact(pulses.lowVolts()),
                    exact(pulses.highVolts()),
                    turns.map(each -> exact(each.pulsesPerRevolution())).orElse(""),
                    turns.map(each -> exact(each.turnsRatio())).orElse(""),
                    turns.map(each -> exact(each.tyreMetres())).orElse(""),
                    exact(pulses.hertzPerUnit()));
        }
        return calibration instanceof Calibration.SwitchContact contact
                ? List.of(exact(contact.closedOhms()), exact(contact.openOhms()))
                : List.of();
    }

    private static String exact(double value) {
        return TypedNumbers.exact(value);
    }

    private static String exact(OptionalDouble value) {
        return value.isPresent() ? exact(value.getAsDouble()) : "";
    }

    private static String percent(double fraction) {
        return exact(Math.round(fraction * 1e8) / 1e6);
    }

    /**
     * The calibration typed.
     *
     * @param rows   first and second cell of each row
     * @param before what it was; what the form does not show stays where the kind stays
     * @throws IllegalArgumentException when something does not fit; one sentence says what would be right
     */
    Calibration read(List<String[]> rows, Optional<Calibration> before) {
        Optional<Calibration> same = before.filter(model::isInstance);
        return switch (this) {
            case SHARE -> new Calibration.RatiometricLine(
                    needed(rows, 0, Unit.PERCENT),
                    needed(rows, 1, Unit.PERCENT),
                    same.map(each -> ((Calibration.RatiometricLine) each).outputOhms())
                            .orElse(OptionalDouble.empty()));
            case VOLTS -> new Calibration.VoltageLine(
                    needed(rows, 0, Unit.VOLT),
                    needed(rows, 1, Unit.VOLT),
                    same.map(each -> ((Calibration.VoltageLine) each).outputOhms())
                            .orElse(OptionalDouble.empty()));
            case CURRENT -> new Calibration.CurrentLine(
                    needed(rows, 0, Unit.AMP),
                    needed(rows, 1, Unit.AMP),
                    same.map(each -> ((Calibration.CurrentLine) each).minimumVolts())
                            .orElse(OptionalDouble.empty()));
            case VOLT_TABLE -> new Calibration.VoltageTable(
                    filled(rows).stream()
                            .map(row -> new Calibration.VoltagePoint(
                                    number(row[0], Unit.FRACTION), number(row[1], Unit.VOLT)))
                            .toList(),
                    same.map(each -> ((Calibration.VoltageTable) each).supplyVolts())
                            .orElse(OptionalDouble.empty()),
                    same.map(each -> ((Calibration.VoltageTable) each).outputOhms())
                            .orElse(OptionalDouble.empty()));
            case OHM_TABLE -> new Calibration.ResistanceTable(filled(rows).stream()
                    .map(row ->
                            new Calibration.ResistancePoint(number(row[0], Unit.FRACTION), number(row[1], Unit.OHM)))
                    .toList());
            case BETA -> new Calibration.Beta(
                    needed(rows, 0, Unit.OHM), needed(rows, 1, Unit.DEGREE_CELSIUS), needed(rows, 2, Unit.FRACTION));
            case STEINHART_HART -> new Calibration.SteinhartHart(
                    constant(rows, 0), constant(rows, 1), constant(rows, 2));
            case AMPLIFIED -> new Calibration.AmplifiedThermocouple(
                    Calibration.Thermocouple.Type.K,
                    needed(rows, 0, Unit.FRACTION),
                    needed(rows, 1, Unit.VOLT),
                    same.map(each -> ((Calibration.AmplifiedThermocouple) each).outputOhms())
                            .orElse(OptionalDouble.empty()));
            case THERMOCOUPLE -> same.orElseGet(() -> new Calibration.Thermocouple(
                    Calibration.Thermocouple.Type.K, Optional.empty(), OptionalDouble.empty()));
            case PULSES -> pulses(rows, same);
            case CONTACT -> new Calibration.SwitchContact(
                    needed(rows, 0, Unit.OHM), TypedNumbers.optional(rows.get(1)[1], Unit.OHM));
        };
    }

    private static Calibration pulses(List<String[]> rows, Optional<Calibration> same) {
        OptionalDouble perTurn = TypedNumbers.optional(rows.get(2)[1], Unit.FRACTION);
        return new Calibration.PulseLevels(
                needed(rows, 0, Unit.VOLT),
                TypedNumbers.optional(rows.get(1)[1], Unit.VOLT),
                same.map(each -> ((Calibration.PulseLevels) each).outputOhms()).orElse(OptionalDouble.empty()),
                TypedNumbers.optional(rows.get(5)[1], Unit.FRACTION),
                perTurn.isPresent()
                        ? Optional.of(new Calibration.Turns(
                                perTurn.getAsDouble(),
                                TypedNumbers.optional(rows.get(3)[1], Unit.FRACTION),
                                TypedNumbers.optional(rows.get(4)[1], Unit.METRE)))
                        : Optional.empty());
    }

    private static double needed(List<String[]> rows, int row, Unit unit) {
        return TypedNumbers.needed(rows.get(row)[1], unit, rows.get(row)[0]);
    }

    private static double number(String text, Unit unit) {
        return TypedNumbers.needed(text, unit, Words.of("channels").get("field.cell"));
    }

    /** A constant as data sheets write it: 1.129e-3. */
    private static double constant(List<String[]> rows, int row) {
        try {
            double typed = Double.parseDouble(rows.get(row)[1].strip().replace(',', '.'));
            if (Quantity.isTooLarge(typed) || Quantity.isTooSmall(typed)) {
                throw new IllegalArgumentException(
                        Words.of("channels").get("field.beyond", rows.get(row)[0], rows.get(row)[1]));
            }
            return typed;
        } catch (NumberFormatException noNumber) {
            throw new IllegalArgumentException(
                    Words.of("channels").get("field.no-number", rows.get(row)[0], rows.get(row)[1]), noNumber);
        }
    }

    private static List<String[]> filled(List<String[]> rows) {
        return rows.stream()
                .filter(row -> !row[0].isBlank() || !row[1].isBlank())
                .toList();
    }
}
