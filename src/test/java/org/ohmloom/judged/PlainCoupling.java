package org.ohmloom.judged;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import org.ohmloom.model.BreakoutId;
import org.ohmloom.model.Cable;
import org.ohmloom.model.Calibration;
import org.ohmloom.model.Component;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.ControlUnit;
import org.ohmloom.model.Driver;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Measurement;
import org.ohmloom.model.Pin;
import org.ohmloom.model.Sensor;
import org.ohmloom.model.SignalClass;
import org.ohmloom.model.SolidStateOutput;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireEnd;

/**
 * What the edges of outputs put onto the signals in the bundle, by the textbook formulas alone: C = 2 pi e / acosh((D2 - a2 - b2) / 2ab)
 * between round wires, R C12 dV/dt (1 - exp(-t / R (C12 + C2G))) for an even edge into R beside C2G (Ott, 2nd edition, 2-2 to 2-5,
 * from memory), 0.1 ln(1 + 4 h2 / D2) uH/m over a plane (Paul) and M dI/dt.
 */
final class PlainCoupling {

    private static final double ALLOWED_SHARE = 0.25;
    private static final double VACUUM_FARADS = 8.8541878128e-12;
    private static final double BETWEEN_WIRES = 2.5;

    /** Outside diameter by area, mm: ISO 6722-1, thin wall, from memory. */
    private static final Map<Double, Double> OUTSIDE_MM =
            Map.of(0.5, 1.7, 0.75, 1.9, 1.0, 2.1, 1.5, 2.4, 2.5, 3.0, 4.0, 3.7, 10.0, 6.0);

    private final Harness harness;
    private final List<PlainState> states;
    private final PlainSensors sensors;
    private final Function<String, List<Wire>> returns;

    /** A judge of a harness; {@code returns} tells the wires from a sensor's return to the unit. */
    PlainCoupling(Harness harness, List<PlainState> states, Function<String, List<Wire>> returns) {
        this.harness = harness;
        this.states = states;
        this.sensors = new PlainSensors(harness, states);
        this.returns = returns;
    }

    /** The most that one wire's edge puts onto the signal of a sensor, as a share of what coupling may take. */
    double share(String sensor) {
        Component component = harness.components().get(new ComponentId(sensor));
        Optional<Wire> victim = harness.wires().all().stream()
                .filter(wire -> wire.ends().contains(Plan.in("X" + sensor, Sensor.SIGNAL)))
                .filter(this::isInBundle)
                .findFirst();
        if (victim.isEmpty()) {
            return 0;
        }
        Measurement measurement = ((Sensor) component.device()).measurement().orElseThrow();
        double allowed = measurement.calibration() instanceof Calibration.PulseLevels levels
                ? PlainSensors.margin(levels)
                : PlainSensors.allowed(measurement);
        double limit = ALLOWED_SHARE * allowed / sensors.unitsPerVolt(component);
        double most = 0;
        for (Wire culprit : harness.wires().all()) {
            if (isInBundle(culprit) && !culprit.id().equals(victim.get().id())) {
                for (PlainState state : states) {
                    for (String output : state.switching()) {
                        double volts =
                                volts(state, output, culprit, victim.get(), sensor, ohms(measurement.calibration()));
                        most = Math.max(most, volts / limit);
                    }
                }
            }
        }
        return most;
    }

    /** Resistance between pin and sensor return, ohm, where it is largest over the span. */
    private static double ohms(Calibration calibration) {
        if (calibration instanceof Calibration.RatiometricLine line) {
            return line.outputOhms().orElse(0);
        }
        if (calibration instanceof Calibration.VoltageLine line) {
            return line.outputOhms().orElse(0);
        }
        if (calibration instanceof Calibration.PulseLevels levels) {
            return levels.outputOhms().orElse(0);
        }
        // a thermistor has its largest resistance at the lowest temperature, 0 deg C
        double cold = PlainSensors.ohms(calibration, 0);
        double pullUp = SensingPart.THERMISTOR_PIN.pullUpOhms().orElseThrow();
        return cold * pullUp / (cold + pullUp);
    }

    private double volts(PlainState state, String output, Wire culprit, Wire victim, String sensor, double ohms) {
        double seconds = driver(output).edgeSeconds().orElseThrow();
        double edgeVolts = isSwitchedSide(output, culprit) ? loadVolts(state, output) : 0;
        double edgeAmps = Math.abs(state.jump(output, current(culprit)));
        double height = harness.rules().returnRules().heightMetres().orElseThrow();
        double metres = harness.segments().all().iterator().next().lengthMetres();
        double apart = (outside(culprit) + outside(victim)) / 2;
        double a = strands(culprit) / 2;
        double b = strands(victim) / 2;
        double mutual = metres
                * 2
                * Math.PI
                * VACUUM_FARADS
                * BETWEEN_WIRES
                / acosh((apart * apart - a * a - b * b) / (2 * a * b));
        double ground = metres * 2 * Math.PI * VACUUM_FARADS / acosh(height / b);
        double settle = ohms * (mutual + ground);
        double electric = ohms == 0 || isShielded(victim)
                ? 0
                : ohms * mutual * edgeVolts / seconds * (1 - Math.exp(-seconds / settle));
        List<Wire> back = returns.apply(sensor);
        boolean twisted = victim.cable().isPresent()
                && harness.cables().get(victim.cable().get()).kind() == Cable.Kind.TWISTED_PAIR
                && back.stream().anyMatch(wire -> wire.cable().equals(victim.cable()));
        double henries = mutualHenries(height, apart);
        if (twisted || back.stream().anyMatch(this::isInBundle)) {
            henries -= mutualHenries(height, apart + outside(victim));
        }
        double halfTwist = twisted
                ? harness.cables()
                                .get(victim.cable().orElseThrow())
                                .layLengthMm()
                                .orElseThrow()
                        / 2000
                : metres;
        return electric + henries * Math.min(metres, halfTwist) * edgeAmps / seconds;
    }

    private static double mutualHenries(double height, double apart) {
        return 1e-7 * Math.log(1 + 4 * height * height / (apart * apart));
    }

    private Driver driver(String output) {
        if (output.equals("Q1")) {
            return ((SolidStateOutput)
                            harness.components().get(new ComponentId(output)).device())
                    .driver()
                    .orElseThrow();
        }
        ControlUnit unit = (ControlUnit)
                harness.components().get(new ComponentId(SoundHarness.UNIT)).device();
        return unit.pin(output.substring(SoundHarness.UNIT.length() + 1))
                .flatMap(Pin::driver)
                .orElseThrow();
    }

    /** Whether a wire leads from an output to its load. */
    private static boolean isSwitchedSide(String output, Wire wire) {
        return wire.ends().contains(output.equals("Q1") ? Plan.at("Q1", "out") : Plan.in("XU", "HS1"));
    }

    /** Voltage over an output while it is off: what its load has while all is on. */
    private static double loadVolts(PlainState state, String output) {
        String load = output.equals("Q1") ? "LD2" : "LD1";
        return Math.abs(state.allOn(solve -> solve.volts(load + ".+") - solve.volts(load + ".-")));
    }

    private static ToDoubleFunction<PlainSolve> current(Wire wire) {
        String from = PlainJudge.point(wire, wire.from());
        String to = PlainJudge.point(wire, wire.to());
        double ohms = wire.measuredOhms().orElseThrow();
        return solve -> (solve.volts(from) - solve.volts(to)) / ohms;
    }

    /** Whether a wire leads from one end of the segment to the other. */
    private boolean isInBundle(Wire wire) {
        Optional<BreakoutId> from = place(wire.from());
        Optional<BreakoutId> to = place(wire.to());
        return from.isPresent() && to.isPresent() && !from.equals(to);
    }

    private Optional<BreakoutId> place(WireEnd end) {
        if (end instanceof WireEnd.AtCavity at) {
            return harness.connectors().get(at.connector()).at();
        }
        if (end instanceof WireEnd.AtTerminal at) {
            return harness.components().get(at.component()).at();
        }
        return end instanceof WireEnd.AtGround at
                ? harness.grounds().get(at.ground()).at()
                : Optional.empty();
    }

    /** Whether a grounded shield lies round a wire. */
    private boolean isShielded(Wire wire) {
        return wire.cable().isPresent()
                && harness.wires().all().stream()
                        .anyMatch(other -> other.signalClass() == SignalClass.SHIELD
                                && other.cable().equals(wire.cable()));
    }

    private static double outside(Wire wire) {
        return OUTSIDE_MM.get(wire.gauge().orElseThrow().nominalAreaMm2()) / 1000;
    }

    /** Diameter over the strands, m: 1.15 times that of as much solid copper (0.017241 ohm mm2/m) as its resistance says. */
    private static double strands(Wire wire) {
        double square =
                1 / 58.0 / Plan.OHMS_PER_METRE.get(wire.gauge().orElseThrow().nominalAreaMm2());
        return 1.15 * Math.sqrt(4 * square / Math.PI) / 1000;
    }

    private static double acosh(double value) {
        return Math.log(value + Math.sqrt(value * value - 1));
    }
}
