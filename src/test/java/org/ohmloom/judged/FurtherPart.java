package org.ohmloom.judged;

import static org.ohmloom.judged.Plan.at;
import static org.ohmloom.judged.Plan.in;
import static org.ohmloom.judged.Plan.joined;
import static org.ohmloom.judged.Plan.on;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import org.ohmloom.model.Calibration;
import org.ohmloom.model.ControlUnit;
import org.ohmloom.model.InputStage;
import org.ohmloom.model.Measurement;
import org.ohmloom.model.Pin;
import org.ohmloom.model.PinRole;
import org.ohmloom.model.Sensor;
import org.ohmloom.model.SignalClass;

/**
 * What a generated harness has besides its first control unit and the sensors of that: further units on a data bus, a one-wire
 * sender bolted to the engine, a current transmitter and a thermocouple.
 */
final class FurtherPart {

    static final String SENDER = "S1";
    static final String TRANSMITTER = "CL1";
    static final String THERMOCOUPLE = "TC1";

    /** The input of the first unit that reads the sender. */
    static final Pin SENDER_PIN = Plan.pulledUp("TH2", PinRole.THERMISTOR_INPUT, 5, 220);

    static final String CURRENT_PIN = "CU1";
    static final String THERMOCOUPLE_PIN = "TC";

    private static final double SENDER_ALLOWED_BAR = 0.8;
    private static final String UNIT_CONNECTOR = "XU";

    private static final List<String> BUS_LINES = List.of("BH", "BL");

    private final Plan plan;
    private final Random random;
    private final Supplier<String> grounds;

    /** A further part whose units may be grounded at the points given. */
    FurtherPart(Plan plan, Random random, Supplier<String> grounds) {
        this.plan = plan;
        this.random = random;
        this.grounds = grounds;
    }

    /** Pins of the first unit that it needs. */
    static List<Pin> pins(Random random) {
        return List.of(
                SENDER_PIN,
                Plan.pin(CURRENT_PIN, PinRole.ANALOGUE_INPUT)
                        .reading(Optional.of(
                                InputStage.UNKNOWN.withShuntOhms(OptionalDouble.of(60 + 30 * random.nextDouble())))),
                Plan.pin(THERMOCOUPLE_PIN, PinRole.ANALOGUE_INPUT)
                        .reading(Optional.of(new InputStage(
                                OptionalDouble.empty(),
                                OptionalDouble.empty(),
                                OptionalDouble.empty(),
                                OptionalDouble.empty(),
                                Optional.empty(),
                                OptionalDouble.empty(),
                                Optional.of(InputStage.ColdJunction.MEASURED)))),
                Plan.pin("BH", PinRole.BUS_HIGH),
                Plan.pin("BL", PinRole.BUS_LOW));
    }

    /** Adds it; each feed comes from a fuse of its own. */
    void add(UnaryOperator<String> fuse) {
        for (String line : BUS_LINES) {
            plan.splice("SP" + line, 0.0002);
            plan.wire(in(UNIT_CONNECTOR, line), joined("SP" + line), 0.5, between(0.3, 1), SignalClass.DATA_BUS);
        }
        int units = 2 + random.nextInt(2);
        for (int k = 2; k <= units; k++) {
            node("U" + k, fuse.apply("FU" + k));
        }
        sender();
        transmitter(fuse.apply("FT"));
        thermocouple();
    }

    private void node(String id, String fuse) {
        List<Pin> pins = List.of(
                Plan.pin("SUP", PinRole.SUPPLY),
                Plan.pin("GND", PinRole.GROUND),
                Plan.pin("BH", PinRole.BUS_HIGH),
                Plan.pin("BL", PinRole.BUS_LOW));
        plan.component(id, new ControlUnit(pins, between(0.3, 1), OptionalDouble.empty(), OptionalDouble.empty()));
        plan.connector("X" + id, id, "CT", pins.stream().map(Pin::name).toList());
        plan.wire(at(fuse, "2"), in("X" + id, "SUP"), 1.0, between(0.5, 1.5), SignalClass.FEED);
        plan.wire(in("X" + id, "GND"), on(grounds.get()), 1.0, between(0.2, 0.6), SignalClass.RETURN);
        for (String line : BUS_LINES) {
            plan.wire(in("X" + id, line), joined("SP" + line), 0.5, between(0.5, 2), SignalClass.DATA_BUS);
        }
    }

    /** Its case is its return, bolted to the engine; one wire leads to the unit. */
    private void sender() {
        Measurement pressure = Measurement.of(
                        "Oil pressure",
                        "bar",
                        0,
                        10,
                        new Calibration.ResistanceTable(List.of(
                                new Calibration.ResistancePoint(0, 10),
                                new Calibration.ResistancePoint(5, 95),
                                new Calibration.ResistancePoint(10, 184))))
                .allowing(OptionalDouble.of(SENDER_ALLOWED_BAR));
        plan.bolted(
                SENDER,
                new Sensor(Sensor.Kind.SENDER, 0, OptionalDouble.of(between(10, 184)), Optional.of(pressure)),
                Sensor.RETURN,
                random.nextBoolean() ? "E1" : "E2",
                between(0.0002, 0.001));
        plan.wire(
                at(SENDER, Sensor.SIGNAL),
                in(UNIT_CONNECTOR, SENDER_PIN.name()),
                0.75,
                between(0.8, 2),
                SignalClass.ANALOGUE_SIGNAL);
    }

    private void transmitter(String fuse) {
        Calibration line = new Calibration.CurrentLine(0.004, 0.020, OptionalDouble.of(between(6.5, 8)));
        plan.component(
                TRANSMITTER,
                new Sensor(
                        Sensor.Kind.OTHER,
                        0,
                        OptionalDouble.empty(),
                        Optional.of(Measurement.of("Level", "%", 0, 100, line))));
        plan.connector("X" + TRANSMITTER, TRANSMITTER, "CT", List.of(Sensor.SUPPLY, Sensor.SIGNAL));
        plan.wire(at(fuse, "2"), in("X" + TRANSMITTER, Sensor.SUPPLY), 1.0, between(0.5, 3), SignalClass.FEED);
        plan.wire(
                in("X" + TRANSMITTER, Sensor.SIGNAL),
                in(UNIT_CONNECTOR, CURRENT_PIN),
                0.75,
                between(0.8, 3),
                SignalClass.ANALOGUE_SIGNAL);
    }

    private void thermocouple() {
        Calibration couple = new Calibration.Thermocouple(
                Calibration.Thermocouple.Type.K,
                Optional.of(Calibration.Thermocouple.Extension.COPPER),
                OptionalDouble.of(SoundHarness.AMBIENT_CELSIUS + between(-3, 3)));
        plan.component(
                THERMOCOUPLE,
                new Sensor(
                        Sensor.Kind.THERMOCOUPLE,
                        0,
                        OptionalDouble.empty(),
                        Optional.of(Measurement.of("Exhaust temperature", "°C", 0, 1000, couple))));
        plan.connector("X" + THERMOCOUPLE, THERMOCOUPLE, "CT", List.of(Sensor.SIGNAL, Sensor.RETURN));
        double lengthMetres = between(0.8, 3);
        plan.wire(
                in("X" + THERMOCOUPLE, Sensor.SIGNAL),
                in(UNIT_CONNECTOR, THERMOCOUPLE_PIN),
                0.5,
                lengthMetres,
                SignalClass.ANALOGUE_SIGNAL);
        plan.wire(
                in("X" + THERMOCOUPLE, Sensor.RETURN),
                in(UNIT_CONNECTOR, "SR6"),
                0.5,
                lengthMetres,
                SignalClass.REFERENCE_RETURN);
    }

    private double between(double least, double most) {
        return least + (most - least) * random.nextDouble();
    }
}
