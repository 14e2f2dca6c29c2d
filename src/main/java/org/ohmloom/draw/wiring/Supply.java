package org.ohmloom.draw.wiring;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ohmloom.draw.wiring.TerminalGraph.Step;
import org.ohmloom.model.Battery;
import org.ohmloom.model.BusBar;
import org.ohmloom.model.ChassisBodyId;
import org.ohmloom.model.Component;
import org.ohmloom.model.ControlUnit;
import org.ohmloom.model.Converter;
import org.ohmloom.model.Device;
import org.ohmloom.model.GroundPoint;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Load;
import org.ohmloom.model.Pin;
import org.ohmloom.model.PinRole;
import org.ohmloom.model.Relay;
import org.ohmloom.model.Sensor;
import org.ohmloom.model.SignalClass;
import org.ohmloom.model.Strap;
import org.ohmloom.model.Wire;

/**
 * Which way current usually runs: how far every place is from the positive poles of the sources over feeds, devices and signals, and
 * how far from their negative poles over returns, ground points and bodies.
 */
final class Supply {

    private static final int BESIDE_BATTERY = 3;
    private static final int BEHIND_LOADS = 10 * TerminalGraph.FAR;
    private static final int UNFED = 1_000_000;

    private final Symbols symbols;
    private final Harness harness;
    private final TerminalGraph feeds = new TerminalGraph();
    private final TerminalGraph returns = new TerminalGraph();
    private final Map<String, Step> fed;
    private final Map<String, Step> level;
    private final Map<String, Step> returned;

    Supply(Symbols symbols) {
        this.symbols = symbols;
        this.harness = symbols.harness();
        for (Wire wire : harness.wires().all()) {
            String one = symbols.from(wire).place();
            String two = symbols.to(wire).place();
            boolean back = wire.signalClass() == SignalClass.RETURN;
            if (!back) {
                feeds.wire(one, two, wire);
            }
            if (back
                    || wire.signalClass() == SignalClass.REFERENCE_RETURN
                    || wire.signalClass() == SignalClass.SHIELD) {
                returns.wire(one, two, wire);
            }
        }
        harness.components().all().forEach(this::component);
        pairs();
        grounds();
        Map<String, Integer> plus = poles(Device.POSITIVE);
        Map<String, Step> first = feeds.from(plus);
        Map<String, Integer> all = new LinkedHashMap<>(plus);
        for (Component component : harness.components().all()) {
            if (component.device() instanceof ControlUnit) {
                for (String terminal : component.terminals()) {
                    String place = place(component, terminal);
                    if (!first.containsKey(place)) {
                        all.put(place, UNFED);
                    }
                }
            }
        }
        this.fed = all.size() == plus.size() ? first : feeds.from(all);
        all.replaceAll((place, cost) -> cost == UNFED ? UNFED : 0);
        this.level = feeds.from(all);
        this.returned = returns.from(poles(Device.NEGATIVE));
    }

    private String place(Component component, String terminal) {
        return Landing.place(symbols.component(component.id(), terminal), terminal);
    }

    private Map<String, Integer> poles(String terminal) {
        Map<String, Integer> poles = new LinkedHashMap<>();
        for (Component component : harness.components().all()) {
            if (component.device().isSource()) {
                poles.put(place(component, terminal), component.device() instanceof Battery ? 0 : BESIDE_BATTERY);
            }
        }
        return poles;
    }

    private void component(Component component) {
        Device device = component.device();
        if (device instanceof ControlUnit unit) {
            unit(component, unit);
        } else if (device instanceof BusBar bar) {
            String first = place(component, bar.terminals().get(0));
            for (String terminal : bar.terminals()) {
                feeds.passage(first, place(component, terminal), 1);
                returns.passage(first, place(component, terminal), 1);
            }
        } else if (device instanceof Sensor) {
            feeds.passage(place(component, Sensor.SUPPLY), place(component, Sensor.SIGNAL), TerminalGraph.FAR);
            feeds.passage(place(component, Sensor.SIGNAL), place(component, Sensor.RETURN), TerminalGraph.FAR);
        } else {
            for (Symbol.Way way : Glyphs.ways(device)) {
                boolean load = way.glyph() == Glyph.COIL || device instanceof Load;
                String from = place(component, way.from());
                String to = place(component, way.to());
                if (load) {
                    feeds.passage(from, to, TerminalGraph.FAR);
                } else if (way.glyph() == Glyph.DIODE) {
                    feeds.oneWay(from, to);
                } else {
                    feeds.passage(from, to, 1);
                    returns.passage(from, to, 1);
                }
            }
            if (device instanceof Converter) {
                returns.passage(place(component, Converter.IN_NEGATIVE), place(component, Converter.OUT_NEGATIVE), 1);
            }
            if (device instanceof Relay relay && relay.changeOver()) {
                feeds.passage(place(component, Relay.MAKE), place(component, Relay.BREAK), TerminalGraph.FAR);
            }
        }
        component
                .caseGround()
                .ifPresent(bolt -> returns.passage(
                        place(component, bolt.terminal()), Landing.place(symbols.ground(bolt.ground()), ""), 1));
    }

    private void unit(Component component, ControlUnit unit) {
        String inside = Landing.place(component.id().value(), "\n");
        for (Pin pin : unit.pins()) {
            String place = place(component, pin.name());
            if (pin.role() == PinRole.SUPPLY) {
                feeds.oneWay(place, inside);
            } else if (pin.role() == PinRole.LOW_SIDE_OUTPUT
                    || pin.role() == PinRole.GROUND
                    || pin.role() == PinRole.CASE) {
                feeds.passage(inside, place, BEHIND_LOADS);
            } else {
                feeds.oneWay(inside, place);
            }
            if (pin.role() == PinRole.GROUND
                    || pin.role() == PinRole.CASE
                    || pin.role() == PinRole.SENSOR_RETURN
                    || pin.role() == PinRole.LOW_SIDE_OUTPUT) {
                returns.passage(inside, place, 1);
            }
        }
    }

    private void pairs() {
        harness.connectors().all().forEach(connector -> harness.mate(connector).ifPresent(mate -> {
            if (connector.id().compareTo(mate.id()) < 0) {
                String key = connector.id().value();
                connector.cavities().forEach(cavity -> {
                    String one = Landing.place(key, connector.id() + "." + cavity.name());
                    String two = Landing.place(key, mate.id() + "." + cavity.name());
                    feeds.passage(one, two, 1);
                    returns.passage(one, two, 1);
                });
            }
        }));
    }

    private void grounds() {
        Map<ChassisBodyId, String> first = new HashMap<>();
        for (GroundPoint ground : harness.grounds().all()) {
            String place = Landing.place(symbols.ground(ground.id()), "");
            String there = first.computeIfAbsent(ground.body(), body -> place);
            if (!there.equals(place)) {
                returns.passage(there, place, 1);
            }
        }
        for (Strap strap : harness.straps().all()) {
            returns.passage(
                    Landing.place(strap.from().value(), ""),
                    Landing.place(strap.to().value(), ""),
                    1);
        }
    }

    /** Whether current usually runs along a wire from its first end to its second. */
    boolean runsForward(Wire wire) {
        String one = symbols.from(wire).place();
        String two = symbols.to(wire).place();
        if (wire.signalClass() == SignalClass.RETURN) {
            int near = cost(returned, one);
            int far = cost(returned, two);
            if (near != far) {
                return near > far;
            }
        }
        return cost(level, one) <= cost(level, two);
    }

    private static int cost(Map<String, Step> reached, String place) {
        Step step = reached.get(place);
        return step == null ? Integer.MAX_VALUE : step.cost();
    }

    /** The wire that feeds a place, if a source does. */
    Optional<Wire> feeder(String place) {
        return chain(fed, place).stream().findFirst();
    }

    /** Wires from a place back to its source, nearest first; empty when no source feeds it. */
    List<Wire> feedChain(String place) {
        return chain(fed, place);
    }

    /** Wires from a place on to the negative pole of a source, nearest first. */
    List<Wire> returnChain(String place) {
        return chain(returned, place);
    }

    /** Key of the pole a place is fed from, or returns to. */
    Optional<String> pole(String place, boolean positive) {
        Map<String, Step> reached = positive ? fed : returned;
        Step step = reached.get(place);
        String here = place;
        while (step != null && step.from().isPresent()) {
            here = step.from().get();
            step = reached.get(here);
        }
        String key = here.substring(0, here.indexOf('\n'));
        return step == null || step.cost() >= UNFED ? Optional.empty() : Optional.of(key);
    }

    private static List<Wire> chain(Map<String, Step> reached, String place) {
        List<Wire> wires = new ArrayList<>();
        Step step = reached.get(place);
        while (step != null && step.from().isPresent()) {
            step.by().ifPresent(wires::add);
            step = reached.get(step.from().get());
        }
        return wires;
    }
}
