package org.ohmloom.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.OperatingState;
import org.ohmloom.solve.run.SkippedStart;
import org.ohmloom.solve.run.StartUp;
import org.ohmloom.solve.run.StartUps;
import org.ohmloom.solve.run.StarterTrace;
import org.ohmloom.solve.run.SupplySag;
import org.ohmloom.tables.SupplyCode;
import org.ohmloom.units.Dimension;
import org.ohmloom.units.Formats;

/** How loads and control units start, as text. */
final class StartUpText {

    private static final String NOTHING = "-";

    private final Analysis analysis;
    private final StartUps startUps;
    private final PrintWriter out;

    private StartUpText(Analysis analysis, PrintWriter out) {
        this.analysis = analysis;
        this.startUps = analysis.evidence().startUps();
        this.out = out;
    }

    static void print(Analysis analysis, List<OperatingState> states, PrintWriter out) {
        StartUpText text = new StartUpText(analysis, out);
        List<StartUp> runs = states.stream()
                .flatMap(state -> text.startUps.in(state.id()).stream())
                .toList();
        List<SkippedStart> skipped = text.startUps.skipped().stream()
                .filter(each -> states.stream().anyMatch(state -> state.id().equals(each.state())))
                .toList();
        if (!runs.isEmpty() || !skipped.isEmpty()) {
            out.println();
            out.println("STARTS OVER TIME (every output with a duty on; the rest runs steadily)");
            text.runs(runs);
            text.surges(runs);
            text.supplies(runs);
            text.skipped(skipped);
        }
    }

    private void runs(List<StartUp> runs) {
        TextTable table = new TextTable()
                .left("STATE")
                .left("STARTS")
                .right("PEAK")
                .right("THEN")
                .right("SETTLES IN")
                .right("ITS VOLTS")
                .left("LOWEST SUPPLY")
                .right("BEFORE")
                .right("LOWEST")
                .right("MINIMUM")
                .right("BELOW FOR");
        for (StartUp run : runs) {
            Optional<SupplySag> worst = run.sags().stream().findFirst();
            Optional<StarterTrace> one = run.starter().map(id -> run.starters().get(0));
            table.row(
                    name(run),
                    run.starter()
                            .map(Object::toString)
                            .orElse("all " + run.starters().size() + " at once"),
                    one.map(trace -> Formats.amps(trace.peakAmps())).orElse(NOTHING),
                    one.map(trace -> Formats.amps(trace.endAmps())).orElse(NOTHING),
                    one.map(trace -> Formats.seconds(trace.settleSeconds())).orElse(NOTHING),
                    one.map(trace -> Formats.volts(trace.lowestVolts())).orElse(NOTHING),
                    worst.map(sag -> sag.id().value()).orElse(NOTHING),
                    worst.map(sag -> Formats.volts(sag.beforeVolts())).orElse(NOTHING),
                    worst.map(sag -> Formats.volts(sag.lowestVolts())).orElse(NOTHING),
                    worst.map(StartUpText::minimum).orElse(NOTHING),
                    worst.map(StartUpText::below).orElse(NOTHING));
        }
        if (!table.isEmpty()) {
            table.print(out);
        }
        for (StartUp run : runs) {
            run.limited()
                    .forEach(output -> out.println("  " + name(run) + ": " + output.branch() + " gives its limit of "
                            + Formats.amps(output.limit().limitAmps()) + " for "
                            + Formats.seconds(output.limitedSeconds())
                            + (output.trips() ? " and switches off." : ".")));
        }
        runs.stream()
                .filter(run -> run.outcome() != StartUp.Outcome.SETTLED)
                .forEach(run -> out.println("  " + name(run) + ", "
                        + run.starters().stream()
                                .map(trace -> trace.id().value())
                                .collect(Collectors.joining(", "))
                        + ": " + run.sentence()));
    }

    private static String minimum(SupplySag sag) {
        return sag.minimumVolts().isPresent() ? Formats.volts(sag.minimumVolts().getAsDouble()) : NOTHING;
    }

    private static String below(SupplySag sag) {
        if (sag.belowAtEnd()) {
            return "for good";
        }
        return sag.belowSeconds() > 0 ? Formats.seconds(sag.belowSeconds()) : NOTHING;
    }

    /** The worst surge of each protective device. */
    private void surges(List<StartUp> runs) {
        TextTable table = new TextTable()
                .left("DEVICE")
                .left("WORST START")
                .left("STATE")
                .right("BEFORE")
                .right("PEAK")
                .right("THEN")
                .right("LASTS")
                .right("I2T")
                .right("OF IT THE START");
        analysis.devices().keySet().forEach(device -> runs.stream()
                .filter(run -> run.surge(device).isPresent())
                .max((a, b) -> Double.compare(added(a, device), added(b, device)))
                .ifPresent(run -> run.surge(device)
                        .ifPresent(surge -> table.row(
                                device.value(),
                                run.starter().map(Object::toString).orElse("all at once"),
                                name(run),
                                Formats.amps(surge.beforeAmps()),
                                Formats.amps(surge.peakAmps()),
                                Formats.amps(surge.endAmps()),
                                Formats.seconds(run.durationSeconds()),
                                Formats.quantity(surge.squareAmpSeconds(), Dimension.JOULE_INTEGRAL),
                                Formats.quantity(surge.excessSquareAmpSeconds(), Dimension.JOULE_INTEGRAL)))));
        if (!table.isEmpty()) {
            out.println();
            table.print(out);
        }
    }

    private static double added(StartUp run, ComponentId device) {
        return run.surge(device).orElseThrow().excessSquareAmpSeconds();
    }

    /** What the lowest voltage of each control unit would do for. */
    private void supplies(List<StartUp> runs) {
        TextTable table = new TextTable()
                .left("CONTROL UNIT")
                .right("LOWEST")
                .left("WHILE")
                .left("STATE")
                .right("MINIMUM")
                .left("DOES FOR SUPPLY CODE");
        runs.stream()
                .flatMap(run -> run.sags().stream())
                .filter(SupplySag::controlUnit)
                .map(SupplySag::id)
                .distinct()
                .sorted()
                .forEach(id -> runs.stream()
                        .filter(run -> run.sag(id).isPresent())
                        .min((a, b) -> Double.compare(lowest(a, id), lowest(b, id)))
                        .ifPresent(run -> table.row(
                                id.value(),
                                Formats.volts(lowest(run, id)),
                                run.starter()
                                        .map(starter -> starter + " starts")
                                        .orElse("all start at once"),
                                name(run),
                                minimum(run.sag(id).orElseThrow()),
                                codes(lowest(run, id)))));
        if (!table.isEmpty()) {
            out.println();
            table.print(out);
            out.println("  supply codes by "
                    + analysis.evidence().tables().supplyCodes().stream()
                            .map(code -> code.minimumVolts().citation().document() + ":"
                                    + code.minimumVolts().citation().edition())
                            .findFirst()
                            .orElse("no table"));
        }
    }

    private static double lowest(StartUp run, ComponentId id) {
        return run.sag(id).orElseThrow().lowestVolts();
    }

    private String codes(double lowestVolts) {
        String codes = SupplyCode.standing(
                        analysis.evidence().tables().supplyCodes(),
                        analysis.harness().rules().nominalVolts(),
                        lowestVolts)
                .stream()
                .map(SupplyCode::code)
                .collect(Collectors.joining(", "));
        return codes.isEmpty() ? "none" : codes;
    }

    private void skipped(List<SkippedStart> skipped) {
        skipped.forEach(each -> out.println("  "
                + analysis.harness().states().get(each.state()).name() + ", "
                + each.starters().stream().map(Object::toString).collect(Collectors.joining(", ")) + ": "
                + each.reason()));
    }

    private String name(StartUp run) {
        return analysis.harness().states().get(run.state()).name();
    }
}
