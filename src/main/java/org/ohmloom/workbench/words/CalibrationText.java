package org.ohmloom.workbench.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.ohmloom.model.Calibration;
import org.ohmloom.units.Formats;
import org.ohmloom.units.Unit;

/**
 * A calibration as people write it in one cell: {@code 10 % to 90 %} of the supply, {@code 0.5 V to 4.5 V}, {@code 4 mA to 20 mA},
 * {@code 2.5 kOhm at 20 degC, beta 3500 K}, {@code 0: 10 Ohm, 100: 180 Ohm}, {@code low 0.3 V, high 4.8 V},
 * {@code closed 0.1 Ohm}, {@code type K, copper}, {@code type K, gain 100 on 0.25 V}, {@code 0: 0.5 V, 100: 4.5 V}. Steinhart-Hart constants are shown and edited in the file.
 */
public final class CalibrationText {

    private static final Words WORDS = Words.of("typed");

    /** What a cell takes, for its hint. */
    public static final String FORMS = "10 % to 90 %; 0.5 V to 4.5 V; 4 mA to 20 mA; 2.5 kOhm at 20 °C, beta 3500 K;"
            + " 0: 10 Ohm, 100: 180 Ohm; low 0.3 V; closed 0.1 Ohm; type K, copper;"
            + " type K, gain 100 on 0.25 V; 0: 0.5 V, 100: 4.5 V";

    private static final Pattern LINE = Pattern.compile("(.+?)\\s+to\\s+(.+)");
    private static final Pattern BETA =
            Pattern.compile("(.+?)\\s+at\\s+(.+?),\\s*beta\\s+(.+?)(\\s*K)?", Pattern.CASE_INSENSITIVE);
    private static final Pattern LEVELS =
            Pattern.compile("low\\s+(.+?)(?:,\\s*high\\s+(.+))?", Pattern.CASE_INSENSITIVE);
    private static final Pattern CONTACT =
            Pattern.compile("closed\\s+(.+?)(?:,\\s*open\\s+(.+))?", Pattern.CASE_INSENSITIVE);
    private static final Pattern AMPLIFIED =
            Pattern.compile("type k,\\s*gain\\s+(.+?)\\s+on\\s+(.+)", Pattern.CASE_INSENSITIVE);
    private static final Pattern ROW = Pattern.compile("\\s*(-?[0-9.]+)\\s*:\\s*(.+)");

    private CalibrationText() {}

    /** As it is shown, and what editing starts from. */
    public static String of(Calibration calibration) {
        if (calibration instanceof Calibration.RatiometricLine line) {
            return Formats.percent(line.lowFraction()) + " to " + Formats.percent(line.highFraction());
        }
        if (calibration instanceof Calibration.VoltageLine line) {
            return Formats.volts(line.lowVolts()) + " to " + Formats.volts(line.highVolts());
        }
        if (calibration instanceof Calibration.CurrentLine line) {
            return Formats.amps(line.lowAmps()) + " to " + Formats.amps(line.highAmps());
        }
        if (calibration instanceof Calibration.Beta beta) {
            return Formats.ohms(beta.referenceOhms()) + " at " + Formats.celsius(beta.referenceCelsius()) + ", beta "
                    + Formats.number(beta.betaKelvin()) + " K";
        }
        if (calibration instanceof Calibration.SteinhartHart curve) {
            return "Steinhart-Hart " + curve.a() + ", " + curve.b() + ", " + curve.c();
        }
        if (calibration instanceof Calibration.ResistanceTable table) {
            return table.points().stream()
                    .map(point -> Formats.number(point.value()) + ": " + Formats.ohms(point.ohms()))
                    .collect(Collectors.joining(", "));
        }
        if (calibration instanceof Calibration.SwitchContact contact) {
            return "closed " + Formats.ohms(contact.closedOhms())
                    + (contact.openOhms().isPresent()
                            ? ", open " + Formats.ohms(contact.openOhms().getAsDouble())
                            : "");
        }
        if (calibration instanceof Calibration.PulseLevels pulses) {
            return "low " + Formats.volts(pulses.lowVolts())
                    + (pulses.highVolts().isPresent()
                            ? ", high " + Formats.volts(pulses.highVolts().getAsDouble())
                            : "");
        }
        if (calibration instanceof Calibration.VoltageTable table) {
            return table.points().stream()
                    .map(point -> Formats.number(point.value()) + ": " + Formats.volts(point.volts()))
                    .collect(Collectors.joining(", "));
        }
        if (calibration instanceof Calibration.AmplifiedThermocouple amplified) {
            return "type " + amplified.type() + ", gain " + Formats.number(amplified.gainRatio()) + " on "
                    + Formats.volts(amplified.offsetVolts());
        }
        Calibration.Thermocouple couple = (Calibration.Thermocouple) calibration;
        return "type " + couple.type()
                + couple.extension().map(each -> ", " + TradeWords.lower(each)).orElse("");
    }

    /**
     * Reads what was typed.
     *
     * @param typed  the text
     * @param before the calibration so far; what the text does not say stays as it was where the kind stays
     * @throws IllegalArgumentException with one line for the person
     */
    public static Calibration parse(String typed, Optional<Calibration> before) {
        String text = typed.strip();
        Matcher beta = BETA.matcher(text);
        if (beta.matches()) {
            return new Calibration.Beta(
                    TypedNumbers.needed(beta.group(1), Unit.OHM, WORDS.get("calibration.the-resistance")),
                    TypedNumbers.needed(beta.group(2), Unit.DEGREE_CELSIUS, WORDS.get("calibration.the-temperature")),
                    TypedNumbers.needed(beta.group(3), Unit.FRACTION, WORDS.get("calibration.beta")));
        }
        Matcher levels = LEVELS.matcher(text);
        if (levels.matches()) {
            Optional<Calibration.PulseLevels> was = kept(before, Calibration.PulseLevels.class);
            return new Calibration.PulseLevels(
                    TypedNumbers.needed(levels.group(1), Unit.VOLT, WORDS.get("calibration.the-low-level")),
                    optional(levels.group(2), Unit.VOLT),
                    was.map(Calibration.PulseLevels::outputOhms).orElse(OptionalDouble.empty()),
                    was.map(Calibration.PulseLevels::hertzPerUnit).orElse(OptionalDouble.empty()),
                    was.flatMap(Calibration.PulseLevels::turns));
        }
        Matcher contact = CONTACT.matcher(text);
        if (contact.matches()) {
            return new Calibration.SwitchContact(
                    TypedNumbers.needed(contact.group(1), Unit.OHM, WORDS.get("calibration.the-closed-contact")),
                    optional(contact.group(2), Unit.OHM));
        }
        Matcher amplified = AMPLIFIED.matcher(text);
        if (amplified.matches()) {
            return new Calibration.AmplifiedThermocouple(
                    Calibration.Thermocouple.Type.K,
                    TypedNumbers.needed(amplified.group(1), Unit.FRACTION, WORDS.get("calibration.the-gain")),
                    TypedNumbers.needed(amplified.group(2), Unit.VOLT, WORDS.get("calibration.the-output-at-0-c")),
                    kept(before, Calibration.AmplifiedThermocouple.class)
                            .map(Calibration.AmplifiedThermocouple::outputOhms)
                            .orElse(OptionalDouble.empty()));
        }
        if (text.toLowerCase(Locale.ROOT).startsWith("type k")) {
            return couple(text, before);
        }
        if (ROW.matcher(text).matches()) {
            return text.endsWith("V") ? volts(text, before) : table(text);
        }
        Matcher line = LINE.matcher(text);
        if (line.matches()) {
            return line(line.group(1), line.group(2), before);
        }
        throw new IllegalArgumentException(WORDS.get("calibration.none", text, FORMS));
    }

    private static OptionalDouble optional(@Nullable String part, Unit unit) {
        return part == null ? OptionalDouble.empty() : TypedNumbers.optional(part, unit);
    }

    private static <T> Optional<T> kept(Optional<Calibration> before, Class<T> kind) {
        return before.filter(kind::isInstance).map(kind::cast);
    }

    private static Calibration line(String low, String high, Optional<Calibration> before) {
        if (high.endsWith("%")) {
            return new Calibration.RatiometricLine(
                    TypedNumbers.needed(low, Unit.PERCENT, WORDS.get("calibration.the-low-end")),
                    TypedNumbers.needed(high, Unit.PERCENT, WORDS.get("calibration.the-high-end")),
                    kept(before, Calibration.RatiometricLine.class)
                            .map(Calibration.RatiometricLine::outputOhms)
                            .orElse(OptionalDouble.empty()));
        }
        if (high.endsWith("A")) {
            return new Calibration.CurrentLine(
                    TypedNumbers.needed(low, Unit.AMP, WORDS.get("calibration.the-low-end")),
                    TypedNumbers.needed(high, Unit.AMP, WORDS.get("calibration.the-high-end")),
                    kept(before, Calibration.CurrentLine.class)
                            .map(Calibration.CurrentLine::minimumVolts)
                            .orElse(OptionalDouble.empty()));
        }
        return new Calibration.VoltageLine(
                TypedNumbers.needed(low, Unit.VOLT, WORDS.get("calibration.the-low-end")),
                TypedNumbers.needed(high, Unit.VOLT, WORDS.get("calibration.the-high-end")),
                kept(before, Calibration.VoltageLine.class)
                        .map(Calibration.VoltageLine::outputOhms)
                        .orElse(OptionalDouble.empty()));
    }

    private static Calibration couple(String text, Optional<Calibration> before) {
        String rest = text.substring("type k".length()).replace(",", "").strip().toLowerCase(Locale.ROOT);
        Optional<Calibration.Thermocouple.Extension> extension =
                switch (rest) {
                    case "" -> Optional.empty();
                    case "copper" -> Optional.of(Calibration.Thermocouple.Extension.COPPER);
                    case "matching" -> Optional.of(Calibration.Thermocouple.Extension.MATCHING);
                    default -> throw new IllegalArgumentException(WORDS.get("calibration.extension", rest));
                };
        return new Calibration.Thermocouple(
                Calibration.Thermocouple.Type.K,
                extension,
                kept(before, Calibration.Thermocouple.class)
                        .map(Calibration.Thermocouple::jointCelsius)
                        .orElse(OptionalDouble.empty()));
    }

    private static Calibration table(String text) {
        List<Calibration.ResistancePoint> points = new ArrayList<>();
        for (String part : text.split("[,;]")) {
            Matcher row = ROW.matcher(part);
            if (!row.matches()) {
                throw new IllegalArgumentException(WORDS.get("calibration.ohms-row", part.strip()));
            }
            points.add(new Calibration.ResistancePoint(
                    Double.parseDouble(row.group(1)),
                    TypedNumbers.needed(row.group(2), Unit.OHM, WORDS.get("calibration.the-resistance"))));
        }
        return new Calibration.ResistanceTable(points);
    }

    private static Calibration volts(String text, Optional<Calibration> before) {
        Optional<Calibration.VoltageTable> was = kept(before, Calibration.VoltageTable.class);
        List<Calibration.VoltagePoint> points = new ArrayList<>();
        for (String part : text.split("[,;]")) {
            Matcher row = ROW.matcher(part);
            if (!row.matches()) {
                throw new IllegalArgumentException(WORDS.get("calibration.volts-row", part.strip()));
            }
            points.add(new Calibration.VoltagePoint(
                    Double.parseDouble(row.group(1)),
                    TypedNumbers.needed(row.group(2), Unit.VOLT, WORDS.get("calibration.the-voltage"))));
        }
        return new Calibration.VoltageTable(
                points,
                was.map(Calibration.VoltageTable::supplyVolts).orElse(OptionalDouble.empty()),
                was.map(Calibration.VoltageTable::outputOhms).orElse(OptionalDouble.empty()));
    }
}
