package org.ohmloom.draw.wiring;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.ohmloom.model.CaseGround;
import org.ohmloom.model.Component;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.Device;
import org.ohmloom.model.Wire;

/** Symbols and lines of one circuit, with shortened ways to source and return where those are drawn with another. */
final class CircuitLinks {

    private final Symbols symbols;
    private final Supply supply;
    private final Map<String, Symbol> nodes = new LinkedHashMap<>();
    private final Map<String, List<Remark>> also = new LinkedHashMap<>();
    private final Map<String, Reference> references = new LinkedHashMap<>();
    private final List<Link> links = new ArrayList<>();
    private final Set<Wire> drawn;

    CircuitLinks(WiringCircuit circuit, Wiring wiring) {
        this.symbols = wiring.symbols();
        this.supply = wiring.supply();
        this.drawn = new LinkedHashSet<>(circuit.wires());
        circuit.wires().forEach(this::wire);
        new Turning(symbols, links).turn();
        new ArrayList<>(nodes.keySet()).forEach(this::bolted);
        for (Symbol symbol : new LinkedHashSet<>(nodes.values())) {
            new Boundary(symbol, wiring, this).add();
        }
    }

    Map<String, Symbol> nodes() {
        return nodes;
    }

    List<Link> links() {
        return links;
    }

    Optional<Reference> reference(String key) {
        return Optional.ofNullable(references.get(key));
    }

    List<Remark> also(String key) {
        return also.getOrDefault(key, List.of());
    }

    boolean draws(Wire wire) {
        return drawn.contains(wire);
    }

    Set<Wire> wires() {
        return drawn;
    }

    private void wire(Wire wire) {
        Landing from = symbols.from(wire);
        Landing to = symbols.to(wire);
        if (!supply.runsForward(wire)) {
            Landing other = from;
            from = to;
            to = other;
        }
        String left = node(from);
        String right = node(to);
        if (left.equals(right)) {
            right = left + "\tagain";
            nodes.putIfAbsent(right, symbols.get(to.symbol()));
        }
        links.add(new Link(wire.id().value(), Optional.of(wire), left, port(from), right, port(to)));
    }

    private static Port port(Landing landing) {
        return new Port(landing.terminal(), landing.label(), landing.plugged());
    }

    private String node(String key) {
        nodes.putIfAbsent(key, symbols.get(key));
        return key;
    }

    /** The node of a landing; each pair of cavities of an in-line connector has one until columns are known. */
    private String node(Landing landing) {
        Symbol symbol = symbols.get(landing.symbol());
        String key = symbol.ways().stream()
                .filter(way -> symbol.kind() == Symbol.Kind.CONNECTOR)
                .filter(way -> way.from().equals(landing.terminal()) || way.to().equals(landing.terminal()))
                .findFirst()
                .map(way -> symbol.key() + "\t" + way.from())
                .orElse(symbol.key());
        nodes.putIfAbsent(key, symbol);
        return key;
    }

    /** The key of the symbol a node shows. */
    static String symbolOf(String node) {
        int tab = node.indexOf('\t');
        return tab < 0 ? node : node.substring(0, tab);
    }

    /** A terminal bolted to a ground point without a wire. */
    private void bolted(String key) {
        Symbol symbol = symbols.get(symbolOf(key));
        Optional<Component> component = symbols.harness().components().find(new ComponentId(symbol.element()));
        Optional<CaseGround> bolt = component.flatMap(Component::caseGround);
        if (component.isEmpty() || bolt.isEmpty() || key.contains("\t")) {
            return;
        }
        String terminal = bolt.get().terminal();
        boolean pole = component.get().device().isSource() && terminal.equals(Device.NEGATIVE);
        String own = symbols.component(component.get().id(), terminal);
        if (!own.equals(key) && (nodes.containsKey(own) || !pole)) {
            return;
        }
        String ground = node(symbols.ground(bolt.get().ground()));
        Port at = new Port(terminal, terminal, false);
        Port there = new Port("", "", false);
        String id = "bolt " + key;
        links.add(
                pole
                        ? new Link(id, Optional.empty(), ground, there, node(own), at)
                        : new Link(id, Optional.empty(), node(own), at, ground, there));
    }

    void remark(String key, Remark remark) {
        also.computeIfAbsent(key, each -> new ArrayList<>()).add(remark);
    }

    /** A shortened way to or from a terminal of a symbol. */
    void reference(Landing at, Reference reference) {
        String key = node(at);
        String own = "reference " + references.size();
        references.put(own, reference);
        Symbol symbol = new Symbol(
                own,
                Symbol.Kind.REFERENCE,
                symbols.get(at.symbol()).element(),
                "",
                "",
                "",
                List.of(),
                Optional.empty());
        nodes.put(own, symbol);
        Port there = new Port("", "", false);
        links.add(
                reference.onLeft()
                        ? new Link(own, Optional.empty(), own, there, key, port(at))
                        : new Link(own, Optional.empty(), key, port(at), own, there));
    }
}
