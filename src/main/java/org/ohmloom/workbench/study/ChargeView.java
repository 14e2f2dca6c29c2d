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
import org.ohmloom.units.Formats;
import org.ohmloom.workbench.desk.Readout;
import org.ohmloom.workbench.sheet.CellText;
import org.ohmloom.workbench.sheet.Column;
import org.ohmloom.workbench.widget.Tone;

/** Batteries and alternators: the balance of every state, and the charge through timed sequences of states. */
public final class ChargeView implements Study<ChargeView.Row> {

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
                        return each.isOverloaded() ? text.in(Tone.WARNING).saying("All it can give") : text;
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
        return "Charge";
    }

    @Override
    public String about() {
        return "What batteries and alternators give in every state, and the charge through sequences of states";
    }

    @Override
    public List<Column<Row>> columns() {
        return List.of(
                Column.text("Sequence or state", "Timed sequence, or operating state", 22, Row::name),
                Column.text("Battery", "Battery looked at", 8, row -> row.battery()
                        .map(each -> each.battery().value())
                        .or(() -> row.state()
                                .flatMap(each -> each.batteries().stream().findFirst())
                                .map(each -> each.battery().value()))
                        .orElse("")),
                Column.number(
                        "Gives",
                        "A",
                        "Mean current the batteries give; below 0 they are charged",
                        row -> row.of(run -> OptionalDouble.empty(), ChargeView::batteryAmps)),
                Column.number("Alternators", "A", "Mean current the alternators give", Row::alternators),
                Column.number(
                        "of limit",
                        "%",
                        "Share of what the alternators can give",
                        row -> row.of(run -> OptionalDouble.empty(), ChargeView::shareOfLimit)),
                Column.number(
                        "Drawn",
                        "Ah",
                        "Charge taken out of the battery",
                        row -> row.of(run -> OptionalDouble.of(run.drawnAmpHours()), state -> OptionalDouble.empty())),
                Column.number(
                        "Charge",
                        "%",
                        "Charge level: in the state, or at the end of the sequence",
                        row -> row.of(
                                run -> OptionalDouble.of(PERCENT * run.endFraction()),
                                state -> first(state, each -> OptionalDouble.of(PERCENT * each.chargeFraction())))),
                Column.number(
                        "Voltage",
                        "V",
                        "At the battery: in the state, or the lowest of the sequence",
                        row -> row.of(
                                run -> OptionalDouble.of(run.lowestVolts()),
                                state -> first(state, each -> OptionalDouble.of(each.volts())))),
                Column.number(
                        "Empty after",
                        "h",
                        "Hours until the battery is empty if it went on like that",
                        row -> row.of(
                                run -> hours(run.emptyMinutes()),
                                state -> first(state, BatteryBalance::enduranceHours))),
                Column.number(
                        "Asked after",
                        "min",
                        "Minutes until the voltage asked about is reached",
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
        return "No battery or alternator is connected in any operating state. Add one, with its capacity; put the alternator"
                + " on in the states in which the engine turns (list Sources). A timed sequence of states shows the charge"
                + " over a day of use.";
    }

    @Override
    public Optional<Picture> picture(Readout readout, Row row, Optional<String> selected) {
        Optional<Picture> sequence = row.sequence().flatMap(run -> row.battery()
                .flatMap(battery -> ChargeCharts.sequence(readout.harness(), run, battery))
                .map(chart -> new Picture(
                        chart.title() + ": charge level and voltage over time. " + chart.subtitle(), chart::scene)));
        return sequence.or(() -> tabulation(readout, row)
                .flatMap(each -> ChargeCharts.loads(readout.harness(), each))
                .map(chart -> new Picture(
                        chart.title() + ": current of each while on and on average",
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
            steps.addAll(run.sentences());
            run.steps()
                    .forEach(step -> steps.add(readout.stateName(step.state()) + ", "
                            + Formats.seconds(step.durationSeconds()) + ": "
                            + Formats.quantity(step.drawnAmpHours(), org.ohmloom.units.Dimension.CHARGE)
                            + (step.drawnAmpHours() < 0 ? " (charged)" : " drawn") + ", alternators "
                            + Formats.amps(step.alternatorAmps()) + " at its end, " + Formats.volts(step.endVolts())
                            + "."));
        });
        row.state().ifPresent(state -> {
            steps.addAll(state.sentences());
            state.alternators().forEach(each -> steps.addAll(each.steps()));
            state.batteries().forEach(each -> steps.addAll(each.steps()));
        });
        tabulation(readout, row)
                .ifPresent(each -> steps.add("Loads: " + Formats.amps(each.continuousAmps())
                        + " continuous, largest means " + Formats.amps(each.fiveSecondAmps()) + " over 5 s, "
                        + Formats.amps(each.fiveMinuteAmps()) + " over 5 min, " + Formats.amps(each.halfHourAmps())
                        + " over 30 min."));
        return steps;
    }
}
