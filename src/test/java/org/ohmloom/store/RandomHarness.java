package org.ohmloom.store;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.SortedMap;
import java.util.TreeMap;
import org.ohmloom.model.Alternator;
import org.ohmloom.model.AlternatorModel;
import org.ohmloom.model.Assembly;
import org.ohmloom.model.AssemblyId;
import org.ohmloom.model.Battery;
import org.ohmloom.model.BatteryIsolator;
import org.ohmloom.model.BatteryModel;
import org.ohmloom.model.Breakout;
import org.ohmloom.model.BreakoutId;
import org.ohmloom.model.BundleSegment;
import org.ohmloom.model.BusBar;
import org.ohmloom.model.Cable;
import org.ohmloom.model.CableId;
import org.ohmloom.model.Calibration;
import org.ohmloom.model.CaseGround;
import org.ohmloom.model.Cavity;
import org.ohmloom.model.CavityGrid;
import org.ohmloom.model.ChassisBody;
import org.ohmloom.model.ChassisBodyId;
import org.ohmloom.model.ChassisPath;
import org.ohmloom.model.ChassisRule;
import org.ohmloom.model.Component;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.Connector;
import org.ohmloom.model.ConnectorId;
import org.ohmloom.model.ContactId;
import org.ohmloom.model.ContactLimit;
import org.ohmloom.model.ContactPart;
import org.ohmloom.model.Converter;
import org.ohmloom.model.Cycle;
import org.ohmloom.model.DesignRules;
import org.ohmloom.model.Device;
import org.ohmloom.model.Diode;
import org.ohmloom.model.DoubleCrimp;
import org.ohmloom.model.Draw;
import org.ohmloom.model.Driver;
import org.ohmloom.model.ElectronicLimit;
import org.ohmloom.model.Element;
import org.ohmloom.model.GroundPoint;
import org.ohmloom.model.GroundPointId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.InputStage;
import org.ohmloom.model.Inrush;
import org.ohmloom.model.Load;
import org.ohmloom.model.LoadGroup;
import org.ohmloom.model.LoadGroupId;
import org.ohmloom.model.Measurement;
import org.ohmloom.model.Note;
import org.ohmloom.model.NoteId;
import org.ohmloom.model.OperatingState;
import org.ohmloom.model.OutputPin;
import org.ohmloom.model.PartId;
import org.ohmloom.model.Place;
import org.ohmloom.model.Position;
import org.ohmloom.model.ProtectiveDevice;
import org.ohmloom.model.RegulatedSupply;
import org.ohmloom.model.Relay;
import org.ohmloom.model.Revision;
import org.ohmloom.model.Seal;
import org.ohmloom.model.SegmentId;
import org.ohmloom.model.Sensor;
import org.ohmloom.model.SequenceId;
import org.ohmloom.model.Setting;
import org.ohmloom.model.SignalClass;
import org.ohmloom.model.SizingRules;
import org.ohmloom.model.SolidStateOutput;
import org.ohmloom.model.SourceSetting;
import org.ohmloom.model.SpeedLimit;
import org.ohmloom.model.SpliceId;
import org.ohmloom.model.StateId;
import org.ohmloom.model.StateSequence;
import org.ohmloom.model.Strap;
import org.ohmloom.model.StrapId;
import org.ohmloom.model.Switch;
import org.ohmloom.model.TitleBlock;
import org.ohmloom.model.Waiver;
import org.ohmloom.model.WaiverId;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireColour;
import org.ohmloom.model.WireEnd;
import org.ohmloom.model.WireId;
import org.ohmloom.model.Zone;
import org.ohmloom.model.ZoneId;
import org.ohmloom.units.Gauge;
import org.ohmloom.units.GaugeSystem;

/** Harnesses with elements of every kind and random values; one seed, one harness. */
public final class RandomHarness {
    private static final List<String> TEXTS = List.of(
            "Left fan",
            "Ümläut µΩ",
            "quote \" and \\ back",
            "tab\tand\nline",
            "emoji \uD83D\uDE97",
            "lone \uD800 half",
            "=1+1",
            "a/b~c",
            "\u0000\u001f\u007f",
            "x".repeat(150),
            "$.wires[0]",
            "İı",
            "a\u2028b");

    private final Random random;
    private final List<Element> elements = new ArrayList<>();

    private RandomHarness(long seed) {
        random = new Random(seed);
    }

    /** The harness of a seed. */
    public static Harness of(long seed) {
        return new RandomHarness(seed).build();
    }

    private Harness build() {
        frame();
        physical();
        components();
        joints();
        wires();
        words();
        DesignRules rules = rules();
        DesignRules bare =
                new DesignRules(rules.basis(), 12, 0.05, GaugeSystem.METRIC, rules.insulation(), Optional.empty(), 25);
        return Harness.empty(titleBlock(), bare)
                .withAll(elements)
                .withLayout(layout())
                .withRules(rules);
    }

    private TitleBlock titleBlock() {
        return new TitleBlock(
                text(),
                maybe(text()),
                "EX-" + random.nextInt(1000),
                maybe(text()),
                maybe(text()),
                maybe(text()),
                maybe("2026-02-03"),
                maybe("en"),
                few(new Revision("A", "2026-02-03", text(), ""), new Revision("B", "", "", text())));
    }

    private DesignRules rules() {
        return new DesignRules(
                "road-vehicle",
                1 + 58 * random.nextDouble(),
                0.001 + 0.9 * random.nextDouble(),
                pick(GaugeSystem.values()),
                text(),
                maybe(gauge()),
                -60 + 460 * random.nextDouble(),
                maybe(new SizingRules(
                        maybe(pick(SizingRules.Method.values())),
                        random.nextBoolean() ? OptionalDouble.of(0.1) : OptionalDouble.empty(),
                        random.nextBoolean() ? OptionalDouble.of(1500) : OptionalDouble.empty(),
                        few(new SizingRules.StockSize(gauge(), number()), new SizingRules.StockSize(gauge(), number())),
                        random.nextBoolean(),
                        number())),
                maybe(RandomFabrication.returns(random)),
                maybe(RandomFabrication.of(random)),
                maybe(units().wiring(gauge())));
    }

    private void frame() {
        elements.add(RandomFabrication.part(random, "P1", "EX-10-\u00e9", this::text));
        elements.add(RandomFabrication.part(random, "EX-10-\u00e9", "P1", this::text));
        elements.add(new Assembly(new AssemblyId("A1"), text(), text(), text()));
        elements.add(new Zone(new ZoneId("Z1"), text(), -60 + 460 * random.nextDouble(), random.nextBoolean()));
        elements.add(new ContactPart(
                new ContactId("C1"),
                maybe(new PartId("P1")),
                zeroOr(),
                few(new ContactLimit(-40.5, value()), new ContactLimit(85, value())),
                0.35,
                2.5,
                0,
                2.4,
                few(new DoubleCrimp(value(), value()), new DoubleCrimp(0.5, 0.5)),
                value(),
                text(),
                maybe(new Seal(new PartId("P1"), 1.2, 2.4)),
                maybe(new PartId("EX-10-\u00e9"))));
    }

    private void physical() {
        elements.add(new Breakout(new BreakoutId("B1"), text(), assembly()));
        elements.add(new Breakout(new BreakoutId("B10"), text(), assembly()));
        elements.add(new BundleSegment(
                new SegmentId("SEG1"),
                new BreakoutId("B1"),
                new BreakoutId("B10"),
                value(),
                zone(),
                maybe(RandomFabrication.covering(random, text(), part())),
                assembly(),
                number()));
        elements.add(new ChassisBody(
                new ChassisBodyId("FRAME"),
                text(),
                random.nextBoolean(),
                few(new ChassisPath(new GroundPointId("G1"), new GroundPointId("G2"), value())),
                maybe(new ChassisRule(value(), text()))));
        for (String id : List.of("G1", "G2")) {
            elements.add(new GroundPoint(
                    new GroundPointId(id),
                    text(),
                    new ChassisBodyId("FRAME"),
                    zeroOr(),
                    breakout(),
                    zone(),
                    part(),
                    random.nextBoolean(),
                    assembly(),
                    maybe(1 + random.nextInt(3)),
                    number(),
                    maybe(text())));
        }
        elements.add(new Strap(
                new StrapId("ST1"),
                text(),
                new GroundPointId("G1"),
                new GroundPointId("G2"),
                value(),
                part(),
                random.nextBoolean(),
                assembly(),
                number(),
                number()));
    }

    private void components() {
        List<Device> devices = List.of(
                new Battery(value(), value(), value(), maybe(batteryModel())),
                new Alternator(value(), zeroOr(), value(), maybe(alternatorModel())),
                new RegulatedSupply(pick(RegulatedSupply.Use.values()), value(), zeroOr(), value()),
                new Converter(value(), zeroOr(), value(), 0.9, random.nextBoolean()),
                new Diode(zeroOr(), value(), value()),
                new BatteryIsolator(1 + random.nextInt(8), zeroOr(), value(), value()),
                new ProtectiveDevice(
                        pick(ProtectiveDevice.Kind.values()), text(), value(), number(), number(), number()),
                new Switch(List.of("2", "2a", text()), value(), value(), number()),
                new Relay(value(), 8.5, 1.25, value(), value(), random.nextBoolean(), number()),
                new SolidStateOutput(value(), value(), maybe(driver()), number()),
                new Load(
                        draw(),
                        pick(Load.Control.values()),
                        number(),
                        number(),
                        maybe(new Cycle(8, random.nextBoolean() ? OptionalDouble.of(3) : OptionalDouble.empty())),
                        maybe(new Inrush(value(), value())),
                        number()),
                new Sensor(pick(Sensor.Kind.values()), zeroOr(), number(), maybe(measurement())),
                units().unit(),
                new BusBar(List.of("1", "2", text()), zeroOr()));
        for (int k = 0; k < devices.size(); k++) {
            Device device = devices.get(k);
            elements.add(new Component(
                    new ComponentId("D" + k),
                    text(),
                    device,
                    part(),
                    zone(),
                    breakout(),
                    maybe(new CaseGround(device.terminals().get(0), new GroundPointId("G2"), zeroOr())),
                    random.nextBoolean(),
                    assembly()));
        }
    }

    private void joints() {
        elements.add(new Connector(
                new ConnectorId("X1"),
                text(),
                Optional.of(new ComponentId("D12")),
                Optional.empty(),
                breakout(),
                List.of(
                        new Cavity("1", maybe("A1"), maybe(new ContactId("C1")), part(), random.nextBoolean()),
                        new Cavity("a/2", maybe("A.2"), maybe(new ContactId("C1")), part(), random.nextBoolean())),
                part(),
                part(),
                part(),
                number(),
                zone(),
                random.nextBoolean(),
                assembly(),
                maybe(new CavityGrid(pick(CavityGrid.Side.values()), 3, List.of("", "a/2", "1", "")))));
        for (String id : List.of("X2", "X3")) {
            elements.add(new Connector(
                    new ConnectorId(id),
                    text(),
                    Optional.empty(),
                    maybe(new ConnectorId(id.equals("X2") ? "X3" : "X2")),
                    breakout(),
                    List.of(new Cavity("1", Optional.empty(), Optional.empty(), part(), false)),
                    part(),
                    part(),
                    part(),
                    number(),
                    zone(),
                    random.nextBoolean(),
                    assembly()));
        }
        Place place = random.nextBoolean()
                ? new Place.AtBreakout(new BreakoutId("B1"))
                : new Place.OnSegment(new SegmentId("SEG1"), zeroOr());
        elements.add(RandomFabrication.splice(random, maybe(place), part(), assembly(), this::text));
        elements.add(new Cable(
                new CableId("K1"),
                text(),
                pick(Cable.Kind.values()),
                random.nextBoolean(),
                number(),
                number(),
                part(),
                assembly()));
    }

    private void wires() {
        for (int k = 0; k < random.nextInt(40); k++) {
            elements.add(new Wire(
                    new WireId("W" + random.nextInt(100) + "_" + k),
                    end(),
                    end(),
                    maybe(gauge()),
                    maybe(text()),
                    maybe(text()),
                    maybe(WireColour.parse(pick("RD", "RDWH", "GNYEBK"))),
                    number(),
                    pick(SignalClass.values()),
                    maybe(text()),
                    maybe(new CableId("K1")),
                    number(),
                    number(),
                    random.nextBoolean(),
                    assembly(),
                    random.nextBoolean()));
        }
    }

    private void words() {
        SortedMap<ComponentId, SourceSetting> sources = new TreeMap<>();
        SortedMap<ComponentId, Setting> set = new TreeMap<>();
        for (int k = 0; k < 14; k++) {
            if (random.nextBoolean()) {
                sources.put(new ComponentId("D" + k), sourceSetting());
                set.put(new ComponentId("D" + (13 - k)), setting());
            }
        }
        SortedMap<OutputPin, Setting> outputs = new TreeMap<>();
        List.of("A1", "A.2", "a/3").forEach(pin -> outputs.put(new OutputPin(new ComponentId("D12"), pin), setting()));
        elements.add(new OperatingState(
                new StateId("run"), text(), pick(OperatingState.EngineMode.values()), sources, set, outputs, number()));
        elements.add(OperatingState.of("off", text(), OperatingState.EngineMode.OFF));
        elements.add(new LoadGroup(
                new LoadGroupId("LG1"),
                text(),
                LoadGroup.Kind.AT_MOST,
                List.of(new ComponentId("D10"), new ComponentId("D11")),
                Optional.of(1)));
        elements.add(new LoadGroup(
                new LoadGroupId("LG2"),
                text(),
                pick(LoadGroup.Kind.EXCLUSIVE, LoadGroup.Kind.TOGETHER),
                List.of(new ComponentId("D10"), new ComponentId("D12")),
                Optional.empty()));
        elements.add(new StateSequence(
                new SequenceId("day"),
                text(),
                List.of(
                        new StateSequence.Step(new StateId("run"), value()),
                        new StateSequence.Step(new StateId("off"), value())),
                number()));
        elements.add(RandomBus.of(random));
        elements.add(new Waiver(new WaiverId("V1"), "wire-current", few("W10", "W9"), text(), "", ""));
        elements.add(new Note(new NoteId("N1"), maybe("W1"), text()));
        elements.addAll(RandomReadings.of(random));
    }

    private SourceSetting sourceSetting() {
        return switch (random.nextInt(3)) {
            case 0 -> SourceSetting.ON;
            case 1 -> SourceSetting.OFF;
            default -> new SourceSetting(
                    random.nextBoolean(),
                    random.nextBoolean() ? OptionalDouble.of(random.nextDouble()) : OptionalDouble.empty(),
                    random.nextBoolean() ? OptionalDouble.of(-18) : OptionalDouble.empty(),
                    number(),
                    number());
        };
    }

    private BatteryModel batteryModel() {
        return new BatteryModel(
                text(),
                random.nextBoolean() ? BatteryModel.USUAL_RATED_HOURS : value(),
                random.nextBoolean() ? OptionalDouble.of(1.25) : OptionalDouble.empty(),
                number(),
                number());
    }

    private AlternatorModel alternatorModel() {
        SortedMap<OperatingState.EngineMode, Double> limits = new TreeMap<>();
        if (random.nextBoolean()) {
            limits.put(OperatingState.EngineMode.IDLING, value());
            limits.put(OperatingState.EngineMode.RUNNING, value());
        }
        return new AlternatorModel(
                maybe(new WireEnd.AtTerminal(new ComponentId("D0"), "+")),
                random.nextBoolean() ? OptionalDouble.of(-0.01) : OptionalDouble.empty(),
                random.nextBoolean() ? OptionalDouble.of(25) : OptionalDouble.empty(),
                random.nextBoolean()
                        ? List.of(new SpeedLimit(1500, value()), new SpeedLimit(6000, value()))
                        : List.of(),
                limits,
                number(),
                random.nextBoolean() ? OptionalDouble.of(40) : OptionalDouble.empty());
    }

    private Driver driver() {
        Driver.Freewheel freewheel = pick(Driver.Freewheel.values());
        return new Driver(
                value(),
                maybe(text()),
                random.nextBoolean() ? OptionalDouble.of(random.nextDouble()) : OptionalDouble.empty(),
                freewheel,
                number(),
                freewheel == Driver.Freewheel.ACTIVE_CLAMP
                        ? Optional.of(new Driver.Clamp(value(), number(), number()))
                        : Optional.empty(),
                random.nextBoolean(),
                maybe(new ElectronicLimit(value(), number(), number())),
                number());
    }

    private Setting setting() {
        return switch (random.nextInt(5)) {
            case 0 -> Setting.ON;
            case 1 -> Setting.OFF;
            case 2 -> Setting.duty(1 - random.nextDouble());
            default -> new Setting(
                    random.nextBoolean(), random.nextBoolean() ? 1 : 0.25, maybe(text()), random.nextBoolean());
        };
    }

    private Draw draw() {
        double amps = value();
        return pick(
                new Draw.Resistive(amps, value()),
                new Draw.ConstantCurrent(zeroOr(), value()),
                new Draw.ConstantPower(value(), value()),
                new Draw.Motor(amps, amps * 6, value()),
                new Draw.Lamp(value(), value()),
                new Draw.Inductive(amps, value(), value()),
                new Draw.MagnetMotor(
                        amps,
                        amps * 5,
                        value(),
                        value(),
                        amps / 4,
                        pick(Draw.MagnetMotor.Torque.values()),
                        value(),
                        number()));
    }

    private RandomUnit units() {
        return new RandomUnit(random, this::value, this::number, this::driver, this::input);
    }

    private InputStage input() {
        double falling = value();
        return new InputStage(
                number(),
                number(),
                maybe(falling * 2).map(OptionalDouble::of).orElse(OptionalDouble.empty()),
                OptionalDouble.of(falling),
                maybe(pick(InputStage.Scale.values())),
                number(),
                maybe(pick(InputStage.ColdJunction.values())),
                maybe(1 + random.nextInt(32)));
    }

    private Measurement measurement() {
        double lowest = random.nextInt(200) - 100;
        RandomCalibration kinds = new RandomCalibration(random, this::value, this::number);
        Calibration calibration = kinds.next();
        return new Measurement(
                "Quantity " + random.nextInt(9),
                RandomCalibration.isTemperature(calibration) ? pick("°C", "degC", "C") : pick("bar", "km/h", "°C"),
                lowest,
                lowest + 1 + random.nextInt(300),
                calibration,
                number(),
                few(new Measurement.Tolerance("accuracy", value()), new Measurement.Tolerance("\u00fc", 0.25)),
                number(),
                maybe(kinds.use(lowest)));
    }

    private WireEnd end() {
        return pick(
                new WireEnd.AtCavity(new ConnectorId("X1"), pick("1", "a/2")),
                new WireEnd.AtTerminal(new ComponentId("D0"), "+"),
                new WireEnd.AtSplice(new SpliceId("S1")),
                new WireEnd.AtGround(new GroundPointId("G2")),
                new WireEnd.Loose());
    }

    private Gauge gauge() {
        return random.nextBoolean()
                ? Gauge.awg(random.nextInt(44) - 3)
                : Gauge.metric(0.05 + 399 * random.nextDouble());
    }

    private SortedMap<String, Position> layout() {
        SortedMap<String, Position> layout = new TreeMap<>();
        for (int k = 0; k < 12; k++) {
            layout.put("X" + k, new Position(random.nextInt(500) - 250.5, value()));
        }
        return random.nextBoolean() ? layout : new TreeMap<>();
    }

    /** More than 0; whole, short, long, tiny or huge. */
    private double value() {
        return switch (random.nextInt(5)) {
            case 0 -> 1 + random.nextInt(100);
            case 1 -> (1 + random.nextInt(10_000)) / 1000.0;
            case 2 -> 1e-12 * (1 + random.nextDouble());
            case 3 -> 1e18 * (1 + random.nextDouble());
            default -> 1 - random.nextDouble();
        };
    }

    private double zeroOr() {
        return random.nextInt(3) == 0 ? 0 : value();
    }

    private OptionalDouble number() {
        return random.nextBoolean() ? OptionalDouble.empty() : OptionalDouble.of(value());
    }

    private String text() {
        return random.nextBoolean() ? "Name " + random.nextInt(50) : TEXTS.get(random.nextInt(TEXTS.size()));
    }

    private Optional<PartId> part() {
        return maybe(new PartId("P1"));
    }

    private Optional<ZoneId> zone() {
        return maybe(new ZoneId("Z1"));
    }

    private Optional<BreakoutId> breakout() {
        return maybe(new BreakoutId("B10"));
    }

    private Optional<AssemblyId> assembly() {
        return maybe(new AssemblyId("A1"));
    }

    private <T> Optional<T> maybe(T some) {
        return random.nextBoolean() ? Optional.of(some) : Optional.empty();
    }

    @SafeVarargs
    private <T> List<T> few(T... all) {
        return List.of(all).subList(0, random.nextInt(all.length + 1));
    }

    @SafeVarargs
    private <T> T pick(T... all) {
        return all[random.nextInt(all.length)];
    }
}
