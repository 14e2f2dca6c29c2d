package org.ohmloom.draw.wiring;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ohmloom.draw.Words;
import org.ohmloom.draw.wiring.Symbol.Kind;
import org.ohmloom.model.BusBar;
import org.ohmloom.model.Cavity;
import org.ohmloom.model.Component;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.Connector;
import org.ohmloom.model.ControlUnit;
import org.ohmloom.model.Device;
import org.ohmloom.model.GroundPoint;
import org.ohmloom.model.GroundPointId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Load;
import org.ohmloom.model.Sensor;
import org.ohmloom.model.Splice;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireEnd;

/** The symbols of a harness, and which of them each end of a wire comes to stand at. */
final class Symbols {

    private final Harness harness;
    private final Map<String, Symbol> symbols = new LinkedHashMap<>();

    Symbols(Harness harness) {
        this.harness = harness;
    }

    Harness harness() {
        return harness;
    }

    /** The symbol of a key that a landing named. */
    Symbol get(String key) {
        Symbol symbol = symbols.get(key);
        if (symbol == null) {
            throw new IllegalArgumentException("no symbol of the diagram has the key " + key);
        }
        return symbol;
    }

    Landing from(Wire wire) {
        return landing(wire, wire.from(), "from");
    }

    Landing to(Wire wire) {
        return landing(wire, wire.to(), "to");
    }

    private Landing landing(Wire wire, WireEnd end, String side) {
        if (end instanceof WireEnd.AtCavity at) {
            return cavity(harness.connectors().get(at.connector()), at.cavity());
        }
        if (end instanceof WireEnd.AtTerminal at) {
            return new Landing(component(at.component(), at.terminal()), at.terminal(), at.terminal(), false);
        }
        if (end instanceof WireEnd.AtGround at) {
            return new Landing(ground(at.ground()), "", "", false);
        }
        if (end instanceof WireEnd.AtSplice at) {
            Splice splice = harness.splices().get(at.splice());
            String id = splice.id().value();
            put(new Symbol(id, Kind.SPLICE, id, id, "", named(splice.name(), id), List.of(), Optional.empty()));
            return new Landing(id, "", "", false);
        }
        String key = wire.id() + " " + side;
        put(new Symbol(key, Kind.LOOSE, wire.id().value(), "", "joined to nothing", "", List.of(), Optional.empty()));
        return new Landing(key, "", "", false);
    }

    private Landing cavity(Connector connector, String cavity) {
        String text = connector.id() + "." + cavity;
        if (connector.component().isPresent()) {
            String terminal = connector.cavity(cavity).flatMap(Cavity::terminal).orElse(text);
            String key = component(connector.component().get(), terminal);
            return new Landing(key, terminal, terminal.equals(text) ? text : text + "  " + terminal, true);
        }
        Optional<Connector> mate = harness.mate(connector);
        boolean second =
                mate.filter(other -> other.id().compareTo(connector.id()) < 0).isPresent();
        Connector first = second ? mate.orElseThrow() : connector;
        String key = first.id().value();
        if (!symbols.containsKey(key)) {
            List<Symbol.Way> ways = new ArrayList<>();
            Optional<Connector> other = harness.mate(first);
            other.ifPresent(there -> first.cavities()
                    .forEach(each -> ways.add(new Symbol.Way(
                            first.id() + "." + each.name(), there.id() + "." + each.name(), Glyph.PLUG))));
            String title = key + other.map(there -> " / " + there.id()).orElse("");
            put(new Symbol(
                    key,
                    Kind.CONNECTOR,
                    key,
                    title,
                    other.isPresent() ? "in-line" : "free end",
                    named(first.name(), key),
                    ways,
                    Optional.empty()));
        }
        return new Landing(key, text, text, true);
    }

    /** The symbol a terminal of a component belongs to. */
    String component(ComponentId id, String terminal) {
        Component component = harness.components().get(id);
        Device device = component.device();
        String name = named(component.name(), id.value());
        String remark = Words.device(device);
        if (device.isSource()) {
            boolean negative = terminal.equals(Device.NEGATIVE);
            String key = id + (negative ? " \u2212" : " +");
            put(new Symbol(key, Kind.SOURCE, id.value(), key, remark, name, List.of(), Optional.of(Glyphs.of(device))));
            return key;
        }
        Kind kind = device instanceof BusBar
                ? Kind.BAR
                : device instanceof ControlUnit
                        ? Kind.UNIT
                        : device instanceof Load || device instanceof Sensor ? Kind.LOAD : Kind.DEVICE;
        Optional<Glyph> icon =
                kind == Kind.BAR || kind == Kind.UNIT ? Optional.empty() : Optional.of(Glyphs.of(device));
        put(new Symbol(id.value(), kind, id.value(), id.value(), remark, name, Glyphs.ways(device), icon));
        return id.value();
    }

    String ground(GroundPointId id) {
        GroundPoint ground = harness.grounds().get(id);
        String body = harness.bodies().get(ground.body()).name();
        put(new Symbol(
                id.value(),
                Kind.GROUND,
                id.value(),
                id.value(),
                "",
                named(ground.name(), id.value()) + (ground.name().contains(body) ? "" : " on " + body),
                List.of(),
                Optional.empty()));
        return id.value();
    }

    private static String named(String name, String id) {
        return name.equals(id) ? "" : name;
    }

    private void put(Symbol symbol) {
        symbols.putIfAbsent(symbol.key(), symbol);
    }
}
