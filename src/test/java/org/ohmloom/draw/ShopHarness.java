package org.ohmloom.draw;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.Set;
import java.util.stream.Stream;
import org.ohmloom.model.Battery;
import org.ohmloom.model.Breakout;
import org.ohmloom.model.BreakoutId;
import org.ohmloom.model.BundleSegment;
import org.ohmloom.model.BusBar;
import org.ohmloom.model.Cavity;
import org.ohmloom.model.ChassisBody;
import org.ohmloom.model.ChassisBodyId;
import org.ohmloom.model.ChassisRule;
import org.ohmloom.model.Component;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.Connector;
import org.ohmloom.model.ConnectorId;
import org.ohmloom.model.ControlUnit;
import org.ohmloom.model.DesignRules;
import org.ohmloom.model.Device;
import org.ohmloom.model.Draw;
import org.ohmloom.model.Element;
import org.ohmloom.model.GroundPoint;
import org.ohmloom.model.GroundPointId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Load;
import org.ohmloom.model.OperatingState;
import org.ohmloom.model.Pin;
import org.ohmloom.model.PinRole;
import org.ohmloom.model.Place;
import org.ohmloom.model.ProtectiveDevice;
import org.ohmloom.model.Relay;
import org.ohmloom.model.SegmentId;
import org.ohmloom.model.Sensor;
import org.ohmloom.model.SignalClass;
import org.ohmloom.model.Splice;
import org.ohmloom.model.SpliceId;
import org.ohmloom.model.Switch;
import org.ohmloom.model.TitleBlock;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireColour;
import org.ohmloom.model.WireEnd;
import org.ohmloom.units.Gauge;
import org.ohmloom.units.GaugeSystem;

/**
 * A harness as a shop gets it, grown at random to a count of wires: fuses on a bar, switches and relays, bulkhead pairs, splices, loads
 * and sensors with connectors, a control unit, ground points, all on a tree of bundle segments. The last circuit is unfinished
 * where the count ends within it. Everything is invented.
 */
public final class ShopHarness {

    private static final double[] SIZES_MM2 = {1.5, 2.5, 4, 6};
    private static final double HEAVY_MM2 = 50;
    private static final double SIGNAL_MM2 = 0.5;
    private static final String[] COLOURS = {"RD", "BK", "YEGN", "BUWH", "OG", "BNRD", "GY", "VTWHBK"};
    private static final String[] WORDS = {"pump", "fan", "lamp", "valve", "heater", "horn", "winch", "sensor", "radio"
    };

    private final Random random;
    private final int most;
    private final boolean sized;
    private final Map<String, Element> grown = new LinkedHashMap<>();
    private final List<BreakoutId> breakouts = new ArrayList<>();
    private final List<String> rails = new ArrayList<>(List.of("in"));
    private final List<Pin> pins = new ArrayList<>();
    private final List<Cavity> bulkhead = new ArrayList<>();
    private final List<Cavity> unit = new ArrayList<>();
    private int wires;
    private int number;
    private Optional<String> circuit = Optional.empty();

    private ShopHarness(long seed, int most, boolean sized) {
        this.random = new Random(seed);
        this.most = most;
        this.sized = sized;
    }

    /** The harness of a seed with so many wires, at least 10. */
    public static Harness of(long seed, int wires) {
        return new ShopHarness(seed, wires, false).harness();
    }

    /** The same with a size at every wire, so that none has to be chosen. */
    public static Harness sized(long seed, int wires) {
        return new ShopHarness(seed, wires, true).harness();
    }

    private Harness harness() {
        DesignRules rules = new DesignRules(
                "road-vehicle", 12, 0.03, GaugeSystem.METRIC, "ISO 6722-1 class B", Optional.empty(), 30);
        tree();
        put(new ChassisBody(
                new ChassisBodyId("CB"), "Frame", false, List.of(), Optional.of(new ChassisRule(0.001, "invented"))));
        int grounds = 1 + most / 60;
        for (int k = 1; k <= grounds; k++) {
            put(new GroundPoint(
                    new GroundPointId("G" + k),
                    name("Ground point"),
                    new ChassisBodyId("CB"),
                    0.0005,
                    Optional.of(at()),
                    Optional.empty(),
                    Optional.empty(),
                    false,
                    Optional.empty()));
        }
        component("BT1", new Battery(12.6, 0.01, 90), breakouts.get(0));
        component("F0", fuse(150), breakouts.get(0));
        circuit = Optional.of("main");
        wire(terminal("BT1", "+"), terminal("F0", "1"), SignalClass.FEED);
        wire(terminal("F0", "2"), terminal("BB1", "in"), SignalClass.FEED);
        wire(terminal("BT1", "-"), ground(), SignalClass.RETURN);
        pins.add(Pin.of("SUP", PinRole.SUPPLY));
        pins.add(Pin.of("GND", PinRole.GROUND));
        unit.add(cavity("1", Optional.of("SUP")));
        unit.add(cavity("2", Optional.of("GND")));
        wire(rail(), unitEnd(0), SignalClass.FEED);
        wire(unitEnd(1), ground(), SignalClass.RETURN);
        while (wires < most) {
            number++;
            circuit = random.nextInt(3) == 0 ? Optional.empty() : Optional.of(word() + " " + number);
            if (random.nextInt(4) == 0) {
                sensors();
            } else {
                loads();
            }
        }
        finish();
        OperatingState running = OperatingState.of("running", "Everything on", OperatingState.EngineMode.OFF);
        return Harness.empty(TitleBlock.of("Shop harness of " + most + " wires", "EX-S-" + most), rules)
                .withAll(grown.values())
                .with(running);
    }

    private void tree() {
        int count = 2 + most / 12;
        for (int k = 1; k <= count; k++) {
            BreakoutId id = new BreakoutId("B" + k);
            put(new Breakout(id, name("Branch"), Optional.empty()));
            if (k > 1) {
                BreakoutId from = breakouts.get(Math.max(0, (k - 2) / 4 - random.nextInt(2)));
                put(new BundleSegment(
                        new SegmentId("SG" + k),
                        from,
                        id,
                        0.2 + 2 * random.nextDouble(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty()));
            }
            breakouts.add(id);
        }
    }

    /** A fuse, then what switches, then what is fed, then the way back. */
    private void loads() {
        String fuse = "F" + number;
        component(fuse, fuse(5 + 5 * random.nextInt(2)), breakouts.get(0));
        wire(rail(), terminal(fuse, "1"), SignalClass.FEED);
        WireEnd here = terminal(fuse, "2");
        if (random.nextInt(2) == 0) {
            here = throughBulkhead(here, SignalClass.FEED);
        }
        SignalClass carries = SignalClass.FEED;
        int kind = random.nextInt(3);
        if (kind == 0) {
            String hand = "S" + number;
            component(hand, new Switch(List.of("2"), 0.005, 20), at());
            wire(here, terminal(hand, "1"), SignalClass.FEED);
            here = terminal(hand, "2");
            carries = SignalClass.SWITCHED_OUTPUT;
        } else if (kind == 1) {
            String relay = "K" + number;
            component(relay, new Relay(90, 8, 2, 0.005, 30, false), at());
            plug("XK" + number, relay, List.of("30", "87", "85", "86"));
            wire(here, in("XK" + number, 1), SignalClass.FEED);
            wire(here, in("XK" + number, 4), SignalClass.FEED);
            wire(in("XK" + number, 3), ground(), SignalClass.RETURN);
            here = in("XK" + number, 2);
            carries = SignalClass.SWITCHED_OUTPUT;
        }
        int count = 1 + random.nextInt(4);
        if (count > 1) {
            WireEnd splice = splice("SP" + number);
            wire(here, splice, carries);
            here = splice;
        }
        for (int k = 1; k <= count; k++) {
            String load = "L" + number + "-" + k;
            component(load, Load.of(new Draw.Resistive(0.5 + 3 * random.nextDouble(), 12)), at());
            plug("X" + number + "-" + k, load, List.of("+", "-"));
            wire(here, in("X" + number + "-" + k, 1), carries);
            wire(in("X" + number + "-" + k, 2), ground(), SignalClass.RETURN);
        }
    }

    /** Sensors on the control unit: a common supply and return over splices, a signal each. */
    private void sensors() {
        int count = 1 + random.nextInt(4);
        WireEnd supply = splice("SPR" + number);
        WireEnd back = splice("SPS" + number);
        wire(pin("REF" + number, PinRole.REFERENCE_SUPPLY), supply, SignalClass.REFERENCE_SUPPLY);
        wire(pin("SRET" + number, PinRole.SENSOR_RETURN), back, SignalClass.REFERENCE_RETURN);
        for (int k = 1; k <= count; k++) {
            String sensor = "Q" + number + "-" + k;
            String plug = "XQ" + number + "-" + k;
            component(sensor, new Sensor(Sensor.Kind.RATIOMETRIC, 0.01, OptionalDouble.empty()), at());
            plug(plug, sensor, List.of("supply", "return", "signal"));
            wire(supply, in(plug, 1), SignalClass.REFERENCE_SUPPLY);
            wire(back, in(plug, 2), SignalClass.REFERENCE_RETURN);
            wire(in(plug, 3), pin("AN" + number + "-" + k, PinRole.ANALOGUE_INPUT), SignalClass.ANALOGUE_SIGNAL);
        }
    }

    private void finish() {
        while (rails.size() < 2) {
            rails.add(String.valueOf(rails.size()));
        }
        component("BB1", new BusBar(rails, 0.0001), breakouts.get(0));
        component("U1", new ControlUnit(pins, 0.2, OptionalDouble.of(0.01), OptionalDouble.empty()), at());
        put(connector("XU1", Optional.of("U1"), Optional.empty(), unit));
        if (!bulkhead.isEmpty()) {
            put(connector("XA", Optional.empty(), Optional.of("XB"), bulkhead));
            put(connector("XB", Optional.empty(), Optional.of("XA"), bulkhead));
        }
    }

    private WireEnd throughBulkhead(WireEnd here, SignalClass carries) {
        String cavity = String.valueOf(bulkhead.size() + 1);
        bulkhead.add(cavity(cavity, Optional.empty()));
        wire(here, new WireEnd.AtCavity(new ConnectorId("XA"), cavity), carries);
        return new WireEnd.AtCavity(new ConnectorId("XB"), cavity);
    }

    private WireEnd rail() {
        String name = String.valueOf(rails.size());
        rails.add(name);
        return terminal("BB1", name);
    }

    private WireEnd pin(String name, PinRole role) {
        pins.add(
                role == PinRole.REFERENCE_SUPPLY
                        ? new Pin(
                                name,
                                role,
                                Set.of(),
                                OptionalDouble.of(0.2),
                                OptionalDouble.empty(),
                                OptionalDouble.of(5),
                                OptionalDouble.empty(),
                                OptionalDouble.empty())
                        : Pin.of(name, role));
        unit.add(cavity(String.valueOf(unit.size() + 1), Optional.of(name)));
        return unitEnd(unit.size() - 1);
    }

    private static WireEnd unitEnd(int index) {
        return new WireEnd.AtCavity(new ConnectorId("XU1"), String.valueOf(index + 1));
    }

    private WireEnd splice(String id) {
        int segment = 2 + random.nextInt(breakouts.size() - 1);
        put(new Splice(
                new SpliceId(id),
                name("Splice"),
                0.001,
                Optional.of(new Place.OnSegment(new SegmentId("SG" + segment), 0.1)),
                Optional.empty(),
                false,
                Optional.empty()));
        return new WireEnd.AtSplice(new SpliceId(id));
    }

    private WireEnd ground() {
        long count = grown.keySet().stream().filter(id -> id.matches("G\\d+")).count();
        return new WireEnd.AtGround(new GroundPointId("G" + (1 + random.nextInt((int) count))));
    }

    private void plug(String id, String component, List<String> terminals) {
        List<Cavity> cavities = new ArrayList<>();
        terminals.forEach(terminal -> cavities.add(cavity(String.valueOf(cavities.size() + 1), Optional.of(terminal))));
        put(connector(id, Optional.of(component), Optional.empty(), cavities));
    }

    private static Cavity cavity(String name, Optional<String> terminal) {
        return new Cavity(name, terminal, Optional.empty(), Optional.empty(), false);
    }

    private Connector connector(String id, Optional<String> component, Optional<String> mate, List<Cavity> cavities) {
        return new Connector(
                new ConnectorId(id),
                name("Plug"),
                component.map(ComponentId::new),
                mate.map(ConnectorId::new),
                Optional.of(component
                        .flatMap(each -> ((Component) grown.get(each)).at())
                        .orElse(breakouts.get(0))),
                cavities,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                OptionalDouble.empty(),
                Optional.empty(),
                false,
                Optional.empty());
    }

    private static ProtectiveDevice fuse(double amps) {
        return new ProtectiveDevice(ProtectiveDevice.Kind.FUSE, "ISO 8820-3 type C", amps, OptionalDouble.empty());
    }

    private void component(String id, Device device, BreakoutId at) {
        put(new Component(
                new ComponentId(id),
                name(word()),
                device,
                Optional.empty(),
                Optional.empty(),
                Optional.of(at),
                Optional.empty(),
                false,
                Optional.empty()));
    }

    private static WireEnd terminal(String component, String terminal) {
        return new WireEnd.AtTerminal(new ComponentId(component), terminal);
    }

    private static WireEnd in(String connector, int cavity) {
        return new WireEnd.AtCavity(new ConnectorId(connector), String.valueOf(cavity));
    }

    private void wire(WireEnd from, WireEnd to, SignalClass carries) {
        if (wires == most) {
            return;
        }
        Wire plain = Wire.of("W" + ++wires, from, to, carries);
        boolean open = random.nextInt(12) == 0 && !sized;
        put(new Wire(
                plain.id(),
                from,
                to,
                open ? Optional.empty() : Optional.of(Gauge.metric(areaMm2(from, to, carries))),
                Optional.empty(),
                Optional.empty(),
                random.nextInt(8) == 0
                        ? Optional.empty()
                        : Optional.of(WireColour.parse(COLOURS[random.nextInt(COLOURS.length)])),
                OptionalDouble.empty(),
                carries,
                circuit,
                Optional.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                false,
                Optional.empty()));
    }

    /** Thick between source and fuses, thin for signals, in between for loads. */
    private double areaMm2(WireEnd from, WireEnd to, SignalClass carries) {
        boolean heavy = Stream.of(from, to)
                .anyMatch(end -> end instanceof WireEnd.AtTerminal at
                        && List.of("BT1", "F0", "BB1").contains(at.component().value()));
        double load = SIZES_MM2[random.nextInt(SIZES_MM2.length)];
        boolean power =
                carries == SignalClass.FEED || carries == SignalClass.RETURN || carries == SignalClass.SWITCHED_OUTPUT;
        return heavy ? HEAVY_MM2 : power ? load : SIGNAL_MM2;
    }

    private BreakoutId at() {
        return breakouts.get(random.nextInt(breakouts.size()));
    }

    private String word() {
        return WORDS[random.nextInt(WORDS.length)];
    }

    /** A name as people give it: short, or long now and then. */
    private String name(String word) {
        return switch (random.nextInt(8)) {
            case 0 -> word + " behind the second bulkhead on the port side near the auxiliary tank";
            case 1 -> word + " vorn außen, Türschwelle";
            default -> "Left " + word + " " + random.nextInt(100);
        };
    }

    private void put(Element element) {
        grown.put(element.id().value(), element);
    }
}
