package org.ohmloom.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.ground.LostReturn;
import org.ohmloom.model.OperatingState;
import org.ohmloom.model.StateId;
import org.ohmloom.store.JsonObjectWriter;
import org.ohmloom.units.Formats;

/** What opening a return or pulling a fuse does, where it is not harmless, as text and as JSON. */
final class LossesText {

    private static final int MOST_LOSSES = 40;
    private static final int MOST_WAYS = 3;

    private LossesText() {}

    static void print(Analysis analysis, List<OperatingState> states, PrintWriter out) {
        List<LostReturn> losses = asked(analysis, states);
        if (losses.isEmpty()) {
            return;
        }
        out.println();
        out.println(
                "LOST RETURNS (each ground, ground wire, strap and fuse opened in turn; only what does harm, outputs taken as on)");
        TextTable table = new TextTable()
                .left("OPENED")
                .left("STATE")
                .left("INSTEAD THROUGH")
                .left("BEYOND ITS LIMIT")
                .left("FED BACKWARDS")
                .left("STOPS");
        losses.stream()
                .limit(MOST_LOSSES)
                .forEach(loss -> table.row(
                        loss.opened().value(),
                        analysis.harness().states().get(loss.state()).name(),
                        loss.detours().stream()
                                .limit(MOST_WAYS)
                                .map(way -> way.member() + " " + Formats.amps(way.afterAmps()))
                                .collect(Collectors.joining(", ")),
                        loss.overLimit().stream()
                                .limit(MOST_WAYS)
                                .map(over -> over.member() + " " + Formats.amps(over.amps()) + " of "
                                        + Formats.amps(over.limitAmps()))
                                .collect(Collectors.joining(", ")),
                        list(loss.fedBackwards()),
                        list(loss.dead())));
        table.print(out);
        if (losses.size() > MOST_LOSSES) {
            out.println("  and " + (losses.size() - MOST_LOSSES) + " more");
        }
    }

    private static String list(List<?> things) {
        return things.isEmpty() ? "-" : things.stream().map(Object::toString).collect(Collectors.joining(", "));
    }

    private static List<LostReturn> asked(Analysis analysis, List<OperatingState> states) {
        Set<StateId> ids = states.stream().map(OperatingState::id).collect(Collectors.toSet());
        return analysis.evidence().returns().losses().stream()
                .filter(loss -> ids.contains(loss.state()))
                .toList();
    }

    /** Adds the key {@code losses} for the states asked for. */
    static void write(Analysis analysis, List<OperatingState> states, JsonObjectWriter root) {
        root.array("losses", array -> asked(analysis, states)
                .forEach(loss -> array.object(item -> {
                    item.put("opened", loss.opened().value());
                    item.put(
                            "state",
                            analysis.harness().states().get(loss.state()).name());
                    item.array("detours", ways -> loss.detours()
                            .forEach(way -> ways.object(entry -> {
                                entry.put("member", way.member().value());
                                entry.put("beforeAmps", way.beforeAmps());
                                entry.put("afterAmps", way.afterAmps());
                            })));
                    item.array("overLimit", overloads -> loss.overLimit()
                            .forEach(over -> overloads.object(entry -> {
                                entry.put("member", over.member().value());
                                entry.put("amps", over.amps());
                                entry.put("limitAmps", over.limitAmps());
                                entry.put("source", over.source());
                            })));
                    item.texts(
                            "fedBackwards",
                            loss.fedBackwards().stream().map(Object::toString).toList());
                    item.texts(
                            "dead", loss.dead().stream().map(Object::toString).toList());
                })));
    }
}
