package org.ohmloom.analysis;

import static org.ohmloom.analysis.CoachHarness.at;
import static org.ohmloom.analysis.CoachHarness.draw;
import static org.ohmloom.analysis.CoachHarness.ground;
import static org.ohmloom.analysis.CoachHarness.splice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import org.ohmloom.graph.HarnessSketch;
import org.ohmloom.model.Alternator;
import org.ohmloom.model.Battery;
import org.ohmloom.model.BusBar;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.ControlUnit;
import org.ohmloom.model.DesignRules;
import org.ohmloom.model.Device;
import org.ohmloom.model.Driver;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Load;
import org.ohmloom.model.OperatingState;
import org.ohmloom.model.OperatingState.EngineMode;
import org.ohmloom.model.Pin;
import org.ohmloom.model.PinRole;
import org.ohmloom.model.Relay;
import org.ohmloom.model.Sensor;
import org.ohmloom.model.Setting;
import org.ohmloom.model.SignalClass;
import org.ohmloom.model.SolidStateOutput;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireEnd;
import org.ohmloom.units.Gauge;
import org.ohmloom.units.GaugeSystem;

/**
 * An invented ship of any length that grows by decks of {@value #WIRES_OF_A_ZONE} wires, so that what an analysis costs can be set
 * against the count of wires: ten decks share a battery, each deck has a fuse box, splices with loads of four kinds, a
 * relay, outputs at a duty on two clocks that all decks share, and a control unit with sensors. Deck boxes stand in a ring, returns share splices and two ground points of
 * each deck, and every ten decks are tied to the next ten: loops of all lengths. One alternator. Eight operating states.
 */
public final class ShipHarness {

    /** Wires of a deck. */
    public static final int WIRES_OF_A_ZONE = 100;

    private static final int ZONES_OF_A_SECTION = 10;
    private static final int CIRCUITS = 4;
    private static final int LOADS_OF_A_CIRCUIT = 5;
    private static final int SENSORS = 8;
    private static final int OUTPUTS = 2;
    private static final ComponentId ALTERNATOR = new ComponentId("GEN");
    /** Every how many loads a state switches on. */
    private static final List<Integer> STATES = List.of(13, 7, 5, 4, 3, 2, 2, 1);

    private final HarnessSketch sketch = new HarnessSketch();
    private final List<Wire> wires = new ArrayList<>();
    private final List<ComponentId> loads = new ArrayList<>();
    private final List<ComponentId> outputs = new ArrayList<>();
    private final List<ComponentId> always = new ArrayList<>();
    private final Random random = new Random(1);
    private final int zones;

    private ShipHarness(int zones) {
        this.zones = zones;
    }

    /** A ship with about so many wires, at least those of one deck. */
    public static Harness ofWires(int wires) {
        return new ShipHarness(Math.max(1, Math.round((float) wires / WIRES_OF_A_ZONE))).harness();
    }

    private Harness harness() {
        int sections = (zones + ZONES_OF_A_SECTION - 1) / ZONES_OF_A_SECTION;
        for (int section = 0; section < sections; section++) {
            section(section);
        }
        for (int zone = 0; zone < zones; zone++) {
            zone(zone);
        }
        DesignRules rules = new DesignRules(
                "road-vehicle", 24, 0.05, GaugeSystem.METRIC, "ISO 6722-1 class C", Optional.empty(), 40);
        Harness harness = sketch.harness().withRules(rules).withAll(wires);
        for (int state = 0; state < STATES.size(); state++) {
            harness = harness.with(state(state));
        }
        return harness;
    }

    /** A battery at a bar, tied to those before. */
    private void section(int section) {
        String place = "M" + section;
        String bar = "BB" + section;
        List<String> rails = new ArrayList<>(List.of("in", "gen", "before", "after"));
        IntStream.range(0, ZONES_OF_A_SECTION).forEach(zone -> rails.add("r" + zone));
        sketch.segment("MS" + section, place, "P" + section * ZONES_OF_A_SECTION, 1);
        component("BT" + section, new Battery(25.2, 0.004, 120), place);
        component(bar, new BusBar(rails, 0.0001), place);
        sketch.body("FR" + section, 0.0001)
                .ground("GM" + section, "FR" + section, 0.0001)
                .at("GM" + section, place);
        wire(at("BT" + section, "+"), at(bar, "in"), 95, SignalClass.FEED);
        wire(at("BT" + section, "-"), ground("GM" + section), 95, SignalClass.RETURN);
        if (section == 0) {
            component(ALTERNATOR.value(), new Alternator(28, 0.005, 200, Optional.empty()), place);
            wire(at(ALTERNATOR.value(), "+"), at(bar, "gen"), 70, SignalClass.FEED);
            wire(at(ALTERNATOR.value(), "-"), ground("GM0"), 70, SignalClass.RETURN);
        } else {
            sketch.segment("MT" + section, "M" + (section - 1), place, 3);
            sketch.strap("ST" + section, "GM" + (section - 1), "GM" + section, 0.0005);
            sketch.fuse("FT" + section, 60, 0.001).at("FT" + section, place);
            wire(at("BB" + (section - 1), "after"), at("FT" + section, "1"), 16, SignalClass.FEED);
            wire(at("FT" + section, "2"), at(bar, "before"), 16, SignalClass.FEED);
        }
    }

    private void zone(int zone) {
        int section = zone / ZONES_OF_A_SECTION;
        String place = "P" + zone;
        String far = "L" + zone;
        if (zone % ZONES_OF_A_SECTION > 0) {
            sketch.segment("T" + zone, "P" + (zone - 1), place, 1.5);
        }
        sketch.segment("S" + zone, place, far, 1 + random.nextDouble());
        sketch.component(
                        "FB" + zone,
                        new BusBar(List.of("in", "before", "after", "1", "2", "3", "4", "5", "6", "7", "8"), 0.0001))
                .at("FB" + zone, place);
        sketch.ground("GA" + zone, "FR" + section, 0.0002).at("GA" + zone, place);
        sketch.ground("GB" + zone, "FR" + section, 0.0003).at("GB" + zone, far);
        sketch.splice("R" + zone, 0.0002).at("R" + zone, far);
        sketch.fuse("FF" + zone, 30, 0.002).at("FF" + zone, "M" + section);
        wire(at("BB" + section, "r" + zone % ZONES_OF_A_SECTION), at("FF" + zone, "1"), 6, SignalClass.FEED);
        wire(at("FF" + zone, "2"), at("FB" + zone, "in"), 6, SignalClass.FEED);
        wire(splice("R" + zone), ground("GA" + zone), 6, SignalClass.RETURN);
        wire(splice("R" + zone), ground("GB" + zone), 6, SignalClass.RETURN);
        if (zone % ZONES_OF_A_SECTION > 0) {
            wire(at("FB" + (zone - 1), "after"), at("FB" + zone, "before"), 4, SignalClass.FEED);
        }
        for (int circuit = 1; circuit <= CIRCUITS; circuit++) {
            circuit(zone, circuit, place, far);
        }
        relay(zone, place, far);
        for (int output = 1; output <= OUTPUTS; output++) {
            output(zone, output, place, far);
        }
        unit(zone, place, far);
    }

    private void circuit(int zone, int circuit, String place, String far) {
        String name = zone + "-" + circuit;
        sketch.fuse("F" + name, 7.5, 0.01).at("F" + name, place);
        sketch.splice("D" + name, 0.0005).at("D" + name, far);
        wire(at("FB" + zone, Integer.toString(circuit)), at("F" + name, "1"), 1.5, SignalClass.FEED);
        wire(at("F" + name, "2"), splice("D" + name), 1.5, SignalClass.FEED);
        for (int each = 1; each <= LOADS_OF_A_CIRCUIT; each++) {
            load("H" + name + "-" + each, loads, splice("D" + name), splice("R" + zone), far);
        }
    }

    private void load(String id, List<ComponentId> among, WireEnd feed, WireEnd back, String place) {
        component(id, Load.of(draw(loads.size() + always.size())), place);
        among.add(new ComponentId(id));
        wire(feed, at(id, "+"), 0.5, SignalClass.FEED);
        wire(at(id, "-"), back, 0.5, SignalClass.RETURN);
    }

    private void relay(int zone, String place, String far) {
        sketch.fuse("FK" + zone, 10, 0.01).at("FK" + zone, place);
        component("K" + zone, new Relay(360, 16, 4, 0.005, 30, false), place);
        wire(at("FB" + zone, "5"), at("FK" + zone, "1"), 1.5, SignalClass.FEED);
        wire(at("FK" + zone, "2"), at("K" + zone, "30"), 1.5, SignalClass.FEED);
        wire(at("FK" + zone, "2"), at("K" + zone, "86"), 0.5, SignalClass.FEED);
        wire(at("K" + zone, "85"), ground("GA" + zone), 0.5, SignalClass.RETURN);
        load("HK" + zone, always, at("K" + zone, "87"), ground("GB" + zone), far);
    }

    private void output(int zone, int number, String place, String far) {
        String name = zone + "-" + number;
        double hertz = number == 1 ? 100 : 250;
        Driver driver = new Driver(
                hertz,
                Optional.of("clock of " + hertz + " Hz"),
                OptionalDouble.of(0),
                Driver.Freewheel.NONE,
                OptionalDouble.empty(),
                Optional.empty(),
                false,
                Optional.empty(),
                OptionalDouble.empty());
        sketch.fuse("FQ" + name, 5, 0.02).at("FQ" + name, place);
        component("Q" + name, new SolidStateOutput(0.01, 10, Optional.of(driver), OptionalDouble.empty()), place);
        outputs.add(new ComponentId("Q" + name));
        wire(at("FB" + zone, Integer.toString(5 + number)), at("FQ" + name, "1"), 1, SignalClass.FEED);
        wire(at("FQ" + name, "2"), at("Q" + name, "in"), 1, SignalClass.FEED);
        load("HQ" + name, always, at("Q" + name, "out"), splice("R" + zone), far);
    }

    /** A control unit with its supply, and sensors on a common reference supply and return. */
    private void unit(int zone, String place, String far) {
        String unit = "U" + zone;
        List<Pin> pins = new ArrayList<>(List.of(
                Pin.of("sup", PinRole.SUPPLY),
                Pin.of("gnd", PinRole.GROUND),
                new Pin(
                        "ref",
                        PinRole.REFERENCE_SUPPLY,
                        Set.of(),
                        OptionalDouble.of(0.2),
                        OptionalDouble.empty(),
                        OptionalDouble.of(5),
                        OptionalDouble.empty(),
                        OptionalDouble.empty()),
                Pin.of("sret", PinRole.SENSOR_RETURN)));
        IntStream.rangeClosed(1, SENSORS).forEach(each -> pins.add(Pin.of("a" + each, PinRole.ANALOGUE_INPUT)));
        component(unit, new ControlUnit(pins, 0.2, OptionalDouble.of(0.01), OptionalDouble.empty()), place);
        sketch.fuse("FU" + zone, 5, 0.02).at("FU" + zone, place);
        sketch.splice("SR" + zone, 0.0005).at("SR" + zone, far);
        sketch.splice("SS" + zone, 0.0005).at("SS" + zone, far);
        wire(at("FB" + zone, "8"), at("FU" + zone, "1"), 0.75, SignalClass.FEED);
        wire(at("FU" + zone, "2"), at(unit, "sup"), 0.75, SignalClass.FEED);
        wire(at(unit, "gnd"), ground("GA" + zone), 0.75, SignalClass.RETURN);
        wire(at(unit, "ref"), splice("SR" + zone), 0.5, SignalClass.REFERENCE_SUPPLY);
        wire(at(unit, "sret"), splice("SS" + zone), 0.5, SignalClass.REFERENCE_RETURN);
        for (int each = 1; each <= SENSORS; each++) {
            String sensor = "Y" + zone + "-" + each;
            component(sensor, new Sensor(Sensor.Kind.RATIOMETRIC, 0.01, OptionalDouble.empty()), far);
            wire(splice("SR" + zone), at(sensor, Sensor.SUPPLY), 0.5, SignalClass.REFERENCE_SUPPLY);
            wire(splice("SS" + zone), at(sensor, Sensor.RETURN), 0.5, SignalClass.REFERENCE_RETURN);
            wire(at(sensor, Sensor.SIGNAL), at(unit, "a" + each), 0.5, SignalClass.ANALOGUE_SIGNAL);
        }
    }

    private OperatingState state(int number) {
        boolean running = number > 1;
        OperatingState state = OperatingState.of(
                "state-" + (number + 1), "State " + (number + 1), running ? EngineMode.RUNNING : EngineMode.OFF);
        if (running) {
            state = state.with(ALTERNATOR, Setting.ON);
        }
        for (ComponentId output : outputs) {
            state = state.with(output, number % 2 == 1 ? Setting.duty(0.4) : Setting.ON);
        }
        for (ComponentId load : always) {
            state = state.with(load, Setting.ON);
        }
        for (int load = 0; load < loads.size(); load += STATES.get(number)) {
            state = state.with(loads.get(load), Setting.ON);
        }
        return state;
    }

    private void component(String id, Device device, String place) {
        sketch.component(id, device).at(id, place);
    }

    private void wire(WireEnd from, WireEnd to, double areaMm2, SignalClass signalClass) {
        wires.add(
                Wire.of("W" + (wires.size() + 1), from, to, signalClass).withGauge(Optional.of(Gauge.metric(areaMm2))));
    }
}
