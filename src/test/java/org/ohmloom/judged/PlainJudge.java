package org.ohmloom.judged;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Predicate;
import org.ohmloom.model.Calibration;
import org.ohmloom.model.Component;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.GroundPoint;
import org.ohmloom.model.Harness;
import org.ohmloom.model.InputStage;
import org.ohmloom.model.Measurement;
import org.ohmloom.model.OperatingState;
import org.ohmloom.model.Pin;
import org.ohmloom.model.Sensor;
import org.ohmloom.model.SignalClass;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireEnd;

/**
 * What a generated harness does to its reference points and sensors, each as a share of its limit, from plain dense solutions. The
 * limits are those of the manual: 0.05 V at a control unit's ground, 0.10 V at other grounds, 1 % of span, 0.25 A in a sensor's
 * return, four terminals on a stud, 10 mA of load current in a signal's member of a loop.
 */
final class PlainJudge {

    static final double UNIT_GROUND_VOLTS = 0.05;
    static final double GROUND_VOLTS = 0.10;
    static final double SPAN_SHARE = 0.01;
    static final double RETURN_AMPS = 0.25;
    static final double STACKED = 4;
    static final double STRAY_AMPS = 0.01;

    private static final String ZERO = "BT.-";
    private static final String SENSOR_RETURN = SoundHarness.UNIT + ".SR1";
    private static final int STEPS = 4;

    private final Harness harness;
    private final List<PlainState> states = new ArrayList<>();

    PlainJudge(Harness harness) {
        this.harness = harness;
        harness.states().all().forEach(state -> states.add(new PlainState(harness, state)));
    }

    /** Shares of their limits by rule and subject, as {@code ground-offset G1}; more than 1 is over. */
    SortedMap<String, Double> shares() {
        SortedMap<String, Double> shares = new TreeMap<>();
        for (GroundPoint ground : harness.grounds().all()) {
            String id = ground.id().value();
            shares.put("ground-offset " + id, groundShare(id));
            shares.put("ground-stud-crowded " + id, stacked(id) / STACKED);
        }
        shares.put("unit-ground-offset " + SoundHarness.UNIT, unitShare());
        for (Component component : harness.components().all()) {
            if (component.device() instanceof Sensor) {
                String id = component.id().value();
                shares.put("sensor-error-over-limit " + id, errorShare(id));
                shares.put("sensor-return-shared " + id, sharedAmps(id) / RETURN_AMPS);
            }
        }
        return shares;
    }

    /** Load current in a wire of a loop, A: what is left when no sensor and no reference supply draws or gives any. */
    double strayAmps(String wire) {
        Harness bare = SensingPart.silenced(harness);
        Wire member = Harnesses.wire(bare, wire);
        String from = point(member, member.from());
        String to = point(member, member.to());
        double most = 0;
        for (OperatingState state : bare.states().all()) {
            PlainState solved = new PlainState(bare, state);
            if (solved.has(from) && solved.has(to)) {
                most = Math.max(most, solved.largest(solve -> Math.abs(solve.volts(from) - solve.volts(to))));
            }
        }
        return most / member.measuredOhms().orElseThrow();
    }

    double groundShare(String ground) {
        return worst(ground, ZERO) / GROUND_VOLTS;
    }

    double unitShare() {
        return worst(SoundHarness.UNIT + ".GND", ZERO) / UNIT_GROUND_VOLTS;
    }

    private double worst(String point, String reference) {
        return states.stream()
                .filter(state -> state.has(point))
                .mapToDouble(state -> state.worst(point, reference))
                .max()
                .orElse(0);
    }

    long stacked(String ground) {
        WireEnd stud = Plan.on(ground);
        return harness.wires().all().stream()
                        .filter(wire -> wire.ends().contains(stud))
                        .count()
                + harness.components().all().stream()
                        .filter(each -> each.caseGround()
                                .filter(bolt -> bolt.ground().value().equals(ground))
                                .isPresent())
                        .count()
                + harness.straps().all().stream()
                        .filter(strap -> strap.from().value().equals(ground)
                                || strap.to().value().equals(ground))
                        .count();
    }

    /** The largest error of a sensor over the values of its span and all states, as a share of what is allowed. */
    double errorShare(String id) {
        Component component = harness.components().get(new ComponentId(id));
        Sensor sensor = (Sensor) component.device();
        Measurement measurement = sensor.measurement().orElseThrow();
        if (measurement.calibration() instanceof Calibration.PulseLevels levels) {
            return levelShare(id, levels);
        }
        double worst = 0;
        for (int step = 0; step <= STEPS; step++) {
            double value = measurement.lowest() + measurement.span() * step / STEPS;
            for (int k = 0; k < states.size(); k++) {
                worst = Math.max(worst, Math.abs(reading(component, measurement, value, k) - value));
            }
        }
        return worst / (SPAN_SHARE * measurement.span());
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
            double seen = volts / state.mean(SoundHarness.UNIT + ".REF", SENSOR_RETURN);
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
        // a thermistor: the whole circuit anew with its resistance at the value
        Calibration.Beta beta = (Calibration.Beta) measurement.calibration();
        double kelvin = 273.15;
        double cold = 1 / (beta.referenceCelsius() + kelvin);
        double ohms = beta.referenceOhms() * Math.exp(beta.betaKelvin() * (1 / (value + kelvin) - cold));
        Sensor there = new Sensor(Sensor.Kind.THERMISTOR, 0, OptionalDouble.of(ohms), Optional.of(measurement));
        OperatingState operating = List.copyOf(harness.states().all()).get(k);
        PlainState solved = new PlainState(harness.with(component.withDevice(there)), operating);
        Pin pin = SensingPart.THERMISTOR_PIN;
        double volts = solved.mean(SoundHarness.UNIT + "." + pin.name(), SENSOR_RETURN);
        double taken =
                pin.pullUpOhms().orElseThrow() * volts / (pin.pullUpVolts().orElseThrow() - volts);
        return 1 / (cold + Math.log(taken / beta.referenceOhms()) / beta.betaKelvin()) - kelvin;
    }

    /** The shift of both levels of a pulse against the smaller of the two margins to the thresholds. */
    private double levelShare(String id, Calibration.PulseLevels levels) {
        InputStage input = SensingPart.PULSE_INPUT;
        double high = levels.highVolts().orElseThrow() - input.risingVolts().orElseThrow();
        double low = input.fallingVolts().orElseThrow() - levels.lowVolts();
        double shift = 0;
        for (PlainState state : states) {
            shift = Math.max(shift, Math.abs(state.mean(id + ".return", SENSOR_RETURN)));
        }
        return shift / Math.min(high, low);
    }

    /** The largest current, A, in a wire that leads from the sensor's return to the unit's. */
    double sharedAmps(String sensor) {
        double most = 0;
        for (Wire wire : way(sensor)) {
            String from = point(wire, wire.from());
            String to = point(wire, wire.to());
            double ohms = wire.measuredOhms().orElseThrow();
            for (PlainState state : states) {
                most = Math.max(most, state.largest(solve -> Math.abs(solve.volts(from) - solve.volts(to)) / ohms));
            }
        }
        return most;
    }

    private String point(Wire wire, WireEnd end) {
        return end instanceof WireEnd.AtSplice at ? at.splice() + "." + wire.id() : end.text();
    }

    /**
     * The wires from a sensor's return to a sensor return pin of the unit, the fewest; where none lead there, those to the chassis,
     * which it then returns by.
     */
    private List<Wire> way(String sensor) {
        List<Wire> own = way(sensor, Set.of(SignalClass.REFERENCE_RETURN), PlainJudge::isAtUnit);
        return own.isEmpty()
                ? way(
                        sensor,
                        Set.of(SignalClass.REFERENCE_RETURN, SignalClass.RETURN),
                        WireEnd.AtGround.class::isInstance)
                : own;
    }

    private static boolean isAtUnit(WireEnd end) {
        return end instanceof WireEnd.AtCavity at && at.connector().value().equals("XU");
    }

    private List<Wire> way(String sensor, Set<SignalClass> classes, Predicate<WireEnd> isEnd) {
        WireEnd start = Plan.in("X" + sensor, Sensor.RETURN);
        Map<WireEnd, Wire> arrivals = new HashMap<>();
        Deque<WireEnd> open = new ArrayDeque<>(List.of(start));
        while (!open.isEmpty()) {
            WireEnd here = open.remove();
            if (isEnd.test(here)) {
                return back(start, here, arrivals);
            }
            for (Wire wire : harness.wires().all()) {
                if (classes.contains(wire.signalClass()) && wire.ends().contains(here)) {
                    WireEnd next = wire.from().equals(here) ? wire.to() : wire.from();
                    if (!next.equals(start) && arrivals.putIfAbsent(next, wire) == null) {
                        open.add(next);
                    }
                }
            }
        }
        return List.of();
    }

    private static List<Wire> back(WireEnd start, WireEnd end, Map<WireEnd, Wire> arrivals) {
        List<Wire> way = new ArrayList<>();
        WireEnd place = end;
        while (!place.equals(start)) {
            Wire wire = arrivals.get(place);
            way.add(wire);
            place = wire.from().equals(place) ? wire.to() : wire.from();
        }
        return way;
    }
}
