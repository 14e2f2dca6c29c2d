package org.ohmloom.draw.wiring;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.ohmloom.model.NaturalOrder;
import org.ohmloom.model.Wire;

/**
 * Which wires are drawn together: those of one circuit name; without a name those joined by devices, splices and connectors that are
 * not shared by many. Circuits that share a load, then those that share a switch, relay, splice or fuse, are drawn as one
 * while they are small.
 */
final class WiringCircuits {

    private final Symbols symbols;
    private final int most;

    /**
     * Circuits of a harness.
     *
     * @param most wires that may be drawn as one although they are of several circuits
     */
    WiringCircuits(Symbols symbols, int most) {
        this.symbols = symbols;
        this.most = most;
    }

    List<WiringCircuit> all() {
        Map<String, List<Wire>> named = new LinkedHashMap<>();
        List<Wire> nameless = new ArrayList<>();
        for (Wire wire : symbols.harness().wires().all()) {
            Optional<String> name = wire.circuit().map(String::strip);
            if (name.isPresent()) {
                named.computeIfAbsent(name.get(), each -> new ArrayList<>()).add(wire);
            } else {
                nameless.add(wire);
            }
        }
        List<WiringCircuit> circuits = new ArrayList<>();
        named.forEach((name, wires) -> circuits.add(new WiringCircuit(List.of(name), wires, 1, 1)));
        for (List<Wire> wires : joined(nameless)) {
            circuits.add(new WiringCircuit(List.of(name(wires)), wires, 1, 1));
        }
        return merged(circuits);
    }

    private List<String> keys(Wire wire) {
        return List.of(symbols.from(wire).symbol(), symbols.to(wire).symbol());
    }

    /** Wires without a circuit by what joins them; what many circuits share joins none. */
    private List<List<Wire>> joined(List<Wire> wires) {
        int[] leader = new int[wires.size()];
        Map<String, Integer> first = new HashMap<>();
        for (int k = 0; k < leader.length; k++) {
            leader[k] = k;
            for (Landing end : List.of(symbols.from(wires.get(k)), symbols.to(wires.get(k)))) {
                Optional<String> place = tie(end);
                if (place.isPresent()) {
                    int other = leader(leader, first.computeIfAbsent(place.get(), each -> leader.length));
                    if (other == leader.length) {
                        first.put(place.get(), k);
                    } else {
                        int mine = leader(leader, k);
                        leader[Math.max(mine, other)] = Math.min(mine, other);
                    }
                }
            }
        }
        Map<Integer, List<Wire>> groups = new TreeMap<>();
        for (int k = 0; k < leader.length; k++) {
            groups.computeIfAbsent(leader(leader, k), each -> new ArrayList<>()).add(wires.get(k));
        }
        return List.copyOf(groups.values());
    }

    private static int leader(int[] leader, int wire) {
        int here = wire;
        while (here < leader.length && leader[here] != here) {
            here = leader[here];
        }
        return here;
    }

    /** What ties circuits together at an end; empty where many meet. */
    private Optional<String> tie(Landing end) {
        Symbol symbol = symbols.get(end.symbol());
        if (symbol.kind().isHub()) {
            return Optional.empty();
        }
        return Optional.of(symbol.kind() == Symbol.Kind.CONNECTOR ? pair(symbol, end) : symbol.key());
    }

    /** Both sides of an in-line pair are one place, cavity by cavity. */
    static String pair(Symbol connector, Landing end) {
        return connector.ways().stream()
                .filter(way -> way.to().equals(end.terminal()))
                .map(way -> Landing.place(connector.key(), way.from()))
                .findFirst()
                .orElse(end.place());
    }

    private String name(List<Wire> wires) {
        Set<String> loads = new TreeSet<>(NaturalOrder.INSTANCE);
        for (Wire wire : wires) {
            keys(wire).stream()
                    .map(symbols::get)
                    .filter(symbol -> symbol.kind() == Symbol.Kind.LOAD)
                    .forEach(symbol -> loads.add(symbol.title()));
        }
        if (loads.isEmpty()) {
            String first = wires.get(0).id().value();
            return wires.size() == 1
                    ? "wire " + first
                    : "wires " + first + " to " + wires.get(wires.size() - 1).id();
        }
        return String.join(", ", loads.stream().limit(4).toList()) + (loads.size() > 4 ? " and more" : "");
    }

    private record Bond(int one, int two, int strength, int wires) {}

    private List<WiringCircuit> merged(List<WiringCircuit> circuits) {
        List<WiringCircuit> all = new ArrayList<>(circuits);
        while (true) {
            Optional<Bond> best = bonds(all).stream()
                    .filter(bond -> bond.wires() <= most * bond.strength() / 2)
                    .min(Comparator.comparingInt((Bond bond) -> -bond.strength())
                            .thenComparingInt(Bond::wires)
                            .thenComparingInt(Bond::one)
                            .thenComparingInt(Bond::two));
            if (best.isEmpty()) {
                return all;
            }
            Bond bond = best.get();
            all.set(bond.one(), all.get(bond.one()).with(all.get(bond.two())));
            all.remove(bond.two());
        }
    }

    /** A load or sensor shared ties most, and larger circuits: those are drawn in parts, load by load; a fuse ties least. */
    private static int strength(Symbol symbol) {
        boolean protects = symbol.icon()
                .filter(glyph -> glyph == Glyph.FUSE || glyph == Glyph.BREAKER)
                .isPresent();
        return symbol.kind() == Symbol.Kind.LOAD ? 6 : protects ? 1 : 2;
    }

    private List<Bond> bonds(List<WiringCircuit> all) {
        Map<String, Set<Integer>> users = new TreeMap<>();
        for (int k = 0; k < all.size(); k++) {
            for (Wire wire : all.get(k).wires()) {
                for (Landing end : List.of(symbols.from(wire), symbols.to(wire))) {
                    int user = k;
                    tie(end).ifPresent(place -> users.computeIfAbsent(place, each -> new TreeSet<>())
                            .add(user));
                }
            }
        }
        List<Bond> bonds = new ArrayList<>();
        users.forEach((place, circuits) -> {
            List<Integer> there = List.copyOf(circuits);
            Symbol symbol = symbols.get(place.contains("\n") ? place.substring(0, place.indexOf('\n')) : place);
            int strength = strength(symbol);
            for (int i = 0; i < there.size(); i++) {
                for (int j = i + 1; j < there.size(); j++) {
                    int one = there.get(i);
                    int two = there.get(j);
                    int wires =
                            all.get(one).wires().size() + all.get(two).wires().size();
                    bonds.add(new Bond(one, two, strength, wires));
                }
            }
        });
        return bonds;
    }
}
