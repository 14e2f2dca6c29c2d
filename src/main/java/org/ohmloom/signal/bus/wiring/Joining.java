package org.ohmloom.signal.bus.wiring;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ohmloom.graph.PointId;
import org.ohmloom.model.DataBus;
import org.ohmloom.model.ElementId;
import org.ohmloom.signal.SignalTexts;

/** Whether the lines of a bus lead where they should: every node's high pin to the high line, its low pin to the low line, no ring. */
final class Joining {

    static final String SOURCE = "ISO 11898-2, bus of two lines (from memory)";

    private final DataBus bus;
    private final LineTree high;
    private final LineTree low;
    private final Map<DataBus.Node, PointId> highs;
    private final Map<DataBus.Node, PointId> lows;

    Joining(
            DataBus bus,
            LineTree high,
            LineTree low,
            Map<DataBus.Node, PointId> highs,
            Map<DataBus.Node, PointId> lows) {
        this.bus = bus;
        this.high = high;
        this.low = low;
        this.highs = highs;
        this.lows = lows;
    }

    boolean isJoined(DataBus.Node node) {
        return on(high, highs, node) && on(low, lows, node);
    }

    List<BusProblem> problems() {
        List<BusProblem> problems = new ArrayList<>();
        boolean shorted = lows.values().stream().anyMatch(high::has)
                && highs.values().stream().filter(high::has).anyMatch(low::has);
        if (shorted) {
            problems.add(BusProblem.of(
                    BusProblem.Kind.SHORTED, SignalTexts.text("bus.shorted", bus.id()), List.of(), SOURCE));
            return problems;
        }
        for (DataBus.Node node : bus.nodes()) {
            if (isJoined(node)) {
                continue;
            }
            boolean swapped = on(low, highs, node) || on(high, lows, node);
            String notJoined = on(high, highs, node)
                    ? "bus.low-not-joined"
                    : on(low, lows, node) ? "bus.high-not-joined" : "bus.not-joined";
            problems.add(
                    swapped
                            ? BusProblem.of(
                                    BusProblem.Kind.SWAPPED,
                                    SignalTexts.text("bus.swapped", bus.id(), node.unit()),
                                    List.of(node.unit()),
                                    SOURCE)
                            : BusProblem.of(
                                    BusProblem.Kind.NOT_JOINED,
                                    SignalTexts.text(notJoined, node.unit(), bus.id()),
                                    List.of(node.unit()),
                                    SOURCE));
        }
        for (LineTree line : List.of(high, low)) {
            if (!line.closing().isEmpty()) {
                List<ElementId> closing = line.closing().stream()
                        .flatMap(branch -> branch.element().stream())
                        .distinct()
                        .toList();
                problems.add(BusProblem.of(
                        BusProblem.Kind.LOOP,
                        SignalTexts.text(line == high ? "bus.high-ring" : "bus.low-ring", bus.id(), closing.get(0)),
                        closing,
                        SOURCE));
            }
        }
        return problems;
    }

    private static boolean on(LineTree line, Map<DataBus.Node, PointId> pins, DataBus.Node node) {
        return Optional.ofNullable(pins.get(node)).filter(line::has).isPresent();
    }
}
