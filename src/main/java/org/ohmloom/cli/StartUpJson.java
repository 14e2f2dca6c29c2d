package org.ohmloom.cli;

import java.util.List;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.model.OperatingState;
import org.ohmloom.solve.run.StartUp;
import org.ohmloom.solve.run.StartUps;
import org.ohmloom.solve.run.SupplySag;
import org.ohmloom.store.JsonArrayWriter;
import org.ohmloom.store.JsonObjectWriter;

/** How loads and control units start, as JSON. */
final class StartUpJson {

    private StartUpJson() {}

    /** Adds {@code startUps} and {@code skippedStarts}. */
    static void write(Analysis analysis, List<OperatingState> states, JsonObjectWriter root) {
        StartUps startUps = analysis.evidence().startUps();
        root.array(
                "startUps",
                array -> states.forEach(state ->
                        startUps.in(state.id()).forEach(run -> array.object(entry -> run(entry, state, run)))));
        root.array("skippedStarts", array -> startUps.skipped().stream()
                .filter(skipped -> states.stream().anyMatch(state -> state.id().equals(skipped.state())))
                .forEach(skipped -> array.object(entry -> {
                    entry.put(
                            "state",
                            analysis.harness().states().get(skipped.state()).name());
                    entry.array("starters", ids -> skipped.starters().forEach(id -> ids.add(id.value())));
                    entry.put("reason", skipped.reason().english());
                })));
    }

    private static void run(JsonObjectWriter entry, OperatingState state, StartUp run) {
        entry.put("state", state.name());
        entry.put("kind", run.kind().name());
        entry.put("cranking", run.cranking());
        entry.put("outcome", run.outcome().name());
        entry.put("sentence", run.sentence());
        entry.put("durationSeconds", run.durationSeconds());
        numbers(entry, "seconds", run.seconds());
        entry.array("starters", array -> run.starters()
                .forEach(trace -> array.object(item -> {
                    item.put("id", trace.id().value());
                    item.put("manner", trace.manner().name());
                    item.put("method", trace.method().english());
                    item.put("timeConstantSeconds", trace.timeConstantSeconds());
                    item.put("peakAmps", trace.peakAmps());
                    item.put("endAmps", trace.endAmps());
                    item.put("lowestVolts", trace.lowestVolts());
                    item.put("settleSeconds", trace.settleSeconds());
                    numbers(item, "amps", trace.amps());
                    numbers(item, "volts", trace.volts());
                })));
        entry.array("supplies", array -> run.sags().forEach(sag -> array.object(item -> supply(item, sag))));
        entry.array("devices", array -> run.surges()
                .forEach(surge -> array.object(item -> {
                    item.put("id", surge.device().value());
                    item.put("beforeAmps", surge.beforeAmps());
                    item.put("peakAmps", surge.peakAmps());
                    item.put("endAmps", surge.endAmps());
                    item.put("squareAmpSeconds", surge.squareAmpSeconds());
                    item.put("excessSquareAmpSeconds", surge.excessSquareAmpSeconds());
                    numbers(item, "amps", surge.amps());
                })));
        entry.array("limitedOutputs", array -> run.limited()
                .forEach(output -> array.object(item -> {
                    item.put("id", output.branch().value());
                    item.put("limitAmps", output.limit().limitAmps());
                    item.put("limitedSeconds", output.limitedSeconds());
                    item.put("tripSeconds", output.limit().tripSeconds());
                    item.put("trips", output.trips());
                })));
        entry.array("dropOuts", array -> run.dropOuts()
                .forEach(dropOut -> array.object(item -> {
                    item.put("relay", dropOut.relay().value());
                    item.put("atSeconds", dropOut.atSeconds());
                    item.put("lowestVolts", dropOut.lowestVolts());
                    item.put("dropOutVolts", dropOut.dropOutVolts());
                })));
    }

    private static void supply(JsonObjectWriter item, SupplySag sag) {
        item.put("id", sag.id().value());
        item.put("beforeVolts", sag.beforeVolts());
        item.put("lowestVolts", sag.lowestVolts());
        item.put("lowestSeconds", sag.lowestSeconds());
        item.put("minimumVolts", sag.minimumVolts());
        item.put("belowSeconds", sag.belowSeconds());
        item.put("belowAtEnd", sag.belowAtEnd());
        item.put("holdSeconds", sag.holdSeconds());
        numbers(item, "volts", sag.volts());
    }

    private static void numbers(JsonObjectWriter entry, String key, List<Double> values) {
        entry.array(key, (JsonArrayWriter array) -> values.forEach(value -> array.add(value.doubleValue())));
    }
}
