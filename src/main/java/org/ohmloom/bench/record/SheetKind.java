package org.ohmloom.bench.record;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ohmloom.model.Measured;
import org.ohmloom.store.CsvTable;
import org.ohmloom.units.Dimension;
import org.ohmloom.units.Gauge;
import org.ohmloom.units.Texts;
import org.ohmloom.words.UnfitException;

/** The tables of a test sheet, told apart by their columns, and how a line of each says what was measured. */
enum SheetKind {
    PATH(List.of("from", "to", "measured")) {
        @Override
        Optional<Measured> read(SheetColumns columns, CsvTable.Row row, RecordDefaults defaults) {
            return columns.number(row, MEASURED, Dimension.RESISTANCE)
                    .map(ohms -> new Measured.Path(needed(columns, row, "from"), needed(columns, row, "to"), ohms));
        }
    },
    ISOLATION(List.of("probe at", "measured")) {
        @Override
        Optional<Measured> read(SheetColumns columns, CsvTable.Row row, RecordDefaults defaults) {
            Optional<String> text = columns.written(row, MEASURED);
            boolean beyond = text.filter(each -> each.startsWith(">")).isPresent();
            CsvTable.Row plain = beyond ? without(columns, row) : row;
            return columns.number(plain, MEASURED, Dimension.RESISTANCE)
                    .map(ohms -> new Measured.Isolation(
                            needed(columns, row, "probe at"), ohms, volts(columns, row), beyond));
        }

        private static CsvTable.Row without(SheetColumns columns, CsvTable.Row row) {
            Map<String, String> cells = new LinkedHashMap<>(row.cells());
            cells.replaceAll((head, cell) -> head.toLowerCase(Locale.ROOT).startsWith(MEASURED) && cell.startsWith(">")
                    ? cell.substring(1).strip()
                    : cell);
            return new CsvTable.Row(row.line(), cells);
        }

        /** The sheet says "ohmmeter only" where no voltage is to be used. */
        private static OptionalDouble volts(SheetColumns columns, CsvTable.Row row) {
            Optional<String> text = columns.written(row, "test voltage");
            return text.filter(each -> each.matches(".*\\d.*")).isEmpty()
                    ? OptionalDouble.empty()
                    : optional(columns.number(row, "test voltage", Dimension.VOLTAGE));
        }
    },
    CABLE(List.of("cable", "check", "passed or failed")) {
        @Override
        Optional<Measured> read(SheetColumns columns, CsvTable.Row row, RecordDefaults defaults) {
            return columns.text(row, "passed or failed")
                    .map(text -> new Measured.CableCheck(
                            needed(columns, row, "cable"), needed(columns, row, "check"), outcome(text)));
        }

        private static Measured.CableCheck.Outcome outcome(String text) {
            return switch (text.toLowerCase(Locale.ROOT)) {
                case "passed", "pass", "ok", "yes" -> Measured.CableCheck.Outcome.PASSED;
                case "failed", "fail", "no" -> Measured.CableCheck.Outcome.FAILED;
                default -> throw new UnfitException(
                        "column 'Passed or failed': %s is neither; write passed or failed", Texts.quoted(text));
            };
        }
    },
    PULL(List.of("terminal", "conductor", "lowest force")) {
        @Override
        Optional<Measured> read(SheetColumns columns, CsvTable.Row row, RecordDefaults defaults) {
            Optional<Double> pulled = columns.number(row, "pulled", Dimension.RATIO)
                    .or(() -> columns.number(row, "pull", Dimension.RATIO));
            return columns.number(row, "lowest force", Dimension.FORCE)
                    .map(newtons -> new Measured.Pull(
                            needed(columns, row, "terminal"),
                            Gauge.parse(needed(columns, row, "conductor")),
                            newtons,
                            optional(pulled)));
        }
    },
    POWERED(List.of("load", "voltage found")) {
        @Override
        Optional<Measured> read(SheetColumns columns, CsvTable.Row row, RecordDefaults defaults) {
            OptionalDouble volts = optional(columns.number(row, "voltage found", Dimension.VOLTAGE));
            OptionalDouble drop = optional(columns.number(row, "drop found", Dimension.VOLTAGE));
            OptionalDouble amps = optional(columns.number(row, "current found", Dimension.CURRENT));
            Optional<String> state = columns.text(row, "state").or(defaults::state);
            if (volts.isEmpty() && drop.isEmpty() && amps.isEmpty()) {
                return Optional.empty();
            }
            return Optional.of(new Measured.Powered(
                    needed(columns, row, "load"),
                    state.orElseThrow(() ->
                            new UnfitException("no operating state is named; a column 'State' with its id is needed")),
                    volts,
                    drop,
                    amps));
        }
    },
    WIRE(List.of("wire", "measured")) {
        @Override
        Optional<Measured> read(SheetColumns columns, CsvTable.Row row, RecordDefaults defaults) {
            return columns.number(row, MEASURED, Dimension.RESISTANCE)
                    .map(ohms -> new Measured.OfWire(needed(columns, row, "wire"), ohms));
        }
    },
    JOINT(List.of("joint", "measured")) {
        @Override
        Optional<Measured> read(SheetColumns columns, CsvTable.Row row, RecordDefaults defaults) {
            return columns.number(row, MEASURED, Dimension.RESISTANCE)
                    .map(ohms -> new Measured.OfJoint(needed(columns, row, "joint"), ohms));
        }
    };

    private static final String MEASURED = "measured";

    private final List<String> needed;

    SheetKind(List<String> needed) {
        this.needed = needed;
    }

    /** The kind of a table; empty when its columns are those of none. */
    static Optional<SheetKind> of(SheetColumns columns) {
        return List.of(values()).stream()
                .filter(kind -> kind.needed.stream().allMatch(columns::has))
                .findFirst();
    }

    /** The columns a table may have, for messages. */
    static String choices() {
        return "From, To, Measured mΩ; Probe at, Measured MΩ; Cable, Check, Passed or failed; Terminal, Conductor, Lowest force N;"
                + " Load, State, Voltage found V, Drop found V; Wire, Measured mΩ; Joint, Measured mΩ";
    }

    /**
     * What a line measured; empty where its blank was not filled in.
     *
     * @throws IllegalArgumentException when a cell is wrong
     */
    abstract Optional<Measured> read(SheetColumns columns, CsvTable.Row row, RecordDefaults defaults);

    private static String needed(SheetColumns columns, CsvTable.Row row, String name) {
        return columns.text(row, name)
                .orElseThrow(() -> new UnfitException(
                        "a value is written, but nothing in the column '%s'",
                        name.substring(0, 1).toUpperCase(Locale.ROOT) + name.substring(1)));
    }

    private static OptionalDouble optional(Optional<Double> value) {
        return value.map(OptionalDouble::of).orElse(OptionalDouble.empty());
    }
}
