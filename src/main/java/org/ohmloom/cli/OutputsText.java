package org.ohmloom.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.Optional;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.analysis.OutputDuty;
import org.ohmloom.model.OperatingState;
import org.ohmloom.solve.BranchFlow;
import org.ohmloom.solve.DutyResults;
import org.ohmloom.solve.Solution;
import org.ohmloom.store.JsonObjectWriter;
import org.ohmloom.units.Formats;

/** What outputs that switch at a duty put on their feeds, loads and freewheel paths, as text and as JSON. */
final class OutputsText {

    private OutputsText() {}

    static void print(Analysis analysis, List<OperatingState> states, PrintWriter out) {
        TextTable table = new TextTable()
                .left("STATE")
                .left("OUTPUT")
                .right("DUTY")
                .right("FREQUENCY")
                .left("CLOCK")
                .left("CURRENT OF")
                .right("ON-STATE")
                .right("MEAN")
                .right("RMS")
                .right("RIPPLE FROM")
                .right("TO");
        for (OperatingState state : states) {
            analysis.solution(state.id()).stream()
                    .flatMap(solution -> OutputDuty.of(solution).stream())
                    .forEach(output -> rows(table, state, output));
        }
        if (table.isEmpty()) {
            return;
        }
        out.println();
        out.println("OUTPUTS THAT SWITCH AT A DUTY (on-state: the worst coincidence of all of them, ripple included)");
        table.print(out);
        for (OperatingState state : states) {
            analysis.solution(state.id())
                    .map(Solution::duty)
                    .filter(DutyResults::sampled)
                    .ifPresent(duty -> out.println("  " + state.name() + ": a sample of " + duty.moments()
                            + " moments stands for all combinations; RMS currents are known to "
                            + Formats.percent(duty.samplingErrorRatio()) + "."));
        }
    }

    private static void rows(TextTable table, OperatingState state, OutputDuty output) {
        table.row(
                state.name(),
                output.output().value(),
                Formats.percent(output.pulse().dutyFraction()),
                Formats.hertz(output.pulse().frequencyHertz()),
                output.pulse().clock(),
                "feed",
                Formats.amps(Math.abs(output.feed().onAmps())),
                Formats.amps(Math.abs(output.feed().amps())),
                Formats.amps(output.feed().rmsAmps()),
                "",
                "");
        for (OutputDuty.BehindOutput each : output.loads()) {
            row(
                    table,
                    "load " + each.load(),
                    each.flow(),
                    each.ripple().map(ripple -> Formats.amps(ripple.valleyAmps())),
                    each.ripple().map(ripple -> Formats.amps(ripple.peakAmps())));
            each.freewheel()
                    .ifPresent(flow ->
                            row(table, "freewheel " + flow.branch().id(), flow, Optional.empty(), Optional.empty()));
        }
    }

    private static void row(
            TextTable table, String what, BranchFlow flow, Optional<String> valley, Optional<String> peak) {
        table.row(
                "",
                "",
                "",
                "",
                "",
                what,
                Formats.amps(Math.abs(flow.onAmps())),
                Formats.amps(Math.abs(flow.amps())),
                Formats.amps(flow.rmsAmps()),
                valley.orElse(""),
                peak.orElse(""));
    }

    /** Keys of a state: {@code clocks}, {@code outputs}, {@code moments}, {@code samplingErrorRatio}. */
    static void write(Solution solution, JsonObjectWriter item) {
        DutyResults duty = solution.duty();
        item.put("moments", duty.moments());
        item.put("samplingErrorRatio", duty.samplingErrorRatio());
        item.array("clocks", array -> duty.clocks()
                .forEach(clock -> array.object(entry -> {
                    entry.put("id", clock.id());
                    entry.put("frequencyHertz", clock.frequencyHertz());
                    entry.array("stretches", stretches -> clock.stretches()
                            .forEach(stretch -> stretches.object(one -> {
                                one.put("startFraction", stretch.startFraction());
                                one.put("shareFraction", stretch.shareFraction());
                                one.put(
                                        "on",
                                        String.join(
                                                " ",
                                                stretch.on().stream()
                                                        .map(id -> id.value())
                                                        .toList()));
                            })));
                })));
        item.array("outputs", array -> OutputDuty.of(solution)
                .forEach(output -> array.object(entry -> output(entry, output, duty))));
    }

    private static void output(JsonObjectWriter entry, OutputDuty output, DutyResults duty) {
        entry.put("id", output.output().value());
        entry.put("clock", output.pulse().clock());
        entry.put("frequencyHertz", output.pulse().frequencyHertz());
        entry.put("phaseFraction", output.pulse().phaseFraction());
        entry.put("dutyFraction", output.pulse().dutyFraction());
        flow(entry, output.feed());
        duty.clamps().values().stream()
                .filter(clamp -> clamp.output().equals(output.output()))
                .forEach(clamp -> {
                    entry.put("clampPulseJoules", clamp.pulseJoules());
                    entry.put("clampWatts", clamp.meanWatts());
                });
        entry.array("loads", array -> output.loads()
                .forEach(each -> array.object(load -> {
                    load.put("id", each.load().value());
                    flow(load, each.flow());
                    each.ripple().ifPresent(ripple -> {
                        load.put("valleyAmps", ripple.valleyAmps());
                        load.put("peakAmps", ripple.peakAmps());
                        load.put("freewheels", ripple.hasFreewheel());
                        load.put("speedFraction", ripple.speedFraction());
                    });
                    each.freewheel().ifPresent(wheel -> {
                        load.put("freewheel", wheel.branch().id().value());
                        load.put("freewheelOnAmps", Math.abs(wheel.onAmps()));
                        load.put("freewheelAmps", Math.abs(wheel.amps()));
                        load.put("freewheelRmsAmps", wheel.rmsAmps());
                    });
                })));
    }

    private static void flow(JsonObjectWriter entry, BranchFlow flow) {
        entry.put("onAmps", Math.abs(flow.onAmps()));
        entry.put("amps", Math.abs(flow.amps()));
        entry.put("rmsAmps", flow.rmsAmps());
    }
}
