package org.ohmloom.workbench.lists;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import org.ohmloom.model.Component;
import org.ohmloom.model.ControlUnit;
import org.ohmloom.model.Driver;
import org.ohmloom.model.ElectronicLimit;
import org.ohmloom.model.ElementId;
import org.ohmloom.model.OutputPin;
import org.ohmloom.model.PinRole;
import org.ohmloom.model.SolidStateOutput;
import org.ohmloom.units.Formats;
import org.ohmloom.workbench.desk.Readout;
import org.ohmloom.workbench.sheet.CellText;
import org.ohmloom.workbench.sheet.Column;
import org.ohmloom.workbench.sheet.ColumnEdits;
import org.ohmloom.workbench.sheet.ElementSheet;
import org.ohmloom.workbench.words.TypedNumbers;
import org.ohmloom.workbench.words.Words;

/** The outputs that switch loads, those of control units and those standing alone, and how they switch. */
final class OutputSheet implements ElementSheet<OutputSheet.Row> {
    private static final Words WORDS = Words.of("lists");

    /**
     * One output.
     *
     * @param component  the control unit, or the output itself
     * @param pin        its pin on a control unit
     * @param side       which side of the load it switches
     * @param onOhms     resistance while on, ohm, if known
     * @param limitAmps  most continuous current, A, if known
     * @param driver     how it switches, if known
     */
    record Row(
            Component component,
            Optional<String> pin,
            String side,
            OptionalDouble onOhms,
            OptionalDouble limitAmps,
            Optional<Driver> driver) {

        String name() {
            return pin.map(each -> new OutputPin(component.id(), each).toString())
                    .orElse(component.id().value());
        }

        String freewheel() {
            return driver.map(each -> switch (each.freewheel()) {
                        case NONE -> WORDS.get("output.way.none");
                        case DRIVER_SUPPLY -> WORDS.get("output.way.supply");
                        case DRIVER_GROUND -> WORDS.get("output.way.ground");
                        case ACTIVE_CLAMP -> WORDS.get(
                                "output.clamp",
                                each.clamp()
                                        .map(clamp -> Formats.volts(clamp.clampVolts()))
                                        .orElse(""));
                    })
                    .orElse("");
        }

        CellText number(Function<Driver, OptionalDouble> value) {
            return driver.map(value).map(CellText::of).orElse(CellText.EMPTY);
        }
    }

    @Override
    public String title() {
        return WORDS.get("output.outputs");
    }

    @Override
    public List<Column<Row>> columns() {
        return List.of(
                Column.text(WORDS.term("output.output"), WORDS.get("output.output.about"), 10, Row::name),
                Column.text(WORDS.term("output.name"), WORDS.get("output.name.about"), 22, row -> row.component()
                        .name()),
                Column.text(WORDS.term("output.switches"), WORDS.get("output.switches.about"), 12, Row::side),
                ColumnEdits.number(
                        WORDS.term("output.frequency"),
                        "Hz",
                        WORDS.get("output.frequency.about"),
                        row -> row.number(driver -> OptionalDouble.of(driver.frequencyHertz())),
                        DriverEdits::frequency),
                ColumnEdits.words(
                        WORDS.term("output.clock"),
                        WORDS.get("output.clock.about"),
                        10,
                        row -> row.driver().flatMap(Driver::clock).orElse(""),
                        DriverEdits::clock),
                ColumnEdits.number(
                        WORDS.term("output.phase"),
                        "%",
                        WORDS.get("output.phase.about"),
                        row -> row.number(driver -> percent(driver.phaseFraction())),
                        DriverEdits::phase),
                ColumnEdits.<Row>words(
                                WORDS.term("output.freewheel"),
                                WORDS.get("output.freewheel.about"),
                                12,
                                Row::freewheel,
                                DriverEdits::freewheel)
                        .quantities(),
                ColumnEdits.words(
                        WORDS.term("output.capacitor"),
                        WORDS.get("output.capacitor.about"),
                        9,
                        row -> row.driver()
                                .map(driver -> TypedNumbers.yesOrNo(driver.supplyCapacitor()))
                                .orElse(""),
                        DriverEdits::capacitor),
                ColumnEdits.number(
                        WORDS.term("output.holds-at"),
                        "A",
                        WORDS.get("output.holds-at.about"),
                        row -> row.number(driver -> driver.limit().map(ElectronicLimit::limitAmps).stream()
                                .mapToDouble(Double::doubleValue)
                                .findFirst()),
                        DriverEdits::limit),
                ColumnEdits.number(
                        WORDS.term("output.edge"),
                        "s",
                        WORDS.get("output.edge.about"),
                        row -> row.number(Driver::edgeSeconds),
                        DriverEdits::edge),
                Column.number(
                        WORDS.term("output.carries"),
                        "A",
                        WORDS.get("output.carries.about"),
                        row -> CellText.of(row.limitAmps())),
                Column.number(
                        WORDS.term("output.on"), "Ω", WORDS.get("output.on.about"), row -> CellText.of(row.onOhms())));
    }

    private static OptionalDouble percent(OptionalDouble fraction) {
        return fraction.isPresent() ? OptionalDouble.of(100 * fraction.getAsDouble()) : fraction;
    }

    @Override
    public List<Row> rows(Readout readout) {
        List<Row> rows = new ArrayList<>();
        for (Component component : readout.harness().components().all()) {
            if (component.device() instanceof SolidStateOutput output) {
                rows.add(new Row(
                        component,
                        Optional.empty(),
                        WORDS.get("output.in-line"),
                        OptionalDouble.of(output.onOhms()),
                        OptionalDouble.of(output.limitAmps()),
                        output.driver()));
            } else if (component.device() instanceof ControlUnit unit) {
                unit.pins().stream()
                        .filter(pin -> pin.role().isOutput())
                        .forEach(pin -> rows.add(new Row(
                                component,
                                Optional.of(pin.name()),
                                pin.role() == PinRole.HIGH_SIDE_OUTPUT
                                        ? WORDS.get("output.feed-side")
                                        : WORDS.get("output.return-side"),
                                pin.onOhms(),
                                pin.limitAmps(),
                                pin.driver())));
            }
        }
        return rows;
    }

    @Override
    public ElementId id(Row row) {
        return row.component().id();
    }
}
