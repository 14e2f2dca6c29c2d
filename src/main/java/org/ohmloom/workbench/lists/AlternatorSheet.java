package org.ohmloom.workbench.lists;

import java.util.List;
import java.util.OptionalDouble;
import org.ohmloom.model.Alternator;
import org.ohmloom.model.AlternatorModel;
import org.ohmloom.model.Component;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.ElementId;
import org.ohmloom.units.Unit;
import org.ohmloom.workbench.desk.Readout;
import org.ohmloom.workbench.sheet.CellText;
import org.ohmloom.workbench.sheet.Column;
import org.ohmloom.workbench.sheet.ColumnEdits;
import org.ohmloom.workbench.sheet.ElementSheet;

/** The alternators as a list: set point, limit and how they change with speed, engine and temperature. */
final class AlternatorSheet implements ElementSheet<AlternatorSheet.Row> {

    /**
     * One alternator.
     *
     * @param component  the component
     * @param alternator what it is
     */
    record Row(Component component, Alternator alternator) {

        AlternatorModel model() {
            return alternator.model().orElse(AlternatorModel.NONE);
        }
    }

    @Override
    public String title() {
        return "Alternators";
    }

    @Override
    public List<Column<Row>> columns() {
        return List.of(
                Column.text("Alternator", "Identity of the alternator", 10, row -> row.component()
                        .id()
                        .value()),
                Column.text("Name", "What people call it", 16, row -> row.component()
                        .name()),
                ColumnEdits.number(
                        "Set point",
                        "V",
                        "Voltage its regulator holds",
                        row -> CellText.of(row.alternator().setPointVolts()),
                        (rows, typed) -> AlternatorEdits.setPoint(ids(rows), typed)),
                ColumnEdits.number(
                        "Limit",
                        "A",
                        "Most current it gives",
                        row -> CellText.of(row.alternator().limitAmps()),
                        (rows, typed) -> AlternatorEdits.limit(ids(rows), typed)),
                ColumnEdits.<Row>words(
                                "Output curve",
                                "Most current by speed of its shaft: 1500 rpm 35 A, 6000 rpm 105 A",
                                44,
                                row -> AlternatorEdits.curve(row.model()),
                                (rows, typed) -> AlternatorEdits.curve(ids(rows), typed))
                        .quantities(),
                ColumnEdits.<Row>words(
                                "By engine",
                                "Most current by what the engine does, where no speed is set: idling 60 A, running 105 A",
                                24,
                                row -> AlternatorEdits.modes(row.model()),
                                (rows, typed) -> AlternatorEdits.modes(ids(rows), typed))
                        .quantities(),
                ColumnEdits.number(
                        "Set point slope",
                        "mV/K",
                        "Change of the set point for each kelvin above 25 °C, usually negative",
                        row -> in(row.model().setPointVoltsPerKelvin(), Unit.MILLIVOLT),
                        (rows, typed) -> AlternatorEdits.setPointSlope(ids(rows), typed)),
                ColumnEdits.number(
                        "Derating",
                        "%/K",
                        "Share of its limit lost for each kelvin of heat",
                        row -> in(row.model().deratingPerKelvin(), Unit.PERCENT),
                        (rows, typed) -> AlternatorEdits.derating(ids(rows), typed)));
    }

    private static CellText in(OptionalDouble value, Unit unit) {
        return value.isEmpty() ? CellText.EMPTY : CellText.of(unit.fromCanonical(value.getAsDouble()));
    }

    private static List<ComponentId> ids(List<Row> rows) {
        return rows.stream().map(row -> row.component().id()).toList();
    }

    @Override
    public List<Row> rows(Readout readout) {
        return readout.harness().components().all().stream()
                .filter(component -> component.device() instanceof Alternator)
                .map(component -> new Row(component, (Alternator) component.device()))
                .toList();
    }

    @Override
    public ElementId id(Row row) {
        return row.component().id();
    }
}
