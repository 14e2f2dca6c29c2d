package org.ohmloom.workbench.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;
import org.ohmloom.draw.study.ChargeCharts;
import org.ohmloom.model.ElementId;
import org.ohmloom.review.StudyPart;
import org.ohmloom.solve.charge.AlternatorBalance;
import org.ohmloom.solve.charge.BatteryBalance;
import org.ohmloom.solve.charge.BatteryRun;
import org.ohmloom.solve.charge.ChargeStudy;
import org.ohmloom.solve.charge.LoadTabulation;
import org.ohmloom.solve.charge.SequenceRun;
import org.ohmloom.solve.charge.StateCharge;
import org.ohmloom.units.Dimension;
import org.ohmloom.units.Formats;
import org.ohmloom.workbench.desk.Readout;
import org.ohmloom.workbench.sheet.CellText;
import org.ohmloom.workbench.sheet.Column;
import org.ohmloom.workbench.widget.Tone;
import org.ohmloom.workbench.words.Words;

/** Batteries and alternators: the balance of every state, and the charge through timed sequences of states. */
public final class ChargeView implements Study<ChargeView.Row> {
    private static final Words WORDS = Words.of("studies");

    private static final double PERCENT = 100;

    /**
     * A battery through a sequence, or a state with its batteries and alternators.
     *
     * @param id       sequence or state
     * @param name     its name
     * @param sequence the sequence as it ran
     * @param battery  the battery looked at in it
     * @param state    the balance of the state
     */
    record Row(
            ElementId id,
            String name,
            Optional<SequenceRun> sequence,
            Optional<BatteryRun> battery,
            Optional<StateCharge> state) {

        CellText of(Function<BatteryRun, OptionalDouble> inRun, Function<StateCharge, OptionalDouble> inState) {
            return battery.map(inRun)
                    .or(() -> state.map(inState))
                    .map(CellText::of)
                    .orElse(CellText.EMPTY);
        }

        CellText alternators() {
            return state.filter(StateCharge::hasAlternator)
                    .map(each -> {
                        CellText text = CellText.of(each.alternators().stream()
                                .mapToDouble(AlternatorBalance::amps)
                                .sum());
                        return each.isOverloaded()
                                ? text.in(Tone.WARNING).saying(WORDS.get("charge.all-it-can-give"))
                                : text;
                    })
                    .orElse(CellText.EMPTY);
        }
    }

    @Override
    public String key() {
        return "charge";
    }

    @Override
    public String title() {
        return WORDS.get("charge.charge");
    }

    @Override
    public String about() {
        return WORDS.get("charge.what-batteries-and-alternators");
    }

    @Override
    public List<Column<Row>> columns() {
        return List.of(
                Column.text(
                        WORDS.term("charge.sequence-or-state"),
                        WORDS.get("charge.sequence-or-state.about"),
                        22,
                        Row::name),
                Column.text(WORDS.term("charge.battery"), WORDS.get("charge.battery.about"), 8, row -> row.battery()
                        .map(each -> each.battery().value())
                        .or(() -> row.state()
                                .flatMap(each -> each.batteries().stream().findFirst())
                                .map(each -> each.battery().value()))
                        .orElse("")),
                Column.number(
                        WORDS.term("charge.gives"),
                        "A",
                        WORDS.get("charge.gives.about"),
                        row -> row.of(run -> OptionalDouble.empty(), ChargeView::batteryAmps)),
                Column.number(
                        WORDS.term("charge.alternators"), "A", WORDS.get("charge.alternators.about"), Row::alternators),
                Column.number(
                        WORDS.term("charge.of-limit"),
                        "%",
                        WORDS.get("charge.of-limit.about"),
                        row -> row.of(run -> OptionalDouble.empty(), ChargeView::shareOfLimit)),
                Column.number(
                        WORDS.term("charge.drawn"),
                        "Ah",
                        WORDS.get("charge.drawn.about"),
                        row -> row.of(run -> OptionalDouble.of(run.drawnAmpHours()), state -> OptionalDouble.empty())),
                Column.number(
                        WORDS.term("charge.charge"),
                        "%",
                        WORDS.get("charge.charge.about"),
                        row -> row.of(
                                run -> OptionalDouble.of(PERCENT * run.endFraction()),
                                state -> first(state, each -> OptionalDouble.of(PERCENT * each.chargeFraction())))),
                Column.number(
                        WORDS.term("charge.voltage"),
                        "V",
                        WORDS.get("charge.voltage.about"),
                        row -> row.of(
                                run -> OptionalDouble.of(run.lowestVolts()),
                                state -> first(state, each -> OptionalDouble.of(each.volts())))),
                Column.number(
                        WORDS.term("charge.empty-after"),
                        "h",
                        WORDS.get("charge.empty-after.about"),
                        row -> row.of(
                                run -> hours(run.emptyMinutes()),
                                state -> first(state, BatteryBalance::enduranceHours))),
                Column.number(
                        WORDS.term("charge.asked-after"),
                        "min",
                        WORDS.get("charge.asked-after.about"),
                        row -> row.of(BatteryRun::untilMinutes, state -> OptionalDouble.empty())));
    }

    private static OptionalDouble hours(OptionalDouble minutes) {
        return minutes.isPresent() ? OptionalDouble.of(minutes.getAsDouble() / 60) : minutes;
    }

    private static OptionalDouble first(StateCharge state, Function<BatteryBalance, OptionalDouble> value) {
        return state.batteries().stream().findFirst().map(value).orElse(OptionalDouble.empty());
    }

    private static OptionalDouble batteryAmps(StateCharge state) {
        return state.batteries().isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(state.batteries().stream()
                        .mapToDouble(BatteryBalance::amps)
                        .sum());
    }

    private static OptionalDouble shareOfLimit(StateCharge state) {
        double given = state.alternators().stream()
                .mapToDouble(AlternatorBalance::amps)
                .sum();
        return state.hasAlternator() ? OptionalDouble.of(PERCENT * given / state.limitAmps()) : OptionalDouble.empty();
    }

    private static ChargeStudy charge(Readout readout) {
        return readout.analysis().map(each -> each.evidence().charge()).orElse(ChargeStudy.NONE);
    }

    @Override
    public Set<StudyPart> needs() {
        return Set.of(StudyPart.CHARGE);
    }

    @Override
    public List<Row> rows(Readout readout) {
        List<Row> rows = new ArrayList<>();
        for (SequenceRun run : charge(readout).sequences()) {
            run.batteries()
                    .forEach(battery -> rows.add(new Row(
                            run.sequence(), run.name(), Optional.of(run), Optional.of(battery), Optional.empty())));
        }
        charge(readout).states().forEach((id, state) -> {
            if ((readout.state().isEmpty() || readout.state().get().equals(id))
                    && !(state.batteries().isEmpty() && state.alternators().isEmpty())) {
                rows.add(new Row(id, readout.stateName(id), Optional.empty(), Optional.empty(), Optional.of(state)));
            }
        });
        return rows;
    }

    @Override
    public ElementId id(Row row) {
        return row.id();
    }

    @Override
    public String nothing(Readout readout) {
        return WORDS.get("charge.no-battery-or-alternator");
    }

    @Override
    public Optional<Picture> picture(Readout readout, Row row, Optional<String> selected) {
        Optional<Picture> sequence = row.sequence().flatMap(run -> row.battery()
                .flatMap(battery -> ChargeCharts.sequence(readout.harness(), run, battery))
                .map(chart -> new Picture(
                        WORDS.get("charge.charge-level-and-voltage", chart.title(), chart.subtitle()), chart::scene)));
        return sequence.or(() -> tabulation(readout, row)
                .flatMap(each -> ChargeCharts.loads(readout.harness(), each))
                .map(chart -> new Picture(
                        WORDS.get("charge.current-of-each-while", chart.title()),
                        (fonts, widthMm, heightMm) -> chart.scene(fonts, widthMm))));
    }

    private static Optional<LoadTabulation> tabulation(Readout readout, Row row) {
        return row.state()
                .map(StateCharge::state)
                .flatMap(id -> Optional.ofNullable(charge(readout).tabulations().get(id)));
    }

    @Override
    public List<String> steps(Readout readout, Row row) {
        List<String> steps = new ArrayList<>();
        row.sequence().ifPresent(run -> {
            steps.addAll(Words.said(run.sentences()));
            run.steps()
                    .forEach(step -> steps.add(WORDS.get(
                            "charge.alternators-at-its-end",
                            readout.stateName(step.state()),
                            Formats.seconds(step.durationSeconds()),
                            Formats.quantity(step.drawnAmpHours(), Dimension.CHARGE),
                            step.drawnAmpHours() < 0 ? WORDS.get("charge.charged") : WORDS.get("charge.drawn-2"),
                            Formats.amps(step.alternatorAmps()),
                            Formats.volts(step.endVolts()))));
        });
        row.state().ifPresent(state -> {
            steps.addAll(Words.said(state.sentences()));
            state.alternators().forEach(each -> steps.addAll(Words.said(each.steps())));
            state.batteries().forEach(each -> steps.addAll(Words.said(each.steps())));
        });
        tabulation(readout, row)
                .ifPresent(each -> steps.add(WORDS.get(
                        "charge.loads-continuous-largest-means",
                        Formats.amps(each.continuousAmps()),
                        Formats.amps(each.fiveSecondAmps()),
                        Formats.amps(each.fiveMinuteAmps()),
                        Formats.amps(each.halfHourAmps()))));
        return steps;
    }
}
