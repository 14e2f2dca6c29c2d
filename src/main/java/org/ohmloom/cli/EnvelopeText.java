package org.ohmloom.cli;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.SortedMap;
import java.util.TreeMap;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.graph.BranchKind;
import org.ohmloom.model.NaturalOrder;
import org.ohmloom.review.EnvelopeComparison;
import org.ohmloom.solve.envelope.BranchEnvelope;
import org.ohmloom.solve.envelope.Combination;
import org.ohmloom.solve.envelope.Envelope;
import org.ohmloom.solve.envelope.LoadEnvelope;
import org.ohmloom.solve.envelope.SituationEnvelope;
import org.ohmloom.store.JsonObjectWriter;
import org.ohmloom.units.Formats;
import org.ohmloom.words.Text;

/** The worst over all allowed combinations of loads, as text beside the named states and as JSON. */
final class EnvelopeText {

    private static final int WIDTH = 120;
    private static final int INDENT = 6;
    private static final int MOST_WIRES = 12;

    /** A wire is listed when the envelope is more than this share above the named states. */
    private static final double MORE_RATIO = 0.01;

    private EnvelopeText() {}

    static void print(Analysis analysis, PrintWriter out) {
        Envelope envelope = analysis.evidence().envelope();
        if (envelope.situations().isEmpty() && envelope.notes().isEmpty()) {
            return;
        }
        out.println();
        out.println("ENVELOPE (worst over all combinations of loads that "
                + (envelope.hasGroups()
                        ? "the load groups allow; wires and devices are sized by it too"
                        : "the wiring allows: there are no load groups, so wires are sized by the named states")
                + ")");
        SortedMap<String, Combination> named = new TreeMap<>(NaturalOrder.INSTANCE);
        wires(analysis, named, out);
        loads(analysis, named, out);
        named.forEach((id, combination) -> out.println(Wrap.indented(
                id + ": " + list(combination.loads()) + " by " + list(combination.controls()), INDENT, WIDTH)));
        for (SituationEnvelope situation : envelope.situations()) {
            out.println(Wrap.indented(
                    situation.name() + ": "
                            + Text.joined(" ", situation.steps()).english(),
                    INDENT,
                    WIDTH));
        }
        envelope.notes().forEach(note -> out.println(Wrap.indented(note.english(), INDENT, WIDTH)));
    }

    /** How it was computed; what several situations share once. */
    private static void steps(Envelope envelope, PrintWriter out) {
        Map<String, List<String>> situations = new LinkedHashMap<>();
        for (SituationEnvelope situation : envelope.situations()) {
            for (String step : Text.english(situation.steps())) {
                situations.computeIfAbsent(step, each -> new ArrayList<>()).add(situation.name());
            }
        }
        situations.forEach((step, names) -> {
            boolean all = names.size() == envelope.situations().size() && names.size() > 1;
            out.println(Wrap.indented(all ? step : String.join("; ", names) + ": " + step, INDENT, WIDTH));
        });
    }

    private static void wires(Analysis analysis, SortedMap<String, Combination> named, PrintWriter out) {
        List<EnvelopeComparison.Current> more = EnvelopeComparison.currents(analysis.evidence()).stream()
                .filter(each -> each.branch().kind() == BranchKind.WIRE)
                .filter(each -> each.worst().rmsAmps() > each.namedAmps() * (1 + MORE_RATIO))
                .sorted(Comparator.comparingDouble((EnvelopeComparison.Current each) ->
                        each.namedAmps() - each.worst().rmsAmps()))
                .toList();
        TextTable table = new TextTable()
                .left("WIRE")
                .right("NAMED STATES")
                .right("ENVELOPE")
                .right("BOUND")
                .left("PROVEN")
                .right("LIMIT")
                .left("COMBINATION")
                .left("WHILE");
        for (EnvelopeComparison.Current each : more.subList(0, Math.min(MOST_WIRES, more.size()))) {
            named.put(each.combination().id(), each.combination());
            table.row(
                    each.branch().id().value(),
                    Formats.amps(each.namedAmps()),
                    Formats.amps(each.worst().rmsAmps()),
                    amps(each.worst().rmsBoundAmps()),
                    proven(each.worst().rmsProven(), each.worst().rmsBoundAmps()),
                    each.limit().map(limit -> Formats.amps(limit.amps())).orElse("-"),
                    each.combination().id(),
                    each.situation().name());
        }
        if (table.isEmpty()) {
            out.println("  no combination brings a wire more RMS current than the named states");
            return;
        }
        table.print(out);
        if (more.size() > MOST_WIRES) {
            out.println("  and " + (more.size() - MOST_WIRES) + " more wires with less beyond the named states");
        }
    }

    private static void loads(Analysis analysis, SortedMap<String, Combination> named, PrintWriter out) {
        TextTable table = new TextTable()
                .left("LOAD")
                .right("DROP, NAMED STATES")
                .right("DROP, ENVELOPE")
                .right("BOUND")
                .left("PROVEN")
                .right("LIMIT")
                .left("COMBINATION")
                .left("WHILE");
        EnvelopeComparison.drops(analysis.evidence()).stream()
                .sorted(Comparator.comparingDouble(
                        each -> each.worst().limitVolts() - each.worst().dropVolts()))
                .forEach(each -> {
                    named.put(each.combination().id(), each.combination());
                    table.row(
                            each.load().value(),
                            volts(each.namedVolts()),
                            Formats.volts(each.worst().dropVolts()),
                            volts(each.worst().boundVolts()),
                            proven(each.worst().isProven(), each.worst().boundVolts()),
                            Formats.volts(each.worst().limitVolts()),
                            each.combination().id(),
                            each.situation().name());
                });
        if (!table.isEmpty()) {
            table.print(out);
        }
    }

    private static String proven(boolean proven, OptionalDouble bound) {
        return proven ? "yes" : bound.isPresent() ? "within the bound" : "no";
    }

    private static String amps(OptionalDouble value) {
        return value.isPresent() ? Formats.amps(value.getAsDouble()) : "-";
    }

    private static String volts(OptionalDouble value) {
        return value.isPresent() ? Formats.volts(value.getAsDouble()) : "-";
    }

    private static String list(Iterable<?> things) {
        String text = "";
        for (Object each : things) {
            text += (text.isEmpty() ? "" : ", ") + each;
        }
        return text.isEmpty() ? "nothing" : text;
    }

    /** Adds the key {@code envelope}. */
    static void write(Envelope envelope, JsonObjectWriter root) {
        root.object("envelope", object -> {
            object.put("hasGroups", envelope.hasGroups());
            object.array("situations", array -> envelope.situations()
                    .forEach(situation -> array.object(item -> situation(item, situation))));
            object.texts(
                    "neverRun", envelope.never().stream().map(Object::toString).toList());
            object.texts("notes", Text.english(envelope.notes()));
        });
    }

    private static void situation(JsonObjectWriter item, SituationEnvelope situation) {
        item.put("name", situation.name());
        item.put("mode", situation.mode().name());
        item.texts("sources", situation.sources().stream().map(Object::toString).toList());
        item.texts("steps", Text.english(situation.steps()));
        item.array("combinations", array -> situation
                .combinations()
                .forEach(each -> array.object(entry -> {
                    entry.put("id", each.id());
                    entry.texts(
                            "loads", each.loads().stream().map(Object::toString).toList());
                    entry.texts("controls", List.copyOf(each.controls()));
                    entry.put("status", each.solution().status().name());
                })));
        item.array(
                "branches",
                array -> situation.branches().values().forEach(each -> array.object(entry -> branch(entry, each))));
        item.array(
                "loads", array -> situation.loads().values().forEach(each -> array.object(entry -> load(entry, each))));
    }

    private static void branch(JsonObjectWriter entry, BranchEnvelope branch) {
        entry.put("id", branch.branch().value());
        entry.put("onAmps", branch.onAmps());
        entry.put("onBoundAmps", branch.onBoundAmps());
        entry.put("onProven", branch.onProven());
        entry.put("onCombination", branch.onCombination());
        entry.put("rmsAmps", branch.rmsAmps());
        entry.put("rmsBoundAmps", branch.rmsBoundAmps());
        entry.put("rmsProven", branch.rmsProven());
        entry.put("rmsCombination", branch.rmsCombination());
    }

    private static void load(JsonObjectWriter entry, LoadEnvelope load) {
        entry.put("id", load.load().value());
        entry.put("dropVolts", load.dropVolts());
        entry.put("boundVolts", load.boundVolts());
        entry.put("proven", load.isProven());
        entry.put("combination", load.combination());
        entry.put("limitVolts", load.limitVolts());
    }
}
