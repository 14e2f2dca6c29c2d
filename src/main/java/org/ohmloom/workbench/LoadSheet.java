package org.ohmloom.workbench;

import java.util.List;
import java.util.Optional;
import org.ohmloom.model.Component;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.ElementId;
import org.ohmloom.model.Load;
import org.ohmloom.solve.LoadVolts;

/** The loads as a list: what they draw and what reaches them. */
final class LoadSheet implements Sheet<LoadSheet.Row> {

    /**
     * One load with its numbers.
     *
     * @param component the component
     * @param load      what it is
     * @param fed       what reaches it
     * @param state     name of the state its numbers are of
     */
    record Row(Component component, Load load, Optional<LoadVolts> fed, String state) {

        CellText drop() {
            if (fed.isEmpty()) {
                return CellText.EMPTY;
            }
            CellText text = CellText.of(fed.get().onDropVolts());
            return fed.get().onDropVolts() > fed.get().limitVolts()
                    ? text.in(Tone.ERROR).saying("More than it may lose")
                    : text;
        }

        CellText number(java.util.function.ToDoubleFunction<LoadVolts> value) {
            return fed.map(each -> CellText.of(value.applyAsDouble(each))).orElse(CellText.EMPTY);
        }
    }

    @Override
    public String title() {
        return "Loads";
    }

    @Override
    public List<Column<Row>> columns() {
        return List.of(
                Column.<Row>text("Load", "Identity of the load", 8, row -> row.component()
                        .id()
                        .value()),
                Column.text("Name", "What people call it", 22, row -> row.component()
                        .name()),
                Column.text("Kind", "How its current follows its voltage", 15, row -> TradeWords.kind(row.load())),
                Column.<Row>number(
                                "Rated",
                                "A",
                                "Rated current; type 2.5, 2,5 A or 800 mA",
                                row -> CellText.of(row.load().draw().ratedAmps()))
                        .edited(ColumnEdits.<Row, ComponentId>of(
                                row -> true,
                                row -> CellText.of(row.load().draw().ratedAmps())
                                                .exact() + " A",
                                row -> row.component().id(),
                                TypedEdits::current)),
                Column.number(
                        "Rated at",
                        "V",
                        "Voltage the rating was given at",
                        row -> CellText.of(row.load().draw().ratedVolts())),
                Column.number("Current", "A", "Mean current it draws", row -> row.number(LoadVolts::amps)),
                Column.number("Volts", "V", "Mean voltage at its terminals", row -> row.number(LoadVolts::volts)),
                Column.number(
                        "Feed drop", "V", "Lost between source and load", row -> row.number(LoadVolts::feedDropVolts)),
                Column.number(
                        "Return drop",
                        "V",
                        "Lost between load and source",
                        row -> row.number(LoadVolts::returnDropVolts)),
                Column.number("Drop", "V", "Feed and return together while everything switched is on", Row::drop),
                Column.number("Allowed", "V", "What it may lose", row -> row.number(LoadVolts::limitVolts)),
                Column.text("State", "Operating state these numbers are of", 18, Row::state));
    }

    @Override
    public List<Row> rows(Readout readout) {
        return readout.harness().components().all().stream()
                .filter(component -> component.device() instanceof Load)
                .map(component -> row(component, readout))
                .toList();
    }

    private static Row row(Component component, Readout readout) {
        Optional<Readout.Fed> fed = readout.load(component.id());
        return new Row(
                component,
                (Load) component.device(),
                fed.map(Readout.Fed::volts),
                fed.map(each -> readout.stateName(each.state())).orElse(""));
    }

    @Override
    public ElementId id(Row row) {
        return row.component().id();
    }
}
