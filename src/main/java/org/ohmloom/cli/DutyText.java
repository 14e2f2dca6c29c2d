package org.ohmloom.cli;

import java.io.PrintWriter;
import java.util.List;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.analysis.DutyStep;
import org.ohmloom.analysis.DutySweep;
import org.ohmloom.model.ComponentId;
import org.ohmloom.store.JsonObjectWriter;
import org.ohmloom.units.Formats;

/** What the wires of loads run at a duty carry over the range of duties, as text and as JSON. */
final class DutyText {

    private DutyText() {}

    static void print(Analysis analysis, List<DutyStep> steps, PrintWriter out) {
        if (steps.isEmpty()) {
            return;
        }
        TextTable table = new TextTable()
                .left("LOAD")
                .right("DUTY")
                .right("LOAD DROP")
                .right("LIMIT")
                .left("WIRE")
                .left("SIZE")
                .right("RMS")
                .right("MEAN")
                .right("ON-STATE")
                .right("DROP")
                .right("TEMPERATURE")
                .left("NEEDS")
                .left("BECAUSE OF");
        for (DutyStep step : steps) {
            boolean first = true;
            for (DutyStep.OnWire wire : step.wires()) {
                table.row(
                        first ? step.load().value() : "",
                        first ? Formats.percent(step.dutyFraction()) : "",
                        first ? Formats.volts(step.dropVolts()) : "",
                        first ? Formats.volts(step.limitVolts()) : "",
                        wire.wire().value(),
                        wire.gauge().text(),
                        Formats.amps(wire.rmsAmps()),
                        Formats.amps(wire.meanAmps()),
                        Formats.amps(wire.onAmps()),
                        Formats.volts(wire.dropVolts()),
                        Formats.celsius(wire.celsius()),
                        wire.choice()
                                .flatMap(choice -> choice.gauge())
                                .map(gauge -> gauge.text())
                                .orElse("-"),
                        wire.choice()
                                .map(choice -> choice.governing().governor().words())
                                .orElse("-"));
                first = false;
            }
        }
        out.println();
        out.println(
                "LOADS RUN AT A DUTY (all else as in the state that runs them hardest; feed from the protective device on)");
        steps.stream().map(DutyStep::load).distinct().forEach(load -> {
            DutyStep step = steps.stream()
                    .filter(each -> each.load().equals(load))
                    .findFirst()
                    .orElseThrow();
            out.println("  " + load + " "
                    + analysis.harness().components().get(load).name() + ": by "
                    + (step.output().equals(load.value()) ? "its command input" : step.output()) + ", in "
                    + analysis.harness().states().get(step.state()).name());
        });
        table.print(out);
        List<ComponentId> left = DutySweep.leftOut(analysis);
        if (!left.isEmpty()) {
            out.println("  Not computed, to keep the calculation quick: " + left.size()
                    + " more loads run at a duty, from " + left.get(0) + " on.");
        }
    }

    /** Loads run at a duty that the sweep leaves out. */
    static void leftOut(List<ComponentId> loads, JsonObjectWriter root) {
        root.array("dutyStepsLeftOut", array -> loads.forEach(load -> array.add(load.value())));
    }

    static void write(List<DutyStep> steps, JsonObjectWriter root) {
        root.array(
                "dutySteps",
                array -> steps.forEach(step -> array.object(entry -> {
                    entry.put("load", step.load().value());
                    entry.put("output", step.output());
                    entry.put("state", step.state().value());
                    entry.put("dutyFraction", step.dutyFraction());
                    entry.put("loadOnAmps", step.loadOnAmps());
                    entry.put("loadAmps", step.loadAmps());
                    entry.put("dropVolts", step.dropVolts());
                    entry.put("limitVolts", step.limitVolts());
                    entry.array("wires", wires -> step.wires()
                            .forEach(wire -> wires.object(item -> {
                                item.put("id", wire.wire().value());
                                item.put("gauge", wire.gauge().text());
                                item.put("rmsAmps", wire.rmsAmps());
                                item.put("amps", wire.meanAmps());
                                item.put("onAmps", wire.onAmps());
                                item.put("onDropVolts", wire.dropVolts());
                                item.put("celsius", wire.celsius());
                                wire.choice()
                                        .ifPresent(choice -> item.put(
                                                "governedBy",
                                                choice.governing().governor().words()));
                            })));
                })));
    }
}
