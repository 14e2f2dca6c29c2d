package org.ohmloom.workbench.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.ohmloom.analysis.OutputDuty;
import org.ohmloom.draw.chart.Stack;
import org.ohmloom.draw.study.DutyCharts;
import org.ohmloom.draw.study.DutyClocks;
import org.ohmloom.model.ElementId;
import org.ohmloom.model.OperatingState;
import org.ohmloom.solve.BranchFlow;
import org.ohmloom.solve.Ripple;
import org.ohmloom.solve.Solution;
import org.ohmloom.units.Formats;
import org.ohmloom.workbench.desk.Readout;
import org.ohmloom.workbench.sheet.CellText;
import org.ohmloom.workbench.sheet.Column;

/** Outputs run at a duty: what flows while on, what heats and what the battery gives, in feed, load and freewheel path. */
public final class DutyStudy implements Study<DutyStudy.Row> {

    /**
     * A load behind an output in a state.
     *
     * @param state    the state
     * @param solution its solution
     * @param output   the output
     * @param load     the load behind it
     */
    public record Row(OperatingState state, Solution solution, OutputDuty output, OutputDuty.BehindOutput load) {

        CellText ripple(Function<Ripple, Double> value) {
            return load.ripple().map(value).map(CellText::of).orElse(CellText.EMPTY);
        }

        CellText freewheel(Function<BranchFlow, Double> value) {
            return load.freewheel().map(value).map(CellText::of).orElse(CellText.EMPTY);
        }
    }

    @Override
    public String key() {
        return "duty";
    }

    @Override
    public String title() {
        return "Duty";
    }

    @Override
    public String about() {
        return "Outputs run at a duty: on-state, RMS and mean current of feed, load and freewheel path, and ripple";
    }

    @Override
    public List<Column<Row>> columns() {
        return List.of(
                Column.text("Output", "Output that switches", 9, row -> row.output()
                        .output()
                        .value()),
                Column.text(
                        "Load", "Load behind it", 7, row -> row.load().load().value()),
                Column.text("State", "Operating state", 12, row -> row.state().name()),
                Column.number(
                        "Duty",
                        "%",
                        "Share of the time it is on",
                        row -> CellText.of(100 * row.output().pulse().dutyFraction())),
                number("Feed on", "Largest current of its feed: for drop and devices", row -> row.output()
                        .feed()
                        .onAmps()),
                number("RMS", "What heats the feed", row -> row.output().feed().rmsAmps()),
                number("Mean", "What the battery gives", row -> row.output()
                        .feed()
                        .amps()),
                number("Load on", "Largest current of the load", row -> row.load()
                        .flow()
                        .onAmps()),
                number("RMS", "What heats the load's own wires", row -> row.load()
                        .flow()
                        .rmsAmps()),
                number("Mean", "Mean current of the load", row -> row.load()
                        .flow()
                        .amps()),
                Column.number(
                        "Freewheel RMS",
                        "A",
                        "Current of the freewheel path",
                        row -> row.freewheel(BranchFlow::rmsAmps)),
                Column.number("Ripple from", "A", "Least current of the load", row -> row.ripple(Ripple::valleyAmps)),
                Column.number("to", "A", "Largest current of the load", row -> row.ripple(Ripple::peakAmps)));
    }

    private static Column<Row> number(String title, String tip, Function<Row, Double> value) {
        return Column.number(title, "A", tip, row -> CellText.of(Math.abs(value.apply(row))));
    }

    @Override
    public List<Row> rows(Readout readout) {
        List<Row> rows = new ArrayList<>();
        for (OperatingState state : readout.harness().states().all()) {
            if (readout.state().isPresent() && !readout.state().get().equals(state.id())) {
                continue;
            }
            readout.analysis()
                    .flatMap(results -> results.solution(state.id()))
                    .ifPresent(solution -> OutputDuty.of(solution).forEach(output -> output.loads()
                            .forEach(load -> rows.add(new Row(state, solution, output, load)))));
        }
        return rows;
    }

    @Override
    public ElementId id(Row row) {
        return row.load().load();
    }

    @Override
    public String nothing(Readout readout) {
        if (readout.harness().states().all().isEmpty()) {
            return "Add an operating state first. Then give an output of a control unit or a solid-state output a duty"
                    + " below 100 % in it, and its frequency.";
        }
        return "No output runs at a duty. Give an output of a control unit or a solid-state output a duty below 100 % in an"
                + " operating state; list Outputs takes its frequency and the way of its freewheel current, list Loads the"
                + " inductance of a load.";
    }

    @Override
    public Optional<Picture> picture(Readout readout, Row row, Optional<String> selected) {
        return readout.analysis()
                .flatMap(results -> DutyCharts.of(results, row.state(), row.output()))
                .map(chart -> new Picture(
                        chart.title()
                                + ": on-state, RMS and mean current of the feed, the loads and the wires; then when"
                                + " the outputs of its clock are on",
                        (fonts, widthMm, heightMm) -> Stack.of(Stream.concat(
                                        Stream.of(chart.scene(fonts, widthMm)),
                                        DutyClocks.chart(
                                                row.state(),
                                                row.solution(),
                                                row.output().output())
                                                .map(clock -> clock.scene(fonts, widthMm))
                                                .stream())
                                .toList())));
    }

    @Override
    public List<String> steps(Readout readout, Row row) {
        List<String> steps = new ArrayList<>();
        BranchFlow feed = row.output().feed();
        steps.add(row.output().output() + " in " + row.state().name() + ": on for "
                + Formats.percent(row.output().pulse().dutyFraction()) + " of the time at "
                + Formats.hertz(row.output().pulse().frequencyHertz()) + ", clock "
                + row.output().pulse().clock()
                + ", beginning at " + Formats.percent(row.output().pulse().phaseFraction()) + " of the period.");
        steps.addAll(DutyClocks.words(row.solution().duty(), row.output().output()));
        steps.add("Feed: " + currents(feed) + ". Drop and devices are judged by the on-state current, heat by the RMS"
                + " current, the battery gives the mean.");
        steps.add("Load " + row.load().load() + ": " + currents(row.load().flow()) + ".");
        row.load().freewheel().ifPresent(flow -> steps.add("Freewheel path: " + currents(flow) + "."));
        row.load().ripple().ifPresent(ripple -> {
            steps.add("Ripple of its current: from " + Formats.amps(ripple.valleyAmps()) + " to "
                    + Formats.amps(ripple.peakAmps())
                    + (ripple.isContinuous() ? "; it never dies away." : "; it dies away in every period."));
            if (!ripple.hasFreewheel()) {
                steps.add("Its current finds no way when the output switches off: "
                        + Formats.quantity(ripple.brokenJoules(), org.ohmloom.units.Dimension.ENERGY)
                        + " break through in every period. Add a freewheel diode or a clamp.");
            }
        });
        row.solution().duty().clamps().values().stream()
                .filter(clamp -> clamp.output().equals(row.output().output()))
                .forEach(clamp -> steps.add("Its clamp swallows "
                        + Formats.quantity(clamp.pulseJoules(), org.ohmloom.units.Dimension.ENERGY) + " a pulse, "
                        + Formats.watts(clamp.meanWatts()) + " on average."));
        if (row.solution().duty().sampled()) {
            steps.add("RMS currents are known to "
                    + Formats.percent(row.solution().duty().samplingErrorRatio()) + " from that sample.");
        }
        return steps;
    }

    private static String currents(BranchFlow flow) {
        return Formats.amps(Math.abs(flow.onAmps())) + " on, " + Formats.amps(flow.rmsAmps()) + " RMS, "
                + Formats.amps(Math.abs(flow.amps())) + " mean";
    }
}
