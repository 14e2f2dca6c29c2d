package org.ohmloom.analysis;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.ohmloom.graph.Assumption;
import org.ohmloom.model.StateId;
import org.ohmloom.review.Evidence;
import org.ohmloom.solve.run.SkippedStart;
import org.ohmloom.solve.run.StartUp;
import org.ohmloom.solve.run.StartUps;
import org.ohmloom.solve.run.StarterTrace;
import org.ohmloom.units.Dimension;
import org.ohmloom.units.Formats;

/** Writes down how the starts were followed. */
final class StartUpLog {

    private final Evidence evidence;
    private final List<CalculationLog.Line> lines = new ArrayList<>();

    private StartUpLog(Evidence evidence) {
        this.evidence = evidence;
    }

    /** The lines about starts; none when nothing starts. */
    static List<CalculationLog.Line> of(Evidence evidence) {
        StartUpLog log = new StartUpLog(evidence);
        StartUps startUps = evidence.startUps();
        if (!startUps.runs().isEmpty() || !startUps.skipped().isEmpty()) {
            log.heading(startUps);
            startUps.runs().forEach(log::run);
            startUps.skipped().forEach(log::skipped);
        }
        return log.lines;
    }

    private void add(int depth, String text) {
        lines.add(new CalculationLog.Line(depth, text));
    }

    private void heading(StartUps startUps) {
        add(0, "Starts over time");
        add(
                1,
                "At every instant the whole network is solved, every output with a duty on, inductance left out; steps so"
                        + " long that straight lines between them keep within "
                        + Formats.percent(StartUp.SERIES_ERROR_SHARE) + " of the largest value");
        for (Assumption assumption : startUps.assumptions()) {
            add(1, assumption.text());
            add(2, assumption.source());
        }
    }

    private void run(StartUp run) {
        String what = run.starter()
                .map(id -> evidence.harness().components().get(id).name() + " (" + id + ") starts")
                .orElse(run.starters().size() + " loads start at once");
        add(1, state(run.state()) + ": " + what);
        add(2, run.sentence());
        run.starters().forEach(trace -> starter(run, trace));
        run.sags().stream()
                .filter(sag -> sag.minimumVolts().isPresent())
                .forEach(sag -> add(
                        2,
                        "Supply of " + sag.id() + ": " + Formats.volts(sag.beforeVolts()) + " before, lowest "
                                + Formats.volts(sag.lowestVolts()) + " after " + Formats.seconds(sag.lowestSeconds())
                                + ", works from "
                                + Formats.volts(sag.minimumVolts().getAsDouble())));
        run.limited()
                .forEach(output -> add(
                        2,
                        "Output " + output.branch() + " gives its limit of "
                                + Formats.amps(output.limit().limitAmps()) + " for "
                                + Formats.seconds(output.limitedSeconds())));
        run.surges()
                .forEach(surge -> add(
                        2,
                        "Through " + surge.device() + ": peak " + Formats.amps(surge.peakAmps())
                                + ", integral of i^2 "
                                + Formats.quantity(surge.squareAmpSeconds(), Dimension.JOULE_INTEGRAL) + " over "
                                + Formats.seconds(run.durationSeconds())));
    }

    private void starter(StartUp run, StarterTrace trace) {
        String result = trace.id() + ": peak " + Formats.amps(trace.peakAmps()) + ", then "
                + Formats.amps(trace.endAmps()) + " after " + Formats.seconds(trace.settleSeconds());
        add(2, result);
        if (run.kind() == StartUp.Kind.ONE) {
            add(3, trace.method().english());
        }
    }

    private void skipped(SkippedStart skipped) {
        String starters = skipped.starters().stream().map(Object::toString).collect(Collectors.joining(", "));
        add(1, state(skipped.state()) + (starters.isEmpty() ? "" : ", " + starters) + ": " + skipped.reason());
    }

    private String state(StateId id) {
        return evidence.harness().states().get(id).name();
    }
}
