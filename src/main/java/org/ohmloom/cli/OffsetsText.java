package org.ohmloom.cli;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.ground.Offset;
import org.ohmloom.ground.OffsetShare;
import org.ohmloom.ground.ReferencePoint;
import org.ohmloom.model.OperatingState;
import org.ohmloom.model.StateId;
import org.ohmloom.store.JsonObjectWriter;
import org.ohmloom.units.Formats;

/** Offsets of reference points, as a table of the worst state of each and as JSON. */
final class OffsetsText {

    private static final int MOST_POINTS = 30;
    private static final int MOST_SHARES = 3;

    private OffsetsText() {}

    static void print(Analysis analysis, List<OperatingState> states, PrintWriter out) {
        Map<ReferencePoint, Offset> worst = new LinkedHashMap<>();
        asked(analysis, states)
                .forEach(offset -> worst.merge(
                        offset.point(), offset, (one, other) -> other.worstVolts() > one.worstVolts() ? other : one));
        if (worst.isEmpty()) {
            return;
        }
        out.println();
        out.println("OFFSETS (each reference point in its worst state, and who makes the mean: shares sum to it)");
        TextTable table = new TextTable()
                .left("POINT")
                .left("AGAINST")
                .right("MEAN")
                .right("RIPPLE")
                .left("STATE")
                .left("LARGEST SHARES");
        List<Offset> ordered = new ArrayList<>(worst.values());
        ordered.sort(Comparator.comparingDouble(offset -> -offset.worstVolts()));
        for (Offset offset : ordered.subList(0, Math.min(MOST_POINTS, ordered.size()))) {
            table.row(
                    offset.point().words().english(),
                    offset.point().against().value(),
                    Formats.volts(offset.volts()),
                    offset.rippleVolts() == 0 ? "-" : Formats.volts(offset.rippleVolts()),
                    analysis.harness().states().get(offset.state()).name(),
                    offset.shares().stream()
                            .limit(MOST_SHARES)
                            .map(OffsetsText::words)
                            .collect(Collectors.joining(", ")));
        }
        table.print(out);
        if (ordered.size() > MOST_POINTS) {
            out.println("  and " + (ordered.size() - MOST_POINTS) + " more points with less");
        }
        analysis.evidence().returns().unjudged().forEach(each -> out.println("  " + each.sentence()));
    }

    private static String words(OffsetShare share) {
        String words = share.cause().value() + " " + Formats.volts(share.volts());
        if (share.rippleVolts() > 0) {
            words += " with " + Formats.volts(share.rippleVolts()) + " ripple";
        }
        return share.switchedOffVolts().isPresent()
                ? words + " (switched off: "
                        + Formats.volts(share.switchedOffVolts().getAsDouble()) + ")"
                : words;
    }

    private static List<Offset> asked(Analysis analysis, List<OperatingState> states) {
        SortedSet<StateId> ids = states.stream().map(OperatingState::id).collect(Collectors.toCollection(TreeSet::new));
        return analysis.evidence().returns().offsets().stream()
                .filter(offset -> ids.contains(offset.state()))
                .toList();
    }

    /** Adds the key {@code offsets} for the states asked for. */
    static void write(Analysis analysis, List<OperatingState> states, JsonObjectWriter root) {
        root.array("offsets", array -> asked(analysis, states)
                .forEach(offset -> array.object(item -> {
                    item.put("point", offset.point().at().value());
                    item.put("kind", offset.point().kind().name());
                    item.put("owner", offset.point().owner().value());
                    item.put(
                            "state",
                            analysis.harness().states().get(offset.state()).name());
                    item.put("volts", offset.volts());
                    item.put("rippleVolts", offset.rippleVolts());
                    item.put("reference", offset.point().reference().value());
                    item.put("against", offset.point().against().value());
                    item.array("shares", shares -> offset.shares()
                            .forEach(share -> shares.object(entry -> share(entry, share))));
                })));
    }

    private static void share(JsonObjectWriter entry, OffsetShare share) {
        entry.put("cause", share.cause().value());
        entry.put("amps", share.amps());
        entry.put("volts", share.volts());
        entry.put("rippleVolts", share.rippleVolts());
        entry.put("switchedOffVolts", share.switchedOffVolts());
    }
}
