package org.ohmloom.bench.record;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.ohmloom.model.Element;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Measured;
import org.ohmloom.model.Reading;
import org.ohmloom.model.ReadingId;
import org.ohmloom.store.CsvTable;
import org.ohmloom.units.Dimension;
import org.ohmloom.units.Texts;
import org.ohmloom.words.Refusals;
import org.ohmloom.words.Text;
import org.ohmloom.words.UnfitException;
import org.ohmloom.words.Worded;

/**
 * The readings of a filled-in table of a test sheet. A line measured at the same time on the same harness as a reading that is there
 * already takes its place; any other is a new reading.
 *
 * @param readings  the readings, to be put into the harness
 * @param blanks    count of lines whose blank is not filled in
 * @param leftOut   columns that were not understood
 */
public record FilledSheet(List<Reading> readings, int blanks, List<String> leftOut) {
    private static final Pattern DATE = Pattern.compile("\\d{4}-\\d{2}-\\d{2}(T[0-9:.+Z-]+)?");
    private static final String PREFIX = "BR";

    public FilledSheet {
        readings = List.copyOf(readings);
        leftOut = List.copyOf(leftOut);
    }

    /**
     * Reads a table.
     *
     * @param table    the table
     * @param harness  the harness the readings are for
     * @param defaults what holds for lines that do not say it themselves
     * @throws RecordRefusedException when something in it is wrong: a line for each cell
     */
    public static FilledSheet of(CsvTable table, Harness harness, RecordDefaults defaults)
            throws RecordRefusedException {
        SheetColumns columns = new SheetColumns(table);
        SheetKind kind = SheetKind.of(columns)
                .orElseThrow(() -> new RecordRefusedException(List.of(Refusals.text(
                        "%s: the columns do not say what was measured; a table has those of the test sheet: %s",
                        table.name(), SheetKind.choices()))));
        List<Text> wrong = new ArrayList<>();
        List<Reading> readings = new ArrayList<>();
        Numbering ids = new Numbering(harness);
        Map<Once, Reading> known = new HashMap<>();
        harness.readings().all().forEach(reading -> known.putIfAbsent(Once.of(reading), reading));
        int blanks = 0;
        for (CsvTable.Row row : table.rows()) {
            try {
                Optional<Measured> measured = kind.read(columns, row, defaults);
                blanks += measured.isEmpty() ? 1 : 0;
                if (measured.isPresent()) {
                    Reading read = reading(columns, row, measured.get(), defaults, ids.next());
                    readings.add(inPlace(known, read).orElse(read));
                }
            } catch (IllegalArgumentException refused) {
                wrong.add(Refusals.text("%s, line %s: %s", table.name(), row.line(), Worded.of(refused)));
            }
        }
        if (!wrong.isEmpty()) {
            throw new RecordRefusedException(wrong);
        }
        return new FilledSheet(readings, blanks, columns.leftOut());
    }

    private static Reading reading(
            SheetColumns columns, CsvTable.Row row, Measured measured, RecordDefaults defaults, ReadingId id) {
        Signature signature = Signature.of(columns, row);
        Optional<Double> celsius = columns.number(row, "temperature", Dimension.TEMPERATURE);
        Optional<Double> error = columns.number(row, "instrument error", Dimension.RESISTANCE);
        return new Reading(
                id,
                measured,
                columns.text(row, "serial number").or(defaults::serialNumber),
                columns.text(row, "revision").or(defaults::revision),
                celsius.map(OptionalDouble::of).orElse(defaults.conductorCelsius()),
                method(columns, row),
                columns.text(row, "instrument").or(defaults::instrument),
                error.map(OptionalDouble::of).orElse(OptionalDouble.empty()),
                signature.by().or(defaults::by),
                signature.date().or(defaults::date),
                columns.text(row, "remark"),
                columns.text(row, "replaces").filter(text -> isYes(text)).isPresent());
    }

    private static boolean isYes(String text) {
        return switch (text.toLowerCase(Locale.ROOT)) {
            case "yes", "x", "true" -> true;
            case "no", "false", "-" -> false;
            default -> throw new UnfitException(
                    "column 'Replaces': %s is neither; write yes or no", Texts.quoted(text));
        };
    }

    private static Optional<Reading.Method> method(SheetColumns columns, CsvTable.Row row) {
        return columns.text(row, "method")
                .map(text -> switch (text.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]", "")) {
                    case "twowires", "twowire", "2wire", "2wires", "2" -> Reading.Method.TWO_WIRE;
                    case "fourwires", "fourwire", "4wire", "4wires", "4" -> Reading.Method.FOUR_WIRE;
                    default -> throw new UnfitException(
                            "column 'Method': %s is neither; write two wires or four wires", Texts.quoted(text));
                });
    }

    /** The reading this one is anew, with its identity: the same thing, the same harness, the same time. */
    private static Optional<Reading> inPlace(Map<Once, Reading> known, Reading read) {
        return Optional.ofNullable(known.get(Once.of(read)))
                .map(each -> new Reading(
                        each.id(),
                        read.measured(),
                        read.serialNumber(),
                        read.revision(),
                        read.conductorCelsius(),
                        read.method(),
                        read.instrument(),
                        read.instrumentErrorOhms(),
                        read.by(),
                        read.measuredAt(),
                        read.remark(),
                        read.replaces() || each.replaces()));
    }

    /** One measurement: of what, and when. */
    private record Once(Reading.Thing thing, Optional<String> measuredAt) {

        static Once of(Reading reading) {
            return new Once(reading.thing(), reading.measuredAt());
        }
    }

    /** The next free identities. */
    private static final class Numbering {
        private final Set<String> taken = new HashSet<>();
        private int last;

        Numbering(Harness harness) {
            harness.elements().map(Element::id).forEach(id -> taken.add(id.value()));
        }

        ReadingId next() {
            do {
                last++;
            } while (!taken.add(PREFIX + last));
            return new ReadingId(PREFIX + last);
        }
    }

    /** The next free identity for a reading entered by hand. */
    public static ReadingId nextId(Harness harness) {
        return new Numbering(harness).next();
    }

    /**
     * Who measured and when: of their own columns, or together as the sheet has them, {@code AB 2026-02-03}.
     *
     * @param by   who
     * @param date when
     */
    private record Signature(Optional<String> by, Optional<String> date) {

        static Signature of(SheetColumns columns, CsvTable.Row row) {
            Optional<String> both = columns.text(row, "by, date");
            Optional<String> by = columns.text(row, "by");
            Optional<String> date = columns.text(row, "date");
            if (both.isEmpty()) {
                return new Signature(by, date);
            }
            Matcher found = DATE.matcher(both.get());
            if (found.find()) {
                String rest = (both.get().substring(0, found.start())
                                + both.get().substring(found.end()))
                        .replaceAll("^[\\s,;]+|[\\s,;]+$", "");
                return new Signature(
                        by.or(() -> Optional.of(rest).filter(text -> !text.isEmpty())),
                        date.or(() -> Optional.of(found.group())));
            }
            if (both.get().matches(".*\\d.*")) {
                throw new UnfitException(
                        "column 'By, date': the date is written as 2026-01-31, not %s", Texts.quoted(both.get()));
            }
            return new Signature(by.or(() -> both), date);
        }
    }
}
