package org.ohmloom.judged;

import static org.ohmloom.judged.Plan.at;
import static org.ohmloom.judged.Plan.in;
import static org.ohmloom.judged.Plan.joined;
import static org.ohmloom.judged.Plan.on;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.Set;
import org.ohmloom.model.Cable;
import org.ohmloom.model.CableId;
import org.ohmloom.model.Calibration;
import org.ohmloom.model.Cavity;
import org.ohmloom.model.Component;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.Connector;
import org.ohmloom.model.ConnectorId;
import org.ohmloom.model.ControlUnit;
import org.ohmloom.model.Driver;
import org.ohmloom.model.Harness;
import org.ohmloom.model.InputStage;
import org.ohmloom.model.Measurement;
import org.ohmloom.model.OutputPin;
import org.ohmloom.model.Pin;
import org.ohmloom.model.PinRole;
import org.ohmloom.model.Sensor;
import org.ohmloom.model.SignalClass;
import org.ohmloom.model.WireEnd;

/** The control unit of a generated harness with its ground, and its sensors with their wires. */
final class SensingPart {

    /** The input that reads the thermistor. */
    static final Pin THERMISTOR_PIN = Plan.pulledUp("TH1", PinRole.THERMISTOR_INPUT, 5, 2490);

    /** The input that reads pulses: it takes more than 3.5 V for high and less than 1.5 V for low. */
    static final InputStage PULSE_INPUT =
            InputStage.UNKNOWN.withThresholds(OptionalDouble.of(3.5), OptionalDouble.of(1.5));

    /** Most that may flow in one sensor return pin, A. */
    static final double SENSOR_RETURN_AMPS = 0.5;

    private static final Measurement RATIO =
            Measurement.of("Pressure", "bar", 0, 10, new Calibration.RatiometricLine(0.1, 0.9, OptionalDouble.of(800)));
    private static final Measurement ABSOLUTE =
            Measurement.of("Pressure", "bar", 0, 6, new Calibration.VoltageLine(0.5, 4.5, OptionalDouble.of(1500)));
    private static final Measurement PULSES = Measurement.of(
            "Speed",
            "Hz",
            0,
            500,
            new Calibration.PulseLevels(0.3, OptionalDouble.of(4.7), OptionalDouble.empty(), OptionalDouble.empty()));
    private static final Measurement TEMPERATURE =
            Measurement.of("Temperature", "°C", 0, 120, new Calibration.Beta(2500, 25, 3500));

    private final Plan plan;
    private final Random random;
    private final Random further;
    private final List<OutputPin> outputs;
    private final boolean spliced;
    private int returns;

    SensingPart(Plan plan, Random random, Random further, List<OutputPin> outputs) {
        this.plan = plan;
        this.random = random;
        this.further = further;
        this.outputs = outputs;
        this.spliced = random.nextBoolean();
    }

    /** Adds them, fed through that fuse. */
    void add(String fuse) {
        unit(fuse);
        if (spliced) {
            plan.splice("SPR", 0.0002);
            plan.wire(in("XU", "SR1"), joined("SPR"), 0.75, between(0.3, 1), SignalClass.REFERENCE_RETURN);
        }
        plan.splice("SPF", 0.0002);
        plan.wire(in("XU", "REF"), joined("SPF"), 0.75, between(0.3, 1), SignalClass.REFERENCE_SUPPLY);
        shielded("P1", "AN1");
        threeWire(
                "P2", sensor(Sensor.Kind.OTHER, 0.006, ABSOLUTE), "AN2", SignalClass.ANALOGUE_SIGNAL, Optional.empty());
        threeWire("H1", sensor(Sensor.Kind.HALL, 0.01, PULSES), "FQ1", SignalClass.PULSE_SIGNAL, Optional.empty());
        thermistor();
    }

    /** A harness whose sensors draw nothing and whose unit has no reference supply and no pull-up. */
    static Harness silenced(Harness harness) {
        List<Component> silent = new ArrayList<>();
        for (Component component : harness.components().all()) {
            if (component.device() instanceof Sensor sensor) {
                silent.add(component.withDevice(
                        new Sensor(sensor.kind(), 0, OptionalDouble.empty(), sensor.measurement())));
            } else if (component.device() instanceof ControlUnit unit) {
                List<Pin> pins = unit.pins().stream()
                        .map(pin -> pin.role() == PinRole.REFERENCE_SUPPLY
                                        || pin.pullUpOhms().isPresent()
                                ? Plan.pin(pin.name(), PinRole.SPARE)
                                : pin)
                        .toList();
                silent.add(component.withDevice(new ControlUnit(
                        pins, unit.drawAmps(), unit.groundToSensorReturnOhms(), unit.groundToCaseOhms())));
            }
        }
        return harness.withAll(silent);
    }

    private void unit(String fuse) {
        List<Pin> pins = new ArrayList<>(List.of(
                Plan.pin("SUP", PinRole.SUPPLY),
                Plan.pin("GND", PinRole.GROUND),
                Plan.reference("REF", 5),
                Plan.pin("AN1", PinRole.ANALOGUE_INPUT).reading(scaled(InputStage.Scale.RATIOMETRIC)),
                Plan.pin("AN2", PinRole.ANALOGUE_INPUT).reading(scaled(InputStage.Scale.FIXED)),
                Plan.pin("FQ1", PinRole.FREQUENCY_INPUT).reading(Optional.of(PULSE_INPUT)),
                THERMISTOR_PIN,
                new Pin(
                        "HS1",
                        PinRole.HIGH_SIDE_OUTPUT,
                        Set.of(),
                        OptionalDouble.of(8),
                        OptionalDouble.of(0.02),
                        OptionalDouble.empty(),
                        OptionalDouble.empty(),
                        OptionalDouble.empty(),
                        Optional.of(Driver.of(200).withEdgeSeconds(OptionalDouble.of(SoundHarness.EDGE_SECONDS))))));
        for (int k = 1; k <= 6; k++) {
            pins.add(Plan.sensorReturn("SR" + k, SENSOR_RETURN_AMPS));
        }
        pins.addAll(FurtherPart.pins(further));
        plan.component(
                SoundHarness.UNIT,
                new ControlUnit(
                        pins, between(0.2, 0.8), OptionalDouble.of(between(0.02, 0.1)), OptionalDouble.empty()));
        plan.connector(
                "XU", SoundHarness.UNIT, "CT", pins.stream().map(Pin::name).toList());
        plan.wire(at(fuse, "2"), in("XU", "SUP"), 2.5, between(0.5, 1.5), SignalClass.FEED);
        WireEnd ground = random.nextBoolean() ? at("BT", "-") : on("G0");
        plan.wire(in("XU", "GND"), ground, 2.5, between(0.4, 1.2), SignalClass.RETURN);
        outputs.add(new OutputPin(new ComponentId(SoundHarness.UNIT), "HS1"));
    }

    /** A pressure sensor whose shield is grounded at the control unit and ends in an empty cavity at the sensor. */
    private void shielded(String id, String pin) {
        Optional<CableId> cable = Optional.of(new CableId("C1"));
        plan.with(new Cable(
                cable.get(),
                "Shielded pair",
                Cable.Kind.TWISTED_PAIR,
                true,
                OptionalDouble.empty(),
                OptionalDouble.of(25),
                Optional.empty(),
                Optional.empty()));
        threeWire(id, sensor(Sensor.Kind.RATIOMETRIC, 0.008, RATIO), pin, SignalClass.ANALOGUE_SIGNAL, cable);
        plan.wire(in("XU", "SR5"), in("X" + id, "shield"), 0.5, between(0.8, 2), SignalClass.SHIELD, cable);
    }

    private static Optional<InputStage> scaled(InputStage.Scale scale) {
        return Optional.of(InputStage.UNKNOWN.withScale(Optional.of(scale)));
    }

    private static Sensor sensor(Sensor.Kind kind, double drawAmps, Measurement measurement) {
        return new Sensor(kind, drawAmps, OptionalDouble.empty(), Optional.of(measurement));
    }

    private void threeWire(String id, Sensor sensor, String pin, SignalClass signal, Optional<CableId> cable) {
        plan.component(id, sensor);
        connector(id, List.of(Sensor.SUPPLY, Sensor.SIGNAL, Sensor.RETURN), cable.isPresent());
        plan.wire(joined("SPF"), in("X" + id, Sensor.SUPPLY), 0.75, between(0.5, 1.5), SignalClass.REFERENCE_SUPPLY);
        plan.wire(in("X" + id, Sensor.SIGNAL), in("XU", pin), 0.75, between(0.8, 2), signal, cable);
        back(id, cable);
    }

    private void thermistor() {
        plan.component(
                "T1",
                new Sensor(Sensor.Kind.THERMISTOR, 0, OptionalDouble.of(between(300, 2500)), Optional.of(TEMPERATURE)));
        connector("T1", List.of(Sensor.SIGNAL, Sensor.RETURN), false);
        plan.wire(in("XT1", Sensor.SIGNAL), in("XU", "TH1"), 0.75, between(0.8, 2), SignalClass.ANALOGUE_SIGNAL);
        back("T1", Optional.empty());
    }

    private void back(String id, Optional<CableId> cable) {
        WireEnd end = spliced ? joined("SPR") : in("XU", "SR" + ++returns);
        plan.wire(in("X" + id, Sensor.RETURN), end, 0.75, between(0.5, 1.5), SignalClass.REFERENCE_RETURN, cable);
    }

    private void connector(String sensor, List<String> terminals, boolean shield) {
        plan.connector("X" + sensor, sensor, "CT", terminals);
        if (shield) {
            Connector plain = (Connector) plan.element("X" + sensor);
            List<Cavity> cavities = new ArrayList<>(plain.cavities());
            cavities.add(new Cavity("shield", Optional.empty(), Optional.empty(), Optional.empty(), false));
            plan.with(new Connector(
                    new ConnectorId("X" + sensor),
                    plain.name(),
                    plain.component(),
                    plain.mate(),
                    plain.at(),
                    cavities,
                    plain.part(),
                    plain.lock(),
                    plain.backshell(),
                    plain.limitCelsius(),
                    plain.zone(),
                    false,
                    plain.assembly()));
        }
    }

    private double between(double least, double most) {
        return least + (most - least) * random.nextDouble();
    }
}
