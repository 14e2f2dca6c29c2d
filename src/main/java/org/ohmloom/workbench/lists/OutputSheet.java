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

/** The outputs that switch loads, those of control units and those standing alone, and how they switch. */
final class OutputSheet implements ElementSheet<OutputSheet.Row> {

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
                        case NONE -> "none";
                        case DRIVER_SUPPLY -> "supply";
                        case DRIVER_GROUND -> "ground";
                        case ACTIVE_CLAMP -> "clamp "
                                + each.clamp()
                                        .map(clamp -> Formats.volts(clamp.clampVolts()))
                                        .orElse("");
                    })
                    .orElse("");
        }

        CellText number(Function<Driver, OptionalDouble> value) {
            return driver.map(value).map(CellText::of).orElse(CellText.EMPTY);
        }
    }

    @Override
    public String title() {
        return "Outputs";
    }

    @Override
    public List<Column<Row>> columns() {
        return List.of(
                Column.text("Output", "Control unit and pin, or the output itself", 10, Row::name),
                Column.text("Name", "What people call it", 22, row -> row.component()
                        .name()),
                Column.text("Switches", "Which side of the load it switches", 12, Row::side),
                ColumnEdits.number(
                        "Frequency",
                        "Hz",
                        "Switching frequency; type 100, 100 Hz or 20 kHz, below 1 Hz for slow cycling",
                        row -> row.number(driver -> OptionalDouble.of(driver.frequencyHertz())),
                        DriverEdits::frequency),
                ColumnEdits.words(
                        "Clock",
                        "Outputs of one clock switch in step; empty is the clock of the control unit, or one of its own",
                        10,
                        row -> row.driver().flatMap(Driver::clock).orElse(""),
                        DriverEdits::clock),
                ColumnEdits.number(
                        "Phase",
                        "%",
                        "Begin of the on-time in the period of the clock, as a share of it",
                        row -> row.number(driver -> percent(driver.phaseFraction())),
                        DriverEdits::phase),
                ColumnEdits.<Row>words(
                                "Freewheel",
                                "Where the current of an inductive load goes: none, supply, ground or clamp 45 V",
                                12,
                                Row::freewheel,
                                DriverEdits::freewheel)
                        .quantities(),
                ColumnEdits.words(
                        "Capacitor",
                        "Whether a capacitor at the supply carries the ripple: yes or no",
                        9,
                        row -> row.driver()
                                .map(driver -> driver.supplyCapacitor() ? "yes" : "no")
                                .orElse(""),
                        DriverEdits::capacitor),
                ColumnEdits.number(
                        "Holds at",
                        "A",
                        "Electronic current limit of the output",
                        row -> row.number(driver -> driver.limit().map(ElectronicLimit::limitAmps).stream()
                                .mapToDouble(Double::doubleValue)
                                .findFirst()),
                        DriverEdits::limit),
                ColumnEdits.number(
                        "Edge",
                        "s",
                        "Time the output's voltage takes to switch over; needed to tell what it couples into signals beside it",
                        row -> row.number(Driver::edgeSeconds),
                        DriverEdits::edge),
                Column.number("Carries", "A", "Most continuous current", row -> CellText.of(row.limitAmps())),
                Column.number("On", "Ω", "Resistance while on", row -> CellText.of(row.onOhms())));
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
                        "in line",
                        OptionalDouble.of(output.onOhms()),
                        OptionalDouble.of(output.limitAmps()),
                        output.driver()));
            } else if (component.device() instanceof ControlUnit unit) {
                unit.pins().stream()
                        .filter(pin -> pin.role().isOutput())
                        .forEach(pin -> rows.add(new Row(
                                component,
                                Optional.of(pin.name()),
                                pin.role() == PinRole.HIGH_SIDE_OUTPUT ? "feed side" : "return side",
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
