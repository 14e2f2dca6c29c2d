package org.ohmloom.draw;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Predicate;
import org.ohmloom.model.Component;
import org.ohmloom.model.Connector;
import org.ohmloom.model.ConnectorId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.SignalClass;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireEnd;

/** A harness without a physical layout as cards with wires between them, and the column each card belongs in. */
final class CircuitGraph {

    /**
     * A wire between two cards.
     *
     * @param wire      the wire
     * @param from      key of one card
     * @param to        key of the other
     * @param fromLabel cavity or terminal at the one
     * @param toLabel   cavity or terminal at the other
     */
    record Link(Wire wire, String from, String to, String fromLabel, String toLabel) {}

    private static final Set<SignalClass> BACK =
            Set.of(SignalClass.RETURN, SignalClass.REFERENCE_RETURN, SignalClass.SHIELD);

    private final Harness harness;
    private final CardMaker maker;
    private final Map<String, Card> cards = new LinkedHashMap<>();
    private final List<Link> links = new ArrayList<>();
    private final Map<String, Integer> columns = new LinkedHashMap<>();

    CircuitGraph(Harness harness, CardMaker maker) {
        this.harness = harness;
        this.maker = maker;
        for (Wire wire : harness.wires().all()) {
            links.add(new Link(
                    wire,
                    key(wire, wire.from(), "from"),
                    key(wire, wire.to(), "to"),
                    label(wire.from()),
                    label(wire.to())));
        }
        rank();
    }

    Map<String, Card> cards() {
        return cards;
    }

    List<Link> links() {
        return links;
    }

    int column(String key) {
        return columns.getOrDefault(key, 0);
    }

    /** Cards of components and connectors that no wire ends on. */
    List<Card> unwired() {
        List<Card> cardsLeft = new ArrayList<>();
        for (Component component : harness.components().all()) {
            if (!cards.containsKey(component.id().value())) {
                cardsLeft.add(component(component));
            }
        }
        for (Connector connector : harness.connectors().all()) {
            if (connector.component().isEmpty()
                    && !cards.containsKey(owner(connector.id()))
                    && owner(connector.id()).equals(connector.id().value())) {
                cardsLeft.add(maker.connector(connector, mate(connector)));
            }
        }
        return cardsLeft;
    }

    /** Sources stand on the left, what they feed to the right of them step by step, grounds last. */
    private void rank() {
        Deque<String> start = new ArrayDeque<>();
        for (Component component : harness.components().all()) {
            String id = component.id().value();
            if (component.device().isSource() && cards.containsKey(id)) {
                columns.put(id, 0);
                start.add(id);
            }
        }
        spread(start, link -> !BACK.contains(link.wire().signalClass()));
        spread(new ArrayDeque<>(columns.keySet()), link -> true);
        for (String key : cards.keySet()) {
            if (!columns.containsKey(key)) {
                columns.put(key, 0);
                spread(new ArrayDeque<>(List.of(key)), link -> true);
            }
        }
        int last = columns.entrySet().stream()
                .filter(each -> !isGround(each.getKey()))
                .mapToInt(Map.Entry::getValue)
                .max()
                .orElse(0);
        cards.keySet().stream().filter(this::isGround).forEach(key -> columns.put(key, last + 1));
    }

    private boolean isGround(String key) {
        Card card = cards.get(key);
        return card != null && card.kind() == Card.Kind.GROUND;
    }

    private void spread(Deque<String> waiting, Predicate<Link> along) {
        Map<String, List<String>> next = new TreeMap<>();
        links.stream().filter(along).forEach(link -> {
            next.computeIfAbsent(link.from(), each -> new ArrayList<>()).add(link.to());
            next.computeIfAbsent(link.to(), each -> new ArrayList<>()).add(link.from());
        });
        while (!waiting.isEmpty()) {
            String here = waiting.remove();
            for (String there : next.getOrDefault(here, List.of())) {
                if (!columns.containsKey(there) && !isGround(there)) {
                    columns.put(there, column(here) + 1);
                    waiting.add(there);
                }
            }
        }
    }

    private String key(Wire wire, WireEnd end, String side) {
        if (end instanceof WireEnd.AtCavity at) {
            String owner = owner(at.connector());
            Connector connector = harness.connectors().get(at.connector());
            cards.computeIfAbsent(owner, id -> connector
                    .component()
                    .map(component -> component(harness.components().get(component)))
                    .orElseGet(() -> {
                        Connector first = harness.connectors().get(new ConnectorId(owner));
                        return maker.connector(first, mate(first));
                    }));
            return owner;
        }
        if (end instanceof WireEnd.AtTerminal at) {
            String id = at.component().value();
            cards.computeIfAbsent(id, key -> component(harness.components().get(at.component())));
            return id;
        }
        if (end instanceof WireEnd.AtGround at) {
            String id = at.ground().value();
            cards.computeIfAbsent(id, key -> maker.ground(harness.grounds().get(at.ground())));
            return id;
        }
        if (end instanceof WireEnd.AtSplice at) {
            String id = at.splice().value();
            cards.computeIfAbsent(id, key -> maker.splice(harness.splices().get(at.splice())));
            return id;
        }
        String key = wire.id().value() + " " + side;
        cards.put(key, maker.loose(wire));
        return key;
    }

    /** The card a connector belongs to: its component, or the first of an in-line pair. */
    private String owner(ConnectorId id) {
        Connector connector = harness.connectors().get(id);
        return connector
                .component()
                .map(component -> component.value())
                .or(() -> mate(connector)
                        .filter(mate -> mate.id().compareTo(id) < 0)
                        .map(mate -> mate.id().value()))
                .orElse(id.value());
    }

    private Optional<Connector> mate(Connector connector) {
        return harness.mate(connector);
    }

    private Card component(Component component) {
        return maker.component(component, List.of(), List.of());
    }

    private static String label(WireEnd end) {
        if (end instanceof WireEnd.AtCavity at) {
            return at.text();
        }
        return end instanceof WireEnd.AtTerminal at ? at.terminal() : "";
    }
}
