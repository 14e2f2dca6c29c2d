package org.ohmloom.workbench.channel;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.function.Supplier;
import org.ohmloom.model.Connector;
import org.ohmloom.model.DataBus;
import org.ohmloom.model.Harness;
import org.ohmloom.model.PartId;
import org.ohmloom.model.Splice;
import org.ohmloom.model.WireEnd;
import org.ohmloom.signal.unit.Joints;
import org.ohmloom.signal.wiring.TrunkEnds;
import org.ohmloom.tables.BusFigure;
import org.ohmloom.tables.WireTables;
import org.ohmloom.units.Unit;
import org.ohmloom.workbench.words.TypedNumbers;
import org.ohmloom.workbench.words.Words;

/** The terminations of a data bus as they are typed: between which points, of what resistance, inside a unit or a part. */
final class BusEnds {

    /** Two points a resistor can be between. */
    private record Points(WireEnd high, WireEnd low) {}

    private final Words words;
    private final Harness harness;
    private final Supplier<List<DataBus.Node>> nodes;
    private final List<DataBus.Termination> before;
    private final TypedRows rows;

    /**
     * Terminations.
     *
     * @param nodes the nodes as they are typed by now; none while one of them does not fit
     */
    BusEnds(Words words, Harness harness, List<DataBus.Termination> before, Supplier<List<DataBus.Node>> nodes) {
        this.words = words;
        this.harness = harness;
        this.nodes = nodes;
        this.before = before;
        this.rows = new TypedRows(
                words,
                "bus-ends",
                words.get("bus.ends"),
                List.of(words.get("bus.ends.where"), words.get("bus.ends.ohms"), words.get("bus.ends.part")));
        List<String> parts = new ArrayList<>(List.of(""));
        harness.parts().all().forEach(each -> parts.add(each.id().value()));
        rows.choices(2, parts);
        rows.widths(420, 120, 200);
        rows.button("bus.ends.both", this::atBothEnds);
        rows.button("bus.ends.add", () -> rows.addRow("", TypedNumbers.exact(usualOhms()), ""));
        rows.rowButtons(false);
        rows.fill(before.stream()
                .map(each -> List.of(
                        text(new Points(each.high(), each.low())),
                        TypedNumbers.exact(each.ohms()),
                        each.part().map(PartId::value).orElse("")))
                .toList());
        refresh();
    }

    TypedRows table() {
        return rows;
    }

    private static double usualOhms() {
        return WireTables.bundled().signals().figure(BusFigure.TERMINATION).value();
    }

    private String text(Points points) {
        return words.get("bus.ends.between", points.high().text(), points.low().text());
    }

    /** Offers the pins of the nodes there are by now, and splices and cavities of both lines at one place or in one connector. */
    void refresh() {
        rows.choices(0, List.copyOf(places().keySet()));
    }

    private Map<String, Points> places() {
        Map<String, Points> places = new LinkedHashMap<>();
        List<DataBus.Node> now = nodes.get();
        now.forEach(node -> put(places, inside(node)));
        Joints joints = Joints.of(harness);
        Predicate<WireEnd> onHigh = end -> now.stream().anyMatch(node -> joints.isWith(node.unit(), node.high(), end));
        Predicate<WireEnd> onLow = end -> now.stream().anyMatch(node -> joints.isWith(node.unit(), node.low(), end));
        for (Splice high : harness.splices().all()) {
            if (high.place().isPresent()) {
                List<WireEnd> lows = harness.splices().all().stream()
                        .filter(low -> low.place().equals(high.place()))
                        .map(low -> (WireEnd) new WireEnd.AtSplice(low.id()))
                        .toList();
                pairs(places, onHigh, onLow, List.of(new WireEnd.AtSplice(high.id())), lows);
            }
        }
        for (Connector connector : harness.connectors().all()) {
            List<WireEnd> cavities = connector.cavities().stream()
                    .map(cavity -> (WireEnd) new WireEnd.AtCavity(connector.id(), cavity.name()))
                    .toList();
            pairs(places, onHigh, onLow, cavities, cavities);
        }
        before.forEach(each -> put(places, each));
        return places;
    }

    /** The first of some places on the high line with the first on the low line, the second with the second, and so on. */
    private void pairs(
            Map<String, Points> places,
            Predicate<WireEnd> onHigh,
            Predicate<WireEnd> onLow,
            List<WireEnd> some,
            List<WireEnd> others) {
        List<WireEnd> highs = some.stream().filter(onHigh).toList();
        List<WireEnd> lows = others.stream().filter(onLow).toList();
        for (int k = 0; k < Math.min(highs.size(), lows.size()); k++) {
            Points points = new Points(highs.get(k), lows.get(k));
            places.put(text(points), points);
        }
    }

    private void put(Map<String, Points> places, DataBus.Termination termination) {
        Points points = new Points(termination.high(), termination.low());
        places.put(text(points), points);
    }

    private DataBus.Termination inside(DataBus.Node node) {
        return DataBus.Termination.inside(usualOhms(), node);
    }

    /** Puts the resistors where the two nodes furthest apart are; what is typed of them stays. */
    void atBothEnds() {
        List<List<String>> now = rows.rows();
        List<List<String>> both = new ArrayList<>();
        for (DataBus.Node node : TrunkEnds.of(harness, nodes.get())) {
            DataBus.Termination made = inside(node);
            String where = text(new Points(made.high(), made.low()));
            both.add(now.stream()
                    .filter(row -> row.get(0).equals(where))
                    .findFirst()
                    .orElse(List.of(where, TypedNumbers.exact(made.ohms()), "")));
        }
        rows.fill(both);
    }

    /**
     * The terminations typed.
     *
     * @throws IllegalArgumentException when one does not fit; one sentence says what would be right
     */
    List<DataBus.Termination> read() {
        Map<String, Points> places = places();
        List<DataBus.Termination> ends = new ArrayList<>();
        for (List<String> row : rows.rows()) {
            if (row.get(0).isEmpty() && row.get(2).isEmpty()) {
                continue;
            }
            Optional<Points> points = Optional.ofNullable(places.get(row.get(0)));
            ends.add(new DataBus.Termination(
                    TypedNumbers.needed(row.get(1), Unit.OHM, words.get("bus.ends.ohms")),
                    points.orElseThrow(() -> new IllegalArgumentException(words.get("bus.ends.nowhere", row.get(0))))
                            .high(),
                    points.get().low(),
                    part(row.get(2))));
        }
        return ends;
    }

    private Optional<PartId> part(String typed) {
        if (typed.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(harness.parts().all().stream()
                .map(each -> each.id())
                .filter(id -> id.value().equals(typed))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(words.get("bus.ends.no-part", typed))));
    }
}
