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
import org.ohmloom.workbench.words.TradeWords;

/** The inputs of control units and how they read. What is empty is not known and not checked. */
final class InputSheet implements ElementSheet<InputSheet.Row> {

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
        return "Inputs";
    }

    @Override
    public List<Column<Row>> columns() {
        return List.of(
                Column.text("Input", "Control unit and pin", 10, Row::name),
                Column.text("Unit", "What people call the control unit", 18, row -> row.component()
                        .name()),
                Column.text(
                        "Role",
                        "What the pin is used as",
                        20,
                        row -> TradeWords.named(row.pin().role())),
                Column.<Row>text("Pull-up", "Resistor and the voltage it goes to", 14, row -> pullUp(row.pin()))
                        .quantities(),
                ColumnEdits.words(
                        "Compares with",
                        "What its converter goes by: ratiometric (the reference supply) or fixed",
                        14,
                        row -> row.input().scale().map(TradeWords::lower).orElse(""),
                        InputEdits::scale),
                edited(
                        "Loads",
                        "Ω",
                        "Resistance from the pin to the sensor return",
                        InputStage::inputOhms,
                        InputEdits::ohms),
                edited("Filter", "Hz", "Corner frequency of its filter", InputStage::filterHertz, InputEdits::filter),
                edited("High from", "V", "Voltage it reads as high from", InputStage::risingVolts, InputEdits::rising),
                edited("Low from", "V", "Voltage it reads as low from", InputStage::fallingVolts, InputEdits::falling),
                edited(
                        "Shunt",
                        "Ω",
                        "Resistance a current input turns the current into a voltage with",
                        InputStage::shuntOhms,
                        InputEdits::shunt));
    }

    private static String pullUp(Pin pin) {
        return pin.pullUpOhms().isPresent() && pin.pullUpVolts().isPresent()
                ? Formats.ohms(pin.pullUpOhms().getAsDouble()) + " to "
                        + Formats.volts(pin.pullUpVolts().getAsDouble())
                : "";
    }

    private static Column<Row> edited(
            String title,
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
