package org.ohmloom.signal.unit;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ohmloom.model.Driver;
import org.ohmloom.model.InputRange;
import org.ohmloom.model.InputStage;
import org.ohmloom.model.NearestText;
import org.ohmloom.model.PinRole;
import org.ohmloom.model.PinUse;
import org.ohmloom.store.CsvTable;
import org.ohmloom.words.Refusals;
import org.ohmloom.words.Worded;

/** One line of a {@link UnitSheet}: a pin set up for one role. */
final class PinRow {

    /** The columns a sheet may have; all but the first two may be missing. */
    static final List<String> COLUMNS = List.of(
            "pin",
            "role",
            "connector",
            "cavity",
            "limitAmps",
            "onOhms",
            "referenceVolts",
            "pullUpVolts",
            "pullUpOhms",
            "lowestVolts",
            "highestVolts",
            "lowestHertz",
            "highestHertz",
            "inputOhms",
            "filterHertz",
            "risingVolts",
            "fallingVolts",
            "scale",
            "shuntOhms",
            "coldJunction",
            "converterBits",
            "frequencyHertz",
            "freewheel",
            "group");

    private final String sheet;
    private final CsvTable table;
    private final CsvTable.Row row;

    PinRow(String sheet, CsvTable table, CsvTable.Row row) {
        this.sheet = sheet;
        this.table = table;
        this.row = row;
    }

    String pin() throws UnitSheetException {
        if (row.cell("pin").isEmpty()) {
            throw wrong("pin", "the name of the pin is missing");
        }
        return row.cell("pin");
    }

    Optional<String> group() {
        return Optional.of(row.cell("group")).filter(text -> !text.isEmpty());
    }

    /** Notes the cavity of the pin; one pin may be in one cavity only. */
    void place(Map<String, Map<String, String>> connectors) throws UnitSheetException {
        String connector = row.cell("connector");
        String cavity = row.cell("cavity");
        if (connector.isEmpty() != cavity.isEmpty()) {
            throw wrong(connector.isEmpty() ? "connector" : "cavity", "a connector and a cavity are written together");
        }
        if (!connector.isEmpty()) {
            String before = connectors
                    .computeIfAbsent(connector, key -> new LinkedHashMap<>())
                    .put(cavity, pin());
            if (before != null && !before.equals(pin())) {
                throw wrong("cavity", "cavity %s of %s has pin %s already", cavity, connector, before);
            }
        }
    }

    PinUse use() throws UnitSheetException {
        Map<String, PinRole> roles = words(PinRole.values());
        PinRole role = word("role", roles)
                .orElseThrow(
                        () -> wrong("role", "the role is missing; it is one of %s", String.join(", ", roles.keySet())));
        try {
            return new PinUse(
                    role,
                    number("limitAmps"),
                    number("onOhms"),
                    number("referenceVolts"),
                    number("pullUpVolts"),
                    number("pullUpOhms"),
                    driver(),
                    Optional.of(input()).filter(input -> !input.equals(InputStage.UNKNOWN)),
                    range());
        } catch (IllegalArgumentException refused) {
            throw new UnitSheetException(
                    new UnitSheetException.Place(sheet, row.line(), Refusals.text("pin %s", row.cell("pin"))),
                    Worded.of(refused));
        }
    }

    private Optional<Driver> driver() throws UnitSheetException {
        OptionalDouble hertz = number("frequencyHertz");
        Optional<Driver.Freewheel> freewheel = word("freewheel", words(Driver.Freewheel.values()));
        if (freewheel.filter(Driver.Freewheel.ACTIVE_CLAMP::equals).isPresent()) {
            throw wrong("freewheel", "an active clamp needs its voltage and is entered in the harness");
        }
        if (hertz.isEmpty()) {
            if (freewheel.isPresent()) {
                throw wrong("frequencyHertz", "a freewheel is written together with the switching frequency");
            }
            return Optional.empty();
        }
        return Optional.of(Driver.of(hertz.getAsDouble()).withFreewheel(freewheel.orElse(Driver.Freewheel.NONE)));
    }

    private InputStage input() throws UnitSheetException {
        OptionalDouble bits = number("converterBits");
        return new InputStage(
                        number("inputOhms"),
                        number("filterHertz"),
                        number("risingVolts"),
                        number("fallingVolts"),
                        word("scale", words(InputStage.Scale.values())),
                        number("shuntOhms"),
                        word("coldJunction", words(InputStage.ColdJunction.values())))
                .withConverterBits(bits.isPresent() ? Optional.of((int) bits.getAsDouble()) : Optional.empty());
    }

    private Optional<InputRange> range() throws UnitSheetException {
        InputRange range = new InputRange(
                number("lowestVolts"), number("highestVolts"), number("lowestHertz"), number("highestHertz"));
        boolean says = range.lowestVolts().isPresent()
                || range.highestVolts().isPresent()
                || range.lowestHertz().isPresent()
                || range.highestHertz().isPresent();
        return says ? Optional.of(range) : Optional.empty();
    }

    private OptionalDouble number(String column) throws UnitSheetException {
        String text = row.cell(column);
        if (text.isEmpty()) {
            return OptionalDouble.empty();
        }
        try {
            double value = Double.parseDouble(table.decimalComma() ? text.replace(',', '.') : text);
            if (Double.isFinite(value)) {
                return OptionalDouble.of(value);
            }
        } catch (NumberFormatException noNumber) {
            // told below
        }
        throw wrong(column, "'%s' is no number; write it in the unit of the column's name, without a unit", text);
    }

    private <T> Optional<T> word(String column, Map<String, T> words) throws UnitSheetException {
        String text = row.cell(column);
        if (text.isEmpty()) {
            return Optional.empty();
        }
        T meant = words.get(text);
        if (meant == null) {
            throw wrong(
                    column,
                    "'%s' is none of %s%s",
                    text,
                    String.join(", ", words.keySet()),
                    NearestText.question(text, words.keySet()));
        }
        return Optional.of(meant);
    }

    /** Constants as they are written in a sheet: {@code low-side-output}. */
    static <T extends Enum<T>> Map<String, T> words(T[] values) {
        Map<String, T> words = new LinkedHashMap<>();
        for (T value : values) {
            words.put(word(value), value);
        }
        return words;
    }

    static String word(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    UnitSheetException wrong(String column, String template, Object... values) {
        return new UnitSheetException(
                new UnitSheetException.Place(sheet, row.line(), Refusals.text("column %s", column)),
                Refusals.text(template, values));
    }
}
