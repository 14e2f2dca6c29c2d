package org.ohmloom.workbench.lists;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.Predicate;
import org.ohmloom.edit.ChangeState;
import org.ohmloom.edit.Edit;
import org.ohmloom.model.Alternator;
import org.ohmloom.model.Battery;
import org.ohmloom.model.Component;
import org.ohmloom.model.ElementId;
import org.ohmloom.model.OperatingState;
import org.ohmloom.model.SourceSetting;
import org.ohmloom.solve.Solution;
import org.ohmloom.units.Unit;
import org.ohmloom.workbench.desk.Readout;
import org.ohmloom.workbench.sheet.CellText;
import org.ohmloom.workbench.sheet.Column;
import org.ohmloom.workbench.sheet.ColumnEdits;
import org.ohmloom.workbench.sheet.ElementSheet;
import org.ohmloom.workbench.words.Term;
import org.ohmloom.workbench.words.TradeWords;
import org.ohmloom.workbench.words.TypedNumbers;
import org.ohmloom.workbench.words.Words;

/** The sources in every operating state: how each is found there, and what it gives. */
final class SourceSheet implements ElementSheet<SourceSheet.Row> {
    private static final Words WORDS = Words.of("lists");

    /**
     * A source in a state.
     *
     * @param component the source
     * @param state     the state
     * @param setting   how the state finds it
     * @param solution  the solution of the state
     */
    record Row(Component component, OperatingState state, SourceSetting setting, Optional<Solution> solution) {

        boolean isBattery() {
            return component.device() instanceof Battery;
        }

        boolean isAlternator() {
            return component.device() instanceof Alternator;
        }

        /** Current out of its positive terminal, mean, A. */
        CellText given() {
            return solution.flatMap(found -> found.network().of(component.id()).stream()
                            .flatMap(branch -> found.flow(branch.id()).stream())
                            .max((one, other) -> Double.compare(Math.abs(one.amps()), Math.abs(other.amps()))))
                    .map(flow -> CellText.of(flow.amps()))
                    .orElse(CellText.EMPTY);
        }
    }

    @Override
    public String title() {
        return WORDS.get("source.sources");
    }

    @Override
    public List<Column<Row>> columns() {
        return List.of(
                Column.text(WORDS.term("source.source"), WORDS.get("source.source.about"), 9, row -> row.component()
                        .id()
                        .value()),
                Column.text(WORDS.term("source.name"), WORDS.get("source.name.about"), 20, row -> row.component()
                        .name()),
                Column.text(
                        WORDS.term("source.kind"),
                        WORDS.get("source.kind.about"),
                        12,
                        row -> TradeWords.kind(row.component().device())),
                Column.text(WORDS.term("source.state"), WORDS.get("source.state.about"), 20, row -> row.state()
                        .name()),
                Column.<Row>text(
                                WORDS.term("source.on"),
                                WORDS.get("source.on.about"),
                                6,
                                row -> TypedNumbers.yesOrNo(row.setting().on()))
                        .edited(ColumnEdits.<Row, Row>of(
                                row -> true,
                                row -> TypedNumbers.yesOrNo(row.setting().on()),
                                row -> row,
                                (rows, typed) -> {
                                    boolean on = TypedNumbers.yes(typed);
                                    return all(
                                            rows,
                                            WORDS.get("source.source-2"),
                                            was -> new SourceSetting(
                                                    on,
                                                    was.chargeFraction(),
                                                    was.celsius(),
                                                    was.speedRpm(),
                                                    was.limitAmps()));
                                })),
                edited(
                        WORDS.term("source.charge"),
                        Unit.PERCENT,
                        WORDS.get("source.charge.about"),
                        Row::isBattery,
                        SourceSetting::chargeFraction,
                        (was, value) ->
                                new SourceSetting(was.on(), value, was.celsius(), was.speedRpm(), was.limitAmps())),
                edited(
                        WORDS.term("source.temperature"),
                        Unit.DEGREE_CELSIUS,
                        WORDS.get("source.temperature.about"),
                        row -> true,
                        SourceSetting::celsius,
                        (was, value) -> new SourceSetting(
                                was.on(), was.chargeFraction(), value, was.speedRpm(), was.limitAmps())),
                speed(),
                edited(
                        WORDS.term("source.limit"),
                        Unit.AMP,
                        WORDS.get("source.limit.about"),
                        row -> !row.isBattery(),
                        SourceSetting::limitAmps,
                        (was, value) -> new SourceSetting(
                                was.on(), was.chargeFraction(), was.celsius(), was.speedRpm(), value)),
                Column.number(WORDS.term("source.gives"), "A", WORDS.get("source.gives.about"), Row::given));
    }

    private static Column<Row> speed() {
        return Column.<Row>number(
                        WORDS.term("source.speed"),
                        "rpm",
                        WORDS.get("source.speed.about"),
                        row -> CellText.of(row.setting().speedRpm()))
                .edited(ColumnEdits.<Row, Row>of(
                        Row::isAlternator,
                        row -> CellText.of(row.setting().speedRpm()).exact(),
                        row -> row,
                        (rows, typed) -> {
                            OptionalDouble rpm = rpm(typed);
                            return all(
                                    rows,
                                    WORDS.get("source.speed-2"),
                                    was -> new SourceSetting(
                                            was.on(), was.chargeFraction(), was.celsius(), rpm, was.limitAmps()));
                        }));
    }

    private static OptionalDouble rpm(String typed) {
        String bare = typed.replace("rpm", "").strip();
        return TypedNumbers.optional(bare, Unit.FRACTION);
    }

    /** Makes a setting with one value changed. */
    private interface Changing {
        SourceSetting of(SourceSetting was, OptionalDouble value);
    }

    private static Column<Row> edited(
            Term title,
            Unit unit,
            String tip,
            Predicate<Row> suits,
            Function<SourceSetting, OptionalDouble> value,
            Changing change) {
        Function<Row, CellText> cell = row -> {
            OptionalDouble found = value.apply(row.setting());
            return found.isEmpty() ? CellText.EMPTY : CellText.of(unit.fromCanonical(found.getAsDouble()));
        };
        return Column.number(title, unit.symbol(), tip, cell)
                .edited(ColumnEdits.<Row, Row>of(
                        suits,
                        row -> cell.apply(row).number().isPresent()
                                ? cell.apply(row).exact() + " " + unit.symbol()
                                : "",
                        row -> row,
                        (rows, typed) -> {
                            OptionalDouble typedValue = TypedNumbers.optional(typed, unit);
                            String what = title.text().toLowerCase(Locale.ROOT);
                            return all(rows, what, was -> change.of(was, typedValue));
                        }));
    }

    private static Edit all(List<Row> rows, String what, Function<SourceSetting, SourceSetting> change) {
        List<Edit> edits = rows.stream()
                .map(row -> {
                    Objects.requireNonNull(
                            change.apply(row.setting()),
                            WORDS.get("source.changed-setting")); // refuses before anything changes
                    return (Edit) new ChangeState(
                            WORDS.text(
                                    "source.set-of-in",
                                    what,
                                    row.component().id(),
                                    row.state().name()),
                            row.state().id(),
                            state -> state.withSource(
                                    row.component().id(),
                                    change.apply(state.sourceSetting(
                                            row.component().id(),
                                            row.component().device()))));
                })
                .toList();
        return TypedNumbers.together(WORDS.text("source.set-in-states", what, rows.size()), edits);
    }

    @Override
    public List<Row> rows(Readout readout) {
        List<Row> rows = new ArrayList<>();
        for (Component component : readout.harness().components().all()) {
            if (!component.device().isSource()) {
                continue;
            }
            for (OperatingState state : readout.harness().states().all()) {
                if (readout.state().isEmpty() || readout.state().get().equals(state.id())) {
                    rows.add(new Row(
                            component,
                            state,
                            state.sourceSetting(component.id(), component.device()),
                            readout.analysis().flatMap(results -> results.solution(state.id()))));
                }
            }
        }
        return rows;
    }

    @Override
    public ElementId id(Row row) {
        return row.component().id();
    }
}
