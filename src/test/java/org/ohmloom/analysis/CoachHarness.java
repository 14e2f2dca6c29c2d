package org.ohmloom.analysis;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ohmloom.graph.HarnessSketch;
import org.ohmloom.model.Alternator;
import org.ohmloom.model.BusBar;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.DesignRules;
import org.ohmloom.model.Device;
import org.ohmloom.model.Draw;
import org.ohmloom.model.Driver;
import org.ohmloom.model.GroundPointId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Load;
import org.ohmloom.model.OperatingState;
import org.ohmloom.model.OperatingState.EngineMode;
import org.ohmloom.model.Setting;
import org.ohmloom.model.SignalClass;
import org.ohmloom.model.SolidStateOutput;
import org.ohmloom.model.SpliceId;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireEnd;
import org.ohmloom.units.Gauge;
import org.ohmloom.units.GaugeSystem;

/**
 * An invented 24 V coach of any size: fuse boxes of 50 wires along a trunk, each feeding 20 small loads over four fuses and
 * splices, some of them through an output that switches; four operating states. One wire in twenty has no size yet.
 */
public final class CoachHarness {

    /** Wires of a fuse box and what it feeds. */
    public static final int WIRES_OF_A_BOX = 50;

    private static final int CIRCUITS = 4;
    private static final int LOADS_OF_A_CIRCUIT = 5;
    private static final int OPEN_EVERY = 20;
    private static final int OUTPUT_EVERY = 10;

    private final HarnessSketch sketch = new HarnessSketch();
    private final List<Wire> wires = new ArrayList<>();
    private final List<ComponentId> loads = new ArrayList<>();
    private final List<ComponentId> outputs = new ArrayList<>();
    private final int boxes;

    private CoachHarness(int boxes) {
        this.boxes = boxes;
    }

    /** A coach with about so many wires. */
    public static Harness ofWires(int wires) {
        return new CoachHarness(Math.max(1, wires / WIRES_OF_A_BOX)).harness();
    }

    private Harness harness() {
        List<String> rails = new ArrayList<>(List.of("in"));
        for (int box = 0; box < boxes; box++) {
            sketch.segment("T" + box, "P" + box, "P" + (box + 1), 0.1);
            rails.add("r" + box);
        }
        sketch.battery("BT1", 25.2, 0.002).at("BT1", "P0");
        sketch.component("GEN1", new Alternator(28, 0.005, 3.0 * boxes + 40, Optional.empty()))
                .at("GEN1", "P0");
        sketch.component("BB", new BusBar(rails, 0)).at("BB", "P0");
        sketch.body("FR", 0.0001).ground("G0", "FR", 0.0001).at("G0", "P0");
        wire(at("BT1", "+"), at("BB", "in"), 120, SignalClass.FEED);
        wire(at("GEN1", "+"), at("BB", "in"), 120, SignalClass.FEED);
        wire(at("BT1", "-"), ground("G0"), 120, SignalClass.RETURN);
        wire(at("GEN1", "-"), ground("G0"), 120, SignalClass.RETURN);
        for (int box = 0; box < boxes; box++) {
            box(box);
        }
        DesignRules rules = new DesignRules(
                "road-vehicle", 24, 0.05, GaugeSystem.METRIC, "ISO 6722-1 class C", Optional.empty(), 40);
        return sketch.harness()
                .withRules(rules)
                .withAll(wires)
                .with(state("parked", EngineMode.OFF, 7))
                .with(state("day", EngineMode.RUNNING, 3))
                .with(state("night", EngineMode.RUNNING, 2))
                .with(state("everything", EngineMode.RUNNING, 1));
    }

    private void box(int box) {
        String place = "P" + box;
        String far = "L" + box;
        sketch.segment("S" + box, place, far, 0.5);
        sketch.component("FB" + box, new BusBar(List.of("in", "1", "2", "3", "4"), 0.0001))
                .at("FB" + box, place);
        sketch.ground("G" + (box + 1), "FR", 0.0002).at("G" + (box + 1), place);
        sketch.splice("R" + box, 0.0002).at("R" + box, place);
        wire(at("BB", "r" + box), at("FB" + box, "in"), 10, SignalClass.FEED);
        wire(splice("R" + box), ground("G" + (box + 1)), 10, SignalClass.RETURN);
        for (int circuit = 1; circuit <= CIRCUITS; circuit++) {
            circuit(box, circuit, place, far);
        }
    }

    private void circuit(int box, int circuit, String place, String far) {
        String name = box + "-" + circuit;
        sketch.fuse("F" + name, 5, 0.02).at("F" + name, place);
        sketch.splice("D" + name, 0.0005).at("D" + name, far);
        wire(at("FB" + box, Integer.toString(circuit)), at("F" + name, "1"), 1, SignalClass.FEED);
        WireEnd feed = at("F" + name, "2");
        if (circuit == CIRCUITS && box % OUTPUT_EVERY == 0) {
            Device output = new SolidStateOutput(0.01, 10, Optional.of(Driver.of(200 + box)), OptionalDouble.empty());
            sketch.component("Q" + name, output).at("Q" + name, place);
            wire(feed, at("Q" + name, "in"), 1, SignalClass.FEED);
            feed = at("Q" + name, "out");
            outputs.add(new ComponentId("Q" + name));
        }
        wire(feed, splice("D" + name), 1, SignalClass.FEED);
        for (int each = 1; each <= LOADS_OF_A_CIRCUIT; each++) {
            String load = "H" + name + "-" + each;
            sketch.component(load, Load.of(draw(loads.size()))).at(load, far);
            loads.add(new ComponentId(load));
            wire(splice("D" + name), at(load, "+"), 0.5, SignalClass.FEED);
            wire(at(load, "-"), splice("R" + box), 0.5, SignalClass.RETURN);
        }
    }

    /** A load of each of four kinds in turn. */
    static Draw draw(int number) {
        return switch (number % 4) {
            case 0 -> new Draw.Lamp(5, 24);
            case 1 -> new Draw.ConstantPower(3, 24);
            case 2 -> new Draw.Motor(0.2, 0.6, 24);
            default -> new Draw.Resistive(0.1, 24);
        };
    }

    private OperatingState state(String id, EngineMode mode, int every) {
        OperatingState state = OperatingState.of(id, id, mode);
        if (mode == EngineMode.RUNNING) {
            state = state.with(new ComponentId("GEN1"), Setting.ON);
        }
        for (ComponentId output : outputs) {
            state = state.with(output, every == 2 ? Setting.duty(0.4) : Setting.ON);
        }
        for (int load = 0; load < loads.size(); load += every) {
            state = state.with(loads.get(load), Setting.ON);
        }
        return state;
    }

    private void wire(WireEnd from, WireEnd to, double areaMm2, SignalClass signalClass) {
        int number = wires.size() + 1;
        boolean open = number % OPEN_EVERY == 0;
        wires.add(Wire.of("W" + number, from, to, signalClass)
                .withGauge(open ? Optional.empty() : Optional.of(Gauge.metric(areaMm2))));
    }

    static WireEnd at(String component, String terminal) {
        return new WireEnd.AtTerminal(new ComponentId(component), terminal);
    }

    static WireEnd splice(String id) {
        return new WireEnd.AtSplice(new SpliceId(id));
    }

    static WireEnd ground(String id) {
        return new WireEnd.AtGround(new GroundPointId(id));
    }
}
