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
import org.ohmloom.workbench.words.Words;

/** The alternators as a list: set point, limit and how they change with speed, engine and temperature. */
final class AlternatorSheet implements ElementSheet<AlternatorSheet.Row> {
    private static final Words WORDS = Words.of("lists");

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
        return WORDS.get("alternator.alternators");
    }

    @Override
    public List<Column<Row>> columns() {
        return List.of(
                Column.text(
                        WORDS.term("alternator.alternator"),
                        WORDS.get("alternator.alternator.about"),
                        10,
                        row -> row.component().id().value()),
                Column.text(
                        WORDS.term("alternator.name"), WORDS.get("alternator.name.about"), 16, row -> row.component()
                                .name()),
                ColumnEdits.number(
                        WORDS.term("alternator.set-point-2"),
                        "V",
                        WORDS.get("alternator.set-point-2.about"),
                        row -> CellText.of(row.alternator().setPointVolts()),
                        (rows, typed) -> AlternatorEdits.setPoint(ids(rows), typed)),
                ColumnEdits.number(
                        WORDS.term("alternator.limit"),
                        "A",
                        WORDS.get("alternator.limit.about"),
                        row -> CellText.of(row.alternator().limitAmps()),
                        (rows, typed) -> AlternatorEdits.limit(ids(rows), typed)),
                ColumnEdits.<Row>words(
                                WORDS.term("alternator.output-curve-2"),
                                WORDS.get("alternator.output-curve-2.about"),
                                44,
                                row -> AlternatorEdits.curve(row.model()),
                                (rows, typed) -> AlternatorEdits.curve(ids(rows), typed))
                        .quantities(),
                ColumnEdits.<Row>words(
                                WORDS.term("alternator.by-engine"),
                                WORDS.get("alternator.by-engine.about"),
                                24,
                                row -> AlternatorEdits.modes(row.model()),
                                (rows, typed) -> AlternatorEdits.modes(ids(rows), typed))
                        .quantities(),
                ColumnEdits.number(
                        WORDS.term("alternator.set-point-slope"),
                        "mV/K",
                        WORDS.get("alternator.set-point-slope.about"),
                        row -> in(row.model().setPointVoltsPerKelvin(), Unit.MILLIVOLT),
                        (rows, typed) -> AlternatorEdits.setPointSlope(ids(rows), typed)),
                ColumnEdits.number(
                        WORDS.term("alternator.derating"),
                        "%/K",
                        WORDS.get("alternator.derating.about"),
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
