package org.ohmloom.judged;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ohmloom.model.Calibration;
import org.ohmloom.model.Component;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.ControlUnit;
import org.ohmloom.model.Harness;
import org.ohmloom.model.InputStage;
import org.ohmloom.model.Measurement;
import org.ohmloom.model.OperatingState;
import org.ohmloom.model.Pin;
import org.ohmloom.model.Sensor;

/** How far off the sensors of a generated harness read, as a share of what is allowed, from plain dense solutions. */
final class PlainSensors {

    private static final double SPAN_SHARE = 0.01;
    private static final String UNIT = SoundHarness.UNIT;
    private static final String SENSOR_RETURN = UNIT + ".SR1";

    /** Values looked at over a straight line and over a curve. */
    private static final int STEPS = 4;

    private static final int CURVED_STEPS = 60;

    /** A current in place of a sensor, A. */
    private static final double PROBE_AMPS = 1e-3;

    /** A state without a sensor, and with a current in its place. */
    private record Replaced(PlainState open, PlainState loaded) {}

    private final Harness harness;
    private final List<PlainState> states;
    private final Map<String, List<Replaced>> without = new HashMap<>();

    PlainSensors(Harness harness, List<PlainState> states) {
        this.harness = harness;
        this.states = states;
    }

    /** The largest error of a sensor over the values of its span and all states, as a share of what is allowed. */
    double share(String id) {
        Component component = harness.components().get(new ComponentId(id));
        Measurement measurement = ((Sensor) component.device()).measurement().orElseThrow();
        Calibration calibration = measurement.calibration();
        if (calibration instanceof Calibration.PulseLevels levels) {
            return level(id, levels);
        }
        if (calibration instanceof Calibration.CurrentLine line) {
            return loop(id, line);
        }
        int steps = calibration instanceof Calibration.Thermocouple ? CURVED_STEPS : STEPS;
        double worst = 0;
        for (int step = 0; step <= steps; step++) {
            double value = measurement.lowest() + measurement.span() * step / steps;
            for (int k = 0; k < states.size(); k++) {
                worst = Math.max(worst, Math.abs(reading(component, measurement, value, k) - value));
            }
        }
        return worst / allowed(measurement);
    }

    /** Most error, in the unit of the measurement. */
    static double allowed(Measurement measurement) {
        return measurement.allowedError().orElse(SPAN_SHARE * measurement.span());
    }

    /** What the unit takes a true value for in a state, by the mean voltages. */
    private double reading(Component component, Measurement measurement, double value, int k) {
        String id = component.id().value();
        PlainState state = states.get(k);
        double share = (value - measurement.lowest()) / measurement.span();
        if (measurement.calibration() instanceof Calibration.RatiometricLine line) {
            double fraction = line.lowFraction() + share * (line.highFraction() - line.lowFraction());
            double volts =
                    state.mean(id + ".return", SENSOR_RETURN) + fraction * state.mean(id + ".supply", id + ".return");
            double seen = volts / state.mean(UNIT + ".REF", SENSOR_RETURN);
            return measurement.lowest()
                    + (seen - line.lowFraction()) / (line.highFraction() - line.lowFraction()) * measurement.span();
        }
        if (measurement.calibration() instanceof Calibration.VoltageLine line) {
            double volts = line.lowVolts()
                    + share * (line.highVolts() - line.lowVolts())
                    + state.mean(id + ".return", SENSOR_RETURN);
            return measurement.lowest()
                    + (volts - line.lowVolts()) / (line.highVolts() - line.lowVolts()) * measurement.span();
        }
        if (measurement.calibration() instanceof Calibration.Thermocouple couple) {
            return thermocouple(id, couple, value, state);
        }
        return resistance(component, measurement, value, k);
    }

    /** Copper wires begin at the joint; the unit adds what its own terminals, at the ambient, would give. */
    private static double thermocouple(String id, Calibration.Thermocouple couple, double value, PlainState state) {
        double arrives = TypeK.volts(value)
                - TypeK.volts(couple.jointCelsius().orElseThrow())
                + state.mean(id + ".return", SENSOR_RETURN);
        return TypeK.celsius(arrives + TypeK.volts(SoundHarness.AMBIENT_CELSIUS));
    }

    /**
     * The circuit without the sensor and with a current in its place; between them it tells what any resistance there does to the
     * voltage at the pin, as the circuit is linear in each moment.
     */
    private double resistance(Component component, Measurement measurement, double value, int k) {
        String id = component.id().value();
        String pin = UNIT + "." + pin(component).name();
        Replaced replaced = without.computeIfAbsent(id, each -> replaced(component, measurement))
                .get(k);
        double ohms = ohms(measurement.calibration(), value);
        double volts = replaced.open().mean(replaced.loaded(), (open, loaded) -> {
            double gap = open.volts(id + ".signal") - open.volts(id + ".return");
            double less = gap - (loaded.volts(id + ".signal") - loaded.volts(id + ".return"));
            double amps = gap / (ohms + less / PROBE_AMPS);
            double at = open.volts(pin) - open.volts(SENSOR_RETURN);
            double then = loaded.volts(pin) - loaded.volts(SENSOR_RETURN);
            return at + (then - at) * amps / PROBE_AMPS;
        });
        double taken = pin(component).pullUpOhms().orElseThrow()
                * volts
                / (pin(component).pullUpVolts().orElseThrow() - volts);
        return value(measurement.calibration(), taken);
    }

    private static Pin pin(Component component) {
        return component.id().value().equals(FurtherPart.SENDER) ? FurtherPart.SENDER_PIN : SensingPart.THERMISTOR_PIN;
    }

    private List<Replaced> replaced(Component component, Measurement measurement) {
        Sensor now = (Sensor) component.device();
        Harness bare = harness.with(
                component.withDevice(new Sensor(now.kind(), 0, OptionalDouble.empty(), Optional.of(measurement))));
        PlainNetwork.Current current =
                new PlainNetwork.Current(component.id() + ".signal", component.id() + ".return", PROBE_AMPS);
        return bare.states().all().stream()
                .map(state -> new Replaced(
                        new PlainState(bare, state), new PlainState(bare, state, "", Optional.of(current))))
                .toList();
    }

    /** Resistance at a value: R0 exp(B (1/T - 1/T0)) of a thermistor, straight between the rows of a table. */
    static double ohms(Calibration calibration, double value) {
        if (calibration instanceof Calibration.Beta beta) {
            return beta.referenceOhms() * Math.exp(beta.betaKelvin() * (1 / (value + 273.15) - cold(beta)));
        }
        List<Calibration.ResistancePoint> rows = ((Calibration.ResistanceTable) calibration).points();
        int row = value < rows.get(1).value() ? 1 : 2;
        Calibration.ResistancePoint low = rows.get(row - 1);
        Calibration.ResistancePoint high = rows.get(row);
        return low.ohms() + (value - low.value()) * (high.ohms() - low.ohms()) / (high.value() - low.value());
    }

    /** The value a resistance is taken for. */
    static double value(Calibration calibration, double ohms) {
        if (calibration instanceof Calibration.Beta beta) {
            return 1 / (cold(beta) + Math.log(ohms / beta.referenceOhms()) / beta.betaKelvin()) - 273.15;
        }
        List<Calibration.ResistancePoint> rows = ((Calibration.ResistanceTable) calibration).points();
        int row = ohms < rows.get(1).ohms() ? 1 : 2;
        Calibration.ResistancePoint low = rows.get(row - 1);
        Calibration.ResistancePoint high = rows.get(row);
        return low.value() + (ohms - low.ohms()) * (high.value() - low.value()) / (high.ohms() - low.ohms());
    }

    private static double cold(Calibration.Beta beta) {
        return 1 / (beta.referenceCelsius() + 273.15);
    }

    /** The shift of both levels of a pulse against the smaller of the two margins to the thresholds. */
    private double level(String id, Calibration.PulseLevels levels) {
        double shift = 0;
        for (PlainState state : states) {
            shift = Math.max(shift, Math.abs(state.mean(id + ".return", SENSOR_RETURN)));
        }
        return shift / margin(levels);
    }

    /** The smaller distance of the levels of a pulse from the thresholds, V. */
    static double margin(Calibration.PulseLevels levels) {
        InputStage input = SensingPart.PULSE_INPUT;
        double high = levels.highVolts().orElseThrow() - input.risingVolts().orElseThrow();
        double low = input.fallingVolts().orElseThrow() - levels.lowVolts();
        return Math.min(high, low);
    }

    /**
     * What the largest current of a transmitter drops over all that it flows through, feed and all, as a share of what there is
     * to drop above the least voltage it works at: from the circuit without that current and the one with it.
     */
    private double loop(String id, Calibration.CurrentLine line) {
        double most = 0;
        List<OperatingState> operating = List.copyOf(harness.states().all());
        for (int k = 0; k < states.size(); k++) {
            PlainState loaded = new PlainState(
                    harness,
                    operating.get(k),
                    "",
                    Optional.of(new PlainNetwork.Current(id + ".supply", id + ".signal", line.highAmps())));
            double open = states.get(k).mean(id + ".supply", id + ".signal");
            double dropped = open - loaded.mean(id + ".supply", id + ".signal");
            most = Math.max(most, dropped / (open - line.minimumVolts().orElseThrow()));
        }
        return most;
    }

    /** The pin a unit reads a sensor at has that voltage for one unit less: most units for a volt over the span. */
    double unitsPerVolt(Component component) {
        Measurement measurement = ((Sensor) component.device()).measurement().orElseThrow();
        Calibration calibration = measurement.calibration();
        if (calibration instanceof Calibration.RatiometricLine line) {
            double reference = ((ControlUnit)
                            harness.components().get(new ComponentId(UNIT)).device())
                    .pin("REF")
                    .flatMap(pin -> pin.referenceVolts().stream().boxed().findFirst())
                    .orElseThrow();
            return measurement.span() / (line.highFraction() - line.lowFraction()) / reference;
        }
        if (calibration instanceof Calibration.VoltageLine line) {
            return measurement.span() / (line.highVolts() - line.lowVolts());
        }
        if (calibration instanceof Calibration.PulseLevels) {
            return 1;
        }
        Pin pin = SensingPart.THERMISTOR_PIN;
        double most = 0;
        for (int step = 0; step <= CURVED_STEPS; step++) {
            double value = measurement.lowest() + measurement.span() * step / CURVED_STEPS;
            double here = pinVolts(pin, ohms(calibration, value));
            double beside = pinVolts(pin, ohms(calibration, value + 1e-4));
            most = Math.max(most, 1e-4 / Math.abs(beside - here));
        }
        return most;
    }

    private static double pinVolts(Pin pin, double ohms) {
        return pin.pullUpVolts().orElseThrow() * ohms / (ohms + pin.pullUpOhms().orElseThrow());
    }
}
