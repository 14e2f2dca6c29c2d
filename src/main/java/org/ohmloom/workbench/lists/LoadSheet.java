package org.ohmloom.workbench.lists;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BiFunction;
import java.util.function.Function;
import org.ohmloom.edit.Edit;
import org.ohmloom.model.Component;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.ElementId;
import org.ohmloom.model.Load;
import org.ohmloom.solve.LoadVolts;
import org.ohmloom.workbench.desk.Readout;
import org.ohmloom.workbench.sheet.CellText;
import org.ohmloom.workbench.sheet.Column;
import org.ohmloom.workbench.sheet.ColumnEdits;
import org.ohmloom.workbench.sheet.ElementSheet;
import org.ohmloom.workbench.widget.Tone;
import org.ohmloom.workbench.words.TradeWords;
import org.ohmloom.workbench.words.TypedEdits;

/** The loads as a list: what they draw and what reaches them. */
final class LoadSheet implements ElementSheet<LoadSheet.Row> {

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
                Column.text("State", "Operating state these numbers are of", 18, Row::state),
                words(
                        "Inrush",
                        "Peak when switched on and time constant of its decay; type 60 A, 100 ms",
                        14,
                        row -> LoadEdits.text(row.load().inrush()),
                        LoadEdits::inrush),
                number(
                        "Works from",
                        "V",
                        "Least voltage it works at",
                        row -> row.load().minimumVolts(),
                        LoadEdits::least),
                Column.<Row>number(
                                "Inductance",
                                "mH",
                                "Inductance of a solenoid or a motor; type 4 mH",
                                row -> CellText.of(
                                        milli(LoadEdits.henries(row.load().draw()))))
                        .edited(ColumnEdits.<Row, ComponentId>of(
                                row -> LoadEdits.canHaveInductance(row.load().draw()),
                                row -> start(milli(LoadEdits.henries(row.load().draw())), "mH"),
                                row -> row.component().id(),
                                (loads, typed) -> LoadEdits.inductance(loads, inMilli(typed)))),
                number(
                        "Diode",
                        "V",
                        "Forward drop of a freewheel diode at the load; empty without one",
                        row -> row.load().diodeVolts(),
                        LoadEdits::diode),
                words(
                        "Cycle",
                        "How it switches itself: its period, or on-time of period; type 60 s or 10 s of 60 s",
                        13,
                        row -> row.load().cycle().map(LoadEdits::text).orElse(""),
                        LoadEdits::cycle));
    }

    private static Column<Row> words(
            String title,
            String tip,
            int letters,
            Function<Row, String> cell,
            BiFunction<List<ComponentId>, String, Edit> parse) {
        return Column.text(title, tip, letters, cell)
                .quantities()
                .edited(ColumnEdits.<Row, ComponentId>of(
                        row -> true, cell, row -> row.component().id(), parse));
    }

    private static Column<Row> number(
            String title,
            String unit,
            String tip,
            Function<Row, OptionalDouble> value,
            BiFunction<List<ComponentId>, String, Edit> parse) {
        return Column.<Row>number(title, unit, tip, row -> CellText.of(value.apply(row)))
                .edited(ColumnEdits.<Row, ComponentId>of(
                        row -> true,
                        row -> start(value.apply(row), unit),
                        row -> row.component().id(),
                        parse));
    }

    private static String start(OptionalDouble value, String unit) {
        return value.isPresent() ? CellText.of(value.getAsDouble()).exact() + " " + unit : "";
    }

    private static OptionalDouble milli(OptionalDouble value) {
        return value.isPresent() ? OptionalDouble.of(1e3 * value.getAsDouble()) : value;
    }

    /** A bare number in this column is in mH. */
    private static String inMilli(String typed) {
        return typed.strip().matches("[0-9]*[.,]?[0-9]+") ? typed.strip() + " mH" : typed;
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
