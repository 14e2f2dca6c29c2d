package org.ohmloom.workbench.lists;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
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
import org.ohmloom.workbench.words.Term;
import org.ohmloom.workbench.words.TradeWords;
import org.ohmloom.workbench.words.TypedEdits;
import org.ohmloom.workbench.words.Words;

/** The loads as a list: what they draw and what reaches them. */
final class LoadSheet implements ElementSheet<LoadSheet.Row> {
    private static final Words WORDS = Words.of("lists");

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
                    ? text.in(Tone.ERROR).saying(WORDS.get("load.more-than-it-may"))
                    : text;
        }

        CellText number(ToDoubleFunction<LoadVolts> value) {
            return fed.map(each -> CellText.of(value.applyAsDouble(each))).orElse(CellText.EMPTY);
        }
    }

    @Override
    public String title() {
        return WORDS.get("load.loads");
    }

    @Override
    public List<Column<Row>> columns() {
        return List.of(
                Column.<Row>text(WORDS.term("load.load"), WORDS.get("load.load.about"), 8, row -> row.component()
                        .id()
                        .value()),
                Column.text(WORDS.term("load.name"), WORDS.get("load.name.about"), 22, row -> row.component()
                        .name()),
                Column.text(
                        WORDS.term("load.kind"), WORDS.get("load.kind.about"), 15, row -> TradeWords.kind(row.load())),
                Column.<Row>number(
                                WORDS.term("load.rated"),
                                "A",
                                WORDS.get("load.rated.about"),
                                row -> CellText.of(row.load().draw().ratedAmps()))
                        .edited(ColumnEdits.<Row, ComponentId>of(
                                row -> true,
                                row -> CellText.of(row.load().draw().ratedAmps())
                                                .exact() + " A",
                                row -> row.component().id(),
                                TypedEdits::current)),
                Column.number(
                        WORDS.term("load.rated-at"),
                        "V",
                        WORDS.get("load.rated-at.about"),
                        row -> CellText.of(row.load().draw().ratedVolts())),
                Column.number(
                        WORDS.term("load.current"),
                        "A",
                        WORDS.get("load.current.about"),
                        row -> row.number(LoadVolts::amps)),
                Column.number(
                        WORDS.term("load.volts"),
                        "V",
                        WORDS.get("load.volts.about"),
                        row -> row.number(LoadVolts::volts)),
                Column.number(
                        WORDS.term("load.feed-drop"),
                        "V",
                        WORDS.get("load.feed-drop.about"),
                        row -> row.number(LoadVolts::feedDropVolts)),
                Column.number(
                        WORDS.term("load.return-drop"),
                        "V",
                        WORDS.get("load.return-drop.about"),
                        row -> row.number(LoadVolts::returnDropVolts)),
                Column.number(WORDS.term("load.drop"), "V", WORDS.get("load.drop.about"), Row::drop),
                Column.number(
                        WORDS.term("load.allowed"),
                        "V",
                        WORDS.get("load.allowed.about"),
                        row -> row.number(LoadVolts::limitVolts)),
                Column.text(WORDS.term("load.state"), WORDS.get("load.state.about"), 18, Row::state),
                words(
                        WORDS.term("load.inrush"),
                        WORDS.get("load.inrush.about"),
                        14,
                        row -> LoadEdits.text(row.load().inrush()),
                        LoadEdits::inrush),
                number(
                        WORDS.term("load.works-from"),
                        "V",
                        WORDS.get("load.works-from.about"),
                        row -> row.load().minimumVolts(),
                        LoadEdits::least),
                Column.<Row>number(
                                WORDS.term("load.inductance"),
                                "mH",
                                WORDS.get("load.inductance.about"),
                                row -> CellText.of(
                                        milli(LoadEdits.henries(row.load().draw()))))
                        .edited(ColumnEdits.<Row, ComponentId>of(
                                row -> LoadEdits.canHaveInductance(row.load().draw()),
                                row -> start(milli(LoadEdits.henries(row.load().draw())), "mH"),
                                row -> row.component().id(),
                                (loads, typed) -> LoadEdits.inductance(loads, inMilli(typed)))),
                number(
                        WORDS.term("load.diode"),
                        "V",
                        WORDS.get("load.diode.about"),
                        row -> row.load().diodeVolts(),
                        LoadEdits::diode),
                words(
                        WORDS.term("load.cycle"),
                        WORDS.get("load.cycle.about"),
                        13,
                        row -> row.load().cycle().map(LoadEdits::text).orElse(""),
                        LoadEdits::cycle));
    }

    private static Column<Row> words(
            Term title,
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
            Term title,
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
