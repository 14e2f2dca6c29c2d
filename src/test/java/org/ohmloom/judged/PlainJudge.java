package org.ohmloom.judged;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Predicate;
import org.ohmloom.model.Component;
import org.ohmloom.model.ControlUnit;
import org.ohmloom.model.GroundPoint;
import org.ohmloom.model.Harness;
import org.ohmloom.model.OperatingState;
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
    static final double SURVIVAL_VOLTS = 1;

    /** The lines of a bus lie between 0.5 and 4.5 V at the sender; a receiver takes -2 to 7 V. */
    static final double COMMON_MODE_VOLTS = 2.5;

    static final double RETURN_AMPS = 0.25;
    static final double STACKED = 4;
    static final double STRAY_AMPS = 0.01;

    private static final double NEAR = 0.01;

    private static final String ZERO = "BT.-";

    private final Harness harness;
    private final List<PlainState> states = new ArrayList<>();
    private final PlainSensors sensors;
    private final PlainCoupling coupling;

    PlainJudge(Harness harness) {
        this.harness = harness;
        harness.states().all().forEach(state -> states.add(new PlainState(harness, state)));
        this.sensors = new PlainSensors(harness, states);
        this.coupling = new PlainCoupling(harness, states, this::way);
    }

    /** Shares of their limits by rule and subject, as {@code ground-offset G1}; more than 1 is over. */
    SortedMap<String, Double> shares() {
        SortedMap<String, Double> shares = new TreeMap<>();
        for (GroundPoint ground : harness.grounds().all()) {
            String id = ground.id().value();
            shares.put("ground-offset " + id, groundShare(id));
            shares.put("ground-stud-crowded " + id, stacked(id) / STACKED);
        }
        for (String unit : units()) {
            shares.put("unit-ground-offset " + unit, unitShare(unit));
            shares.put("unit-offset-survival " + unit, unitShare(unit) * UNIT_GROUND_VOLTS / SURVIVAL_VOLTS);
        }
        shares.putAll(busShares());
        for (Component component : harness.components().all()) {
            if (component.device() instanceof Sensor) {
                String id = component.id().value();
                shares.put("sensor-error-over-limit " + id, errorShare(id));
                shares.put("coupling-over-limit " + id, couplingShare(id));
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

    double unitShare(String unit) {
        return worst(unit + ".GND", ZERO) / UNIT_GROUND_VOLTS;
    }

    /** The control units, all of them on one bus. */
    private List<String> units() {
        return harness.components().all().stream()
                .filter(each -> each.device() instanceof ControlUnit)
                .map(each -> each.id().value())
                .toList();
    }

    /** How far apart the two units of a bus are that are furthest apart, as a share of what receivers take. */
    double busShare() {
        return busShares().values().stream().mapToDouble(each -> each).max().orElse(0);
    }

    /** The same by unit: those of the worst pair, and others where they are far below it. */
    private SortedMap<String, Double> busShares() {
        SortedMap<String, Double> byUnit = new TreeMap<>();
        double most = 0;
        for (String one : units()) {
            for (String other : units()) {
                if (!one.equals(other)) {
                    double share = worst(one + ".GND", other + ".GND") / COMMON_MODE_VOLTS;
                    byUnit.merge("bus-common-mode " + one, share, Math::max);
                    most = Math.max(most, share);
                }
            }
        }
        double worst = most;
        // one finding tells the worst pair: a third unit that is too far off as well is not named
        byUnit.values().removeIf(share -> share > 1 - NEAR && share < worst * (1 - 1e-9));
        return byUnit;
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

    /** The largest error of a sensor over its span and all states, as a share of what is allowed. */
    double errorShare(String id) {
        return sensors.share(id);
    }

    /** What edges put onto the signal of a sensor, as a share of what coupling may take. */
    double couplingShare(String id) {
        return coupling.share(id);
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

    static String point(Wire wire, WireEnd end) {
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
