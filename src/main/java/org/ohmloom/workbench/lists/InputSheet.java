package org.ohmloom.workbench.lists;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.BiFunction;
import java.util.function.Function;
import org.ohmloom.edit.Edit;
import org.ohmloom.model.Component;
import org.ohmloom.model.ControlUnit;
import org.ohmloom.model.ElementId;
import org.ohmloom.model.InputStage;
import org.ohmloom.model.OutputPin;
import org.ohmloom.model.Pin;
import org.ohmloom.units.Formats;
import org.ohmloom.workbench.desk.Readout;
import org.ohmloom.workbench.sheet.CellText;
import org.ohmloom.workbench.sheet.Column;
import org.ohmloom.workbench.sheet.ColumnEdits;
import org.ohmloom.workbench.sheet.ElementSheet;
import org.ohmloom.workbench.words.Term;
import org.ohmloom.workbench.words.TradeWords;
import org.ohmloom.workbench.words.Words;

/** The inputs of control units and how they read. What is empty is not known and not checked. */
final class InputSheet implements ElementSheet<InputSheet.Row> {
    private static final Words WORDS = Words.of("lists");

    /**
     * One input.
     *
     * @param component the control unit
     * @param pin       the pin
     */
    record Row(Component component, Pin pin) {

        InputStage input() {
            return InputEdits.of(pin);
        }

        String name() {
            return new OutputPin(component.id(), pin.name()).toString();
        }
    }

    @Override
    public String title() {
        return WORDS.get("input.inputs");
    }

    @Override
    public List<Column<Row>> columns() {
        return List.of(
                Column.text(WORDS.term("input.input"), WORDS.get("input.input.about"), 10, Row::name),
                Column.text(WORDS.term("input.unit"), WORDS.get("input.unit.about"), 18, row -> row.component()
                        .name()),
                Column.text(
                        WORDS.term("input.role"),
                        WORDS.get("input.role.about"),
                        20,
                        row -> TradeWords.named(row.pin().role())),
                Column.<Row>text(
                                WORDS.term("input.pull-up"),
                                WORDS.get("input.pull-up.about"),
                                14,
                                row -> pullUp(row.pin()))
                        .quantities(),
                ColumnEdits.words(
                        WORDS.term("input.compares-with"),
                        WORDS.get("input.compares-with.about"),
                        14,
                        row -> row.input().scale().map(TradeWords::lower).orElse(""),
                        InputEdits::scale),
                edited(
                        WORDS.term("input.loads"),
                        "Ω",
                        WORDS.get("input.loads.about"),
                        InputStage::inputOhms,
                        InputEdits::ohms),
                edited(
                        WORDS.term("input.filter"),
                        "Hz",
                        WORDS.get("input.filter.about"),
                        InputStage::filterHertz,
                        InputEdits::filter),
                edited(
                        WORDS.term("input.high-from"),
                        "V",
                        WORDS.get("input.high-from.about"),
                        InputStage::risingVolts,
                        InputEdits::rising),
                edited(
                        WORDS.term("input.low-from"),
                        "V",
                        WORDS.get("input.low-from.about"),
                        InputStage::fallingVolts,
                        InputEdits::falling),
                edited(
                        WORDS.term("input.shunt"),
                        "Ω",
                        WORDS.get("input.shunt.about"),
                        InputStage::shuntOhms,
                        InputEdits::shunt));
    }

    private static String pullUp(Pin pin) {
        return pin.pullUpOhms().isPresent() && pin.pullUpVolts().isPresent()
                ? WORDS.get(
                        "input.to",
                        Formats.ohms(pin.pullUpOhms().getAsDouble()),
                        Formats.volts(pin.pullUpVolts().getAsDouble()))
                : "";
    }

    private static Column<Row> edited(
            Term title,
            String unit,
            String tip,
            Function<InputStage, OptionalDouble> value,
            BiFunction<List<Row>, String, Edit> parse) {
        return ColumnEdits.number(title, unit, tip, row -> CellText.of(value.apply(row.input())), parse);
    }

    @Override
    public List<Row> rows(Readout readout) {
        List<Row> rows = new ArrayList<>();
        for (Component component : readout.harness().components().all()) {
            if (component.device() instanceof ControlUnit unit) {
                unit.pins().stream()
                        .filter(pin -> pin.role().isInput())
                        .forEach(pin -> rows.add(new Row(component, pin)));
            }
        }
        return rows;
    }

    @Override
    public ElementId id(Row row) {
        return row.component().id();
    }
}
