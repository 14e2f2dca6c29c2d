package org.ohmloom.signal.unit;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ohmloom.model.ControlUnit;
import org.ohmloom.model.Driver;
import org.ohmloom.model.InputRange;
import org.ohmloom.model.InputStage;
import org.ohmloom.model.Pin;
import org.ohmloom.model.PinGroup;
import org.ohmloom.model.PinRole;
import org.ohmloom.model.PinUse;
import org.ohmloom.store.CsvText;

/**
 * A control unit written as {@link UnitSheet} reads it.
 *
 * @param head key and value of each line of the head, in order
 * @param rows cells of each line below by the names of the columns
 */
public record UnitSheetText(Map<String, String> head, List<Map<String, String>> rows) {

    /** The columns a sheet may have, in the order they are written; all but the first two may be empty. */
    public static final List<String> COLUMNS = PinRow.COLUMNS;

    public UnitSheetText {
        head = new LinkedHashMap<>(head);
        rows = rows.stream().map(row -> Map.copyOf(row)).toList();
    }

    /** Words that may stand in a column; none where anything may. */
    public static List<String> choices(String column) {
        return switch (column) {
            case "role" -> words(PinRole.values());
            case "scale" -> words(InputStage.Scale.values());
            case "coldJunction" -> words(InputStage.ColdJunction.values());
            case "freewheel" -> words(Driver.Freewheel.values()).stream()
                    .filter(word -> !word.equals(PinRow.word(Driver.Freewheel.ACTIVE_CLAMP)))
                    .toList();
            default -> List.of();
        };
    }

    private static <T extends Enum<T>> List<String> words(T[] values) {
        return List.copyOf(PinRow.words(values).keySet());
    }

    /** A unit as a sheet. An active clamp, which a sheet cannot say, is left out with its switching frequency. */
    public static UnitSheetText of(UnitDescription described) {
        ControlUnit unit = described.unit();
        Map<String, String> head = new LinkedHashMap<>();
        head.put("title", described.title());
        head.put("source", described.source());
        head.put("drawAmps", number(unit.drawAmps()));
        put(head, "groundToSensorReturnOhms", unit.groundToSensorReturnOhms());
        put(head, "groundToCaseOhms", unit.groundToCaseOhms());
        put(head, "minimumVolts", unit.minimumVolts());
        put(head, "inputFarads", unit.inputFarads());
        put(head, "inputOhms", unit.inputOhms());
        unit.nameCharacters().ifPresent(most -> head.put("nameCharacters", String.valueOf(most)));
        Map<String, String> groupOf = new HashMap<>();
        for (PinGroup group : unit.groups()) {
            head.put("group " + group.name(), number(group.limitAmps()));
            group.pins().forEach(pin -> groupOf.put(pin, group.name()));
        }
        Map<String, String[]> places = new HashMap<>();
        described
                .connectors()
                .forEach((connector, cavities) ->
                        cavities.forEach((cavity, pin) -> places.putIfAbsent(pin, new String[] {connector, cavity})));
        List<Map<String, String>> rows = new ArrayList<>();
        for (Pin pin : unit.pins()) {
            Map<String, String> first = row(pin.name(), PinUse.now(pin));
            Optional.ofNullable(groupOf.get(pin.name())).ifPresent(group -> first.put("group", group));
            Optional.ofNullable(places.get(pin.name())).ifPresent(place -> {
                first.put("connector", place[0]);
                first.put("cavity", place[1]);
            });
            rows.add(first);
            pin.capabilities().stream()
                    .filter(role -> role != pin.role())
                    .forEach(role -> rows.add(row(pin.name(), pin.use(role))));
        }
        return new UnitSheetText(head, rows);
    }

    private static Map<String, String> row(String pin, PinUse use) {
        Map<String, String> row = new LinkedHashMap<>();
        row.put("pin", pin);
        row.put("role", PinRow.word(use.role()));
        put(row, "limitAmps", use.limitAmps());
        put(row, "onOhms", use.onOhms());
        put(row, "referenceVolts", use.referenceVolts());
        put(row, "pullUpVolts", use.pullUpVolts());
        put(row, "pullUpOhms", use.pullUpOhms());
        use.range().ifPresent(range -> range(row, range));
        use.input().ifPresent(input -> input(row, input));
        use.driver()
                .filter(driver -> driver.freewheel() != Driver.Freewheel.ACTIVE_CLAMP)
                .ifPresent(driver -> {
                    row.put("frequencyHertz", number(driver.frequencyHertz()));
                    row.put("freewheel", PinRow.word(driver.freewheel()));
                });
        return row;
    }

    private static void range(Map<String, String> row, InputRange range) {
        put(row, "lowestVolts", range.lowestVolts());
        put(row, "highestVolts", range.highestVolts());
        put(row, "lowestHertz", range.lowestHertz());
        put(row, "highestHertz", range.highestHertz());
    }

    private static void input(Map<String, String> row, InputStage input) {
        put(row, "inputOhms", input.inputOhms());
        put(row, "filterHertz", input.filterHertz());
        put(row, "risingVolts", input.risingVolts());
        put(row, "fallingVolts", input.fallingVolts());
        input.scale().ifPresent(scale -> row.put("scale", PinRow.word(scale)));
        put(row, "shuntOhms", input.shuntOhms());
        input.coldJunction().ifPresent(junction -> row.put("coldJunction", PinRow.word(junction)));
        input.converterBits().ifPresent(bits -> row.put("converterBits", String.valueOf(bits)));
    }

    private static void put(Map<String, String> into, String key, OptionalDouble value) {
        value.ifPresent(number -> into.put(key, number(number)));
    }

    private static String number(double value) {
        return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
    }

    /** Lines before the first row: the head and the names of the columns. */
    public int linesBefore() {
        return head.size() + 1;
    }

    /** The whole text of the sheet. */
    public String csv() {
        StringBuilder text = new StringBuilder();
        head.forEach((key, value) ->
                text.append("# ").append(key).append(": ").append(value).append("\n"));
        CsvText table = new CsvText(COLUMNS.toArray(new String[0]));
        rows.forEach(row -> table.row(
                COLUMNS.stream().map(column -> row.getOrDefault(column, "")).toArray()));
        return text.append(table.text()).toString();
    }
}
