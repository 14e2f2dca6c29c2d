package org.ohmloom.workbench.channel;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ohmloom.model.Component;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.ControlUnit;
import org.ohmloom.model.DataBus;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Pin;
import org.ohmloom.model.PinRole;
import org.ohmloom.workbench.words.Words;

/** The nodes of a data bus as they are typed: unit, its pins for both lines, its address. */
final class BusNodes {

    private final Words words;
    private final Harness harness;
    private final TypedRows rows;

    BusNodes(Words words, Harness harness, List<DataBus.Node> nodes) {
        this.words = words;
        this.harness = harness;
        this.rows = new TypedRows(
                words,
                "bus-nodes",
                words.get("bus.nodes"),
                List.of(
                        words.get("bus.nodes.unit"),
                        words.get("bus.nodes.high"),
                        words.get("bus.nodes.low"),
                        words.get("bus.nodes.address")));
        rows.choices(0, units(harness).stream().map(each -> each.id().value()).toList());
        rows.button("bus.nodes.add", this::add);
        rows.rowButtons(true);
        rows.fill(nodes.stream().map(BusNodes::row).toList());
        rows.onChange(this::pins);
    }

    TypedRows table() {
        return rows;
    }

    private static List<String> row(DataBus.Node node) {
        return List.of(
                node.unit().value(),
                node.high(),
                node.low(),
                node.address().map(String::valueOf).orElse(""));
    }

    /** Units that have pins for both lines. */
    private static List<Component> units(Harness harness) {
        return harness.components().all().stream()
                .filter(each -> node(each).isPresent())
                .toList();
    }

    /** A unit as a node by its first bus pins. */
    private static Optional<DataBus.Node> node(Component component) {
        if (!(component.device() instanceof ControlUnit unit)) {
            return Optional.empty();
        }
        Optional<Pin> high = unit.pinsOf(PinRole.BUS_HIGH).findFirst();
        Optional<Pin> low = unit.pinsOf(PinRole.BUS_LOW).findFirst();
        return high.isPresent() && low.isPresent()
                ? Optional.of(DataBus.Node.of(
                        component.id(), high.get().name(), low.get().name()))
                : Optional.empty();
    }

    /** Units with bus pins that are on no bus, as nodes of a new one. */
    static List<DataBus.Node> free(Harness harness) {
        return units(harness).stream()
                .flatMap(each -> node(each).stream())
                .filter(each -> harness.buses().all().stream()
                        .flatMap(bus -> bus.nodes().stream())
                        .noneMatch(node -> node.unit().equals(each.unit())))
                .toList();
    }

    private void add() {
        List<String> there = rows.rows().stream().map(row -> row.get(0)).toList();
        List<DataBus.Node> all = new ArrayList<>(free(harness));
        units(harness).forEach(each -> all.add(node(each).orElseThrow()));
        Optional<DataBus.Node> next = all.stream()
                .filter(each -> !there.contains(each.unit().value()))
                .findFirst();
        rows.addRow(next.map(BusNodes::row).orElse(List.of("", "", "", "")).toArray(new String[0]));
    }

    /** Fills the pins in where another unit is chosen. */
    private void pins(int row) {
        if (row < 0 || row >= rows.rows().size()) {
            return;
        }
        List<String> cells = rows.rows().get(row);
        units(harness).stream()
                .filter(each -> each.id().value().equals(cells.get(0)))
                .findFirst()
                .filter(each -> each.device() instanceof ControlUnit unit
                        && (unit.pin(cells.get(1)).isEmpty()
                                || unit.pin(cells.get(2)).isEmpty()))
                .flatMap(BusNodes::node)
                .ifPresent(node -> {
                    rows.put(row, 1, node.high());
                    rows.put(row, 2, node.low());
                });
    }

    /**
     * The nodes typed.
     *
     * @throws IllegalArgumentException when one does not fit; one sentence says what would be right
     */
    List<DataBus.Node> read() {
        List<DataBus.Node> nodes = new ArrayList<>();
        for (List<String> row : rows.rows()) {
            if (row.stream().allMatch(String::isEmpty)) {
                continue;
            }
            ControlUnit unit = unit(row.get(0));
            for (String pin : row.subList(1, 3)) {
                if (unit.pin(pin).isEmpty()) {
                    throw new IllegalArgumentException(words.get("bus.nodes.no-pin", row.get(0), pin));
                }
            }
            nodes.add(new DataBus.Node(new ComponentId(row.get(0)), row.get(1), row.get(2), address(row)));
        }
        return nodes;
    }

    private ControlUnit unit(String id) {
        return units(harness).stream()
                .filter(each -> each.id().value().equals(id))
                .map(each -> (ControlUnit) each.device())
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(words.get("bus.nodes.no-unit", id)));
    }

    private Optional<Integer> address(List<String> row) {
        return row.get(3).isEmpty()
                ? Optional.empty()
                : Optional.of(BusText.whole(words, row.get(3), words.get("bus.nodes.address")));
    }
}
