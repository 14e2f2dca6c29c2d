package org.ohmloom.judged;

import static org.ohmloom.judged.Plan.at;
import static org.ohmloom.judged.Plan.in;
import static org.ohmloom.judged.Plan.on;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.SplittableRandom;
import org.ohmloom.model.Battery;
import org.ohmloom.model.BusBar;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.DesignRules;
import org.ohmloom.model.Draw;
import org.ohmloom.model.Driver;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Load;
import org.ohmloom.model.OperatingState;
import org.ohmloom.model.OperatingState.EngineMode;
import org.ohmloom.model.OutputPin;
import org.ohmloom.model.ProtectiveDevice;
import org.ohmloom.model.ReturnRules;
import org.ohmloom.model.Setting;
import org.ohmloom.model.SignalClass;
import org.ohmloom.model.SolidStateOutput;
import org.ohmloom.model.TitleBlock;
import org.ohmloom.units.GaugeSystem;

/**
 * Generates harnesses in which nothing is wrong: a battery, a fuse rail, loads of several sizes on two chassis bodies joined by a
 * strap, some of them switched at a duty, a control unit with a ground of its own, and its sensors with returns of their own.
 * Sizes follow from a few plain rules of thumb with room to spare; no code under test takes part.
 */
final class SoundHarness {

    static final String UNIT = "U1";
    private static final double[] FUSES = {5, 10, 15, 20};
    private static final double[] FUSE_OHMS = {0.01785, 0.0077, 0.0048, 0.00338};
    private static final double[] AREAS = {1.0, 1.5, 2.5, 4.0};
    private static final double FUSE_SHARE = 0.6;
    private static final int MOST_STACKED = 3;

    /** Time an edge of an output takes, s: slow enough for what lies beside it. */
    static final double EDGE_SECONDS = 500e-6;

    /** Height of the bundle above the chassis, m. */
    static final double HEIGHT_METRES = 0.01;

    static final double AMBIENT_CELSIUS = 30;

    private final Random random;
    private final Random further;
    private final Plan plan = new Plan();
    private final Map<String, Integer> stacked = new LinkedHashMap<>();
    private final List<String> loads = new ArrayList<>();
    private final List<String> rail = new ArrayList<>();
    private final List<OutputPin> outputs = new ArrayList<>();
    private final List<ComponentId> switches = new ArrayList<>();

    private SoundHarness(long seed) {
        // seeds in a row would begin alike
        SplittableRandom seeds = new SplittableRandom(seed);
        this.random = new Random(seeds.nextLong());
        this.further = new Random(seeds.nextLong());
    }

    /** The harness of a number; the same every time. */
    static Harness of(long seed) {
        return new SoundHarness(seed).drawn();
    }

    private Harness drawn() {
        plan.contact("CT", 0.002 + 0.001 * random.nextDouble());
        chassis();
        supply();
        int count = 3 + random.nextInt(4);
        for (int k = 1; k <= count; k++) {
            load("L" + k, 1 + 5 * random.nextDouble());
        }
        new SensingPart(plan, random, further, outputs).add(fuse("FU", 3, 2.5));
        dimmed();
        new FurtherPart(plan, further, () -> freeGround("G", further)).add(id -> fuse(id, 2, 1));
        plan.component("BB", new BusBar(terminals(), 0.0002));
        DesignRules rules = new DesignRules(
                "road-vehicle",
                12,
                0.05,
                GaugeSystem.METRIC,
                "ISO 6722-1 class C",
                Optional.empty(),
                AMBIENT_CELSIUS,
                Optional.empty(),
                Optional.of(atHeight()));
        return states(LaidOut.of(
                Harness.empty(TitleBlock.of("Generated, invented", "EX-GEN"), rules)
                        .withAll(plan.elements()),
                further));
    }

    private static ReturnRules atHeight() {
        return new ReturnRules(
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.of(HEIGHT_METRES),
                OptionalDouble.empty(),
                List.of());
    }

    private List<String> terminals() {
        List<String> all = new ArrayList<>(List.of("in"));
        all.addAll(rail);
        return all;
    }

    private void chassis() {
        plan.body("FR", between(0.0001, 0.0003), false);
        plan.body("EN", between(0.0001, 0.0003), false);
        plan.ground("G0", "FR", between(0.0001, 0.0002));
        plan.ground("GS", "FR", between(0.0001, 0.0002));
        plan.ground("E0", "EN", between(0.0001, 0.0002));
        plan.strap("ST1", "GS", "E0", between(0.0002, 0.0004));
        for (int k = 1; k <= 3; k++) {
            plan.ground("G" + k, "FR", between(0.0001, 0.0006));
            stacked.put("G" + k, 0);
        }
        for (int k = 1; k <= 2; k++) {
            plan.ground("E" + k, "EN", between(0.0001, 0.0006));
            stacked.put("E" + k, 0);
        }
        plan.body("BK", 0.0005, true);
        plan.ground("B1", "BK", 0.0005);
    }

    private void supply() {
        plan.component("BT", new Battery(12.7, between(0.006, 0.01), 70));
        plan.wire(at("BT", "-"), on("G0"), 50, between(0.2, 0.4), SignalClass.RETURN);
        plan.component(
                "F0",
                new ProtectiveDevice(
                        ProtectiveDevice.Kind.FUSE, "ISO 8820-5 type SF30", 60, OptionalDouble.of(0.0009)));
        plan.wire(at("BT", "+"), at("F0", "1"), 25, 0.15, SignalClass.FEED);
        plan.wire(at("F0", "2"), at("BB", "in"), 25, between(0.2, 0.5), SignalClass.FEED);
    }

    /** A fuse on the rail for a current; gives its name. */
    private String fuse(String id, double amps, double leastAreaMm2) {
        int size = size(amps);
        String terminal = String.valueOf(rail.size() + 1);
        rail.add(terminal);
        plan.component(
                id,
                new ProtectiveDevice(
                        ProtectiveDevice.Kind.FUSE,
                        "ISO 8820-3 type C",
                        FUSES[size],
                        OptionalDouble.of(FUSE_OHMS[size])));
        plan.wire(at("BB", terminal), at(id, "1"), 10, 0.06, SignalClass.FEED);
        return id;
    }

    private static int size(double amps) {
        int size = 0;
        while (amps > FUSE_SHARE * FUSES[size]) {
            size++;
        }
        return size;
    }

    private void load(String id, double amps) {
        String fuse = fuse("F" + id, amps, 1);
        double area = AREAS[size(amps)];
        Draw draw = random.nextBoolean() ? new Draw.Resistive(amps, 12.5) : new Draw.ConstantCurrent(amps, 12.5);
        Load load = new Load(draw, Load.Control.COMMAND, OptionalDouble.empty());
        String ground = freeGround();
        if (random.nextInt(4) == 0) {
            plan.bolted(id, load, "-", ground, between(0.0002, 0.0008));
        } else {
            plan.component(id, load);
            plan.wire(at(id, "-"), on(ground), area, between(0.2, 0.8), SignalClass.RETURN);
        }
        plan.wire(at(fuse, "2"), at(id, "+"), area, between(0.5, 2.5), SignalClass.FEED);
        loads.add(id);
    }

    private String freeGround() {
        return freeGround("", random);
    }

    private String freeGround(String prefix, Random choosing) {
        List<String> free = stacked.keySet().stream()
                .filter(each -> stacked.get(each) < MOST_STACKED && each.startsWith(prefix))
                .toList();
        String chosen = free.get(choosing.nextInt(free.size()));
        stacked.merge(chosen, 1, Integer::sum);
        return chosen;
    }

    /** Resistances behind the unit's output and behind an output of its own clock. */
    private void dimmed() {
        double amps = between(1, 2.5);
        plan.component("LD1", new Load(new Draw.Resistive(amps, 12.5), Load.Control.FEED, OptionalDouble.empty()));
        plan.wire(in("XU", "HS1"), at("LD1", "+"), 1.0, between(0.5, 1.5), SignalClass.SWITCHED_OUTPUT);
        plan.wire(at("LD1", "-"), on(freeGround()), 1.0, between(0.2, 0.8), SignalClass.RETURN);
        if (random.nextBoolean()) {
            double more = between(1, 4);
            double area = AREAS[size(more)];
            String fuse = fuse("FQ", more, 1);
            plan.component(
                    "Q1",
                    new SolidStateOutput(
                            0.01,
                            10,
                            Optional.of(Driver.of(150).withEdgeSeconds(OptionalDouble.of(EDGE_SECONDS))),
                            OptionalDouble.empty()));
            plan.component("LD2", new Load(new Draw.Resistive(more, 12.5), Load.Control.FEED, OptionalDouble.empty()));
            plan.wire(at(fuse, "2"), at("Q1", "in"), area, 0.3, SignalClass.FEED);
            plan.wire(at("Q1", "out"), at("LD2", "+"), area, between(0.3, 1.5), SignalClass.SWITCHED_OUTPUT);
            plan.wire(at("LD2", "-"), on(freeGround()), area, between(0.2, 0.8), SignalClass.RETURN);
            switches.add(new ComponentId("Q1"));
        }
    }

    private Harness states(Harness harness) {
        OperatingState all = OperatingState.of("all", "Everything on", EngineMode.OFF);
        OperatingState some = OperatingState.of("some", "Some of it on", EngineMode.OFF);
        for (String load : loads) {
            all = all.with(new ComponentId(load), Setting.ON);
            some = random.nextBoolean() ? some.with(new ComponentId(load), Setting.ON) : some;
        }
        for (OutputPin output : outputs) {
            all = all.with(output, Setting.duty(between(0.2, 0.8))).with(new ComponentId("LD1"), Setting.ON);
            some = some.with(output, Setting.ON).with(new ComponentId("LD1"), Setting.ON);
        }
        for (ComponentId output : switches) {
            all = all.with(output, Setting.duty(between(0.2, 0.8))).with(new ComponentId("LD2"), Setting.ON);
        }
        return harness.withAll(List.of(all, some, OperatingState.of("rest", "Everything off", EngineMode.OFF)));
    }

    private double between(double least, double most) {
        return least + (most - least) * random.nextDouble();
    }
}
