package org.ohmloom.draw.wiring;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Wire;

/** A harness as the wiring diagram sees it: its symbols, the wires at each, and which way current usually runs. */
final class Wiring {

    private final Symbols symbols;
    private final Supply supply;
    private final Map<String, List<Wire>> at = new HashMap<>();

    Wiring(Harness harness) {
        this.symbols = new Symbols(harness);
        this.supply = new Supply(symbols);
        for (Wire wire : harness.wires().all()) {
            String from = symbols.from(wire).symbol();
            String to = symbols.to(wire).symbol();
            at.computeIfAbsent(from, key -> new ArrayList<>()).add(wire);
            if (!from.equals(to)) {
                at.computeIfAbsent(to, key -> new ArrayList<>()).add(wire);
            }
        }
    }

    Symbols symbols() {
        return symbols;
    }

    Supply supply() {
        return supply;
    }

    /** Wires at a symbol, in the order of their ids. */
    List<Wire> wiresAt(String symbol) {
        return at.getOrDefault(symbol, List.of());
    }
}
