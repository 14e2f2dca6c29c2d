package org.ohmloom.review;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import org.ohmloom.graph.Branch;
import org.ohmloom.graph.Network;
import org.ohmloom.graph.PointId;
import org.ohmloom.model.Component;
import org.ohmloom.model.ControlUnit;
import org.ohmloom.model.ElementId;
import org.ohmloom.model.OperatingState;
import org.ohmloom.model.Pin;
import org.ohmloom.model.PinRole;
import org.ohmloom.model.Sensor;
import org.ohmloom.solve.BranchFlow;
import org.ohmloom.solve.Solution;

/**
 * The way back of a sensor carries no load's current.
 * <p>For each sensor, the shortest way from its return terminal to the sensor return of the control unit that reads its
 * signal (its supply ground where it has no sensor return). Reported when any member of that way carries more than
 * {@link #SIGNAL_AMPS}, with the largest current and the voltage that all of the way drops in that state: the sensor
 * reads wrong by that voltage.
 */
final class SensorReturnShared implements Rule {

    /** Current above which a return is not a sensor's own, A. Common practice, no source: sensors take milliamperes. */
    static final double SIGNAL_AMPS = 0.25;

    private static final RuleInfo INFO = new RuleInfo(
            "sensor-return-shared",
            "A sensor shares its return with a power load",
            Severity.WARNING,
            "Ohm's law; the current limit of a sensor return is common practice, no source",
            "The load's current makes a voltage on the shared conductor, and the control unit reads it as part of the"
                    + " sensor's signal.",
            "Give the sensor a return of its own to the control unit's sensor return pin.");

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public void review(Evidence evidence, Consumer<Finding> report) {
        Network network = evidence.drawn();
        Passages passages = new Passages(network);
        for (Component component : evidence.harness().components().all()) {
            if (component.device() instanceof Sensor) {
                List<Branch> way = wayBack(evidence, network, passages, component);
                worst(evidence, way).ifPresent(worst -> report.accept(finding(component, way, worst)));
            }
        }
    }

    /** The worst state of one way. */
    private record Worst(OperatingState state, double amps, double volts) {}

    private static List<Branch> wayBack(Evidence evidence, Network network, Passages passages, Component sensor) {
        Optional<PointId> signal = network.index().terminal(sensor.id(), Sensor.SIGNAL);
        Optional<PointId> back = network.index().terminal(sensor.id(), Sensor.RETURN);
        if (signal.isEmpty() || back.isEmpty()) {
            return List.of();
        }
        Set<PointId> heard = passages.reached(signal.get());
        for (Component unit : evidence.harness().components().all()) {
            if (unit.device() instanceof ControlUnit device && reads(network, unit, device, heard)) {
                return passages.shortest(back.get(), returns(network, unit, device));
            }
        }
        return List.of();
    }

    private static boolean reads(Network network, Component unit, ControlUnit device, Set<PointId> heard) {
        return device.pins().stream().filter(pin -> isInput(pin.role())).anyMatch(pin -> network.index()
                .terminal(unit.id(), pin.name())
                .filter(heard::contains)
                .isPresent());
    }

    private static boolean isInput(PinRole role) {
        return switch (role) {
            case ANALOGUE_INPUT,
                    THERMISTOR_INPUT,
                    SWITCH_TO_BATTERY_INPUT,
                    SWITCH_TO_GROUND_INPUT,
                    FREQUENCY_INPUT -> true;
            default -> false;
        };
    }

    private static Set<PointId> returns(Network network, Component unit, ControlUnit device) {
        List<Pin> own = device.pinsOf(PinRole.SENSOR_RETURN).toList();
        List<Pin> pins = own.isEmpty() ? device.pinsOf(PinRole.GROUND).toList() : own;
        Set<PointId> points = new HashSet<>();
        pins.forEach(pin -> network.index().terminal(unit.id(), pin.name()).ifPresent(points::add));
        return points;
    }

    private static Optional<Worst> worst(Evidence evidence, List<Branch> way) {
        Worst worst = null;
        for (OperatingState state : evidence.harness().states().all()) {
            Solution solution = evidence.solutions().get(state.id());
            if (solution == null) {
                continue;
            }
            double amps = 0;
            double volts = 0;
            for (Branch branch : way) {
                Optional<BranchFlow> flow = solution.flow(branch.id());
                amps = Math.max(
                        amps, flow.map(found -> Math.abs(found.onAmps())).orElse(0.0));
                volts += flow.map(found -> Math.abs(found.onDropVolts())).orElse(0.0);
            }
            if (amps > SIGNAL_AMPS && (worst == null || amps > worst.amps())) {
                worst = new Worst(state, amps, volts);
            }
        }
        return Optional.ofNullable(worst);
    }

    private static Finding finding(Component sensor, List<Branch> way, Worst worst) {
        List<ElementId> elements =
                way.stream().flatMap(branch -> branch.element().stream()).toList();
        return new FindingDraft(
                        INFO,
                        "The return of {name} ({sensor}) carries {current} of other loads in {state}; up to {shift} of error.")
                .word("name", sensor.name())
                .word("sensor", sensor.id())
                .word("state", StateNames.quoted(worst.state()))
                .amps("current", worst.amps())
                .volts("shift", worst.volts())
                .subject(sensor.id())
                .highlight(elements)
                .build();
    }

    /** Ways over wires, contacts, joints, chassis and devices. */
    private static final class Passages {

        private final Map<PointId, List<Branch>> at = new HashMap<>();

        Passages(Network network) {
            for (Branch branch : network.all()) {
                if (branch.kind().isPassage()) {
                    at.computeIfAbsent(branch.from(), key -> new ArrayList<>()).add(branch);
                    at.computeIfAbsent(branch.to(), key -> new ArrayList<>()).add(branch);
                }
            }
        }

        Set<PointId> reached(PointId start) {
            Map<PointId, Branch> arrivals = new HashMap<>();
            search(start, Set.of(), arrivals);
            Set<PointId> points = new HashSet<>(arrivals.keySet());
            points.add(start);
            return points;
        }

        /** Branches of a way with the fewest members from a point to the nearest of some points; empty when none. */
        List<Branch> shortest(PointId start, Set<PointId> targets) {
            Map<PointId, Branch> arrivals = new HashMap<>();
            Optional<PointId> end = search(start, targets, arrivals);
            List<Branch> way = new ArrayList<>();
            PointId point = end.orElse(start);
            while (!point.equals(start)) {
                Branch branch = arrivals.get(point);
                way.add(branch);
                point = branch.from().equals(point) ? branch.to() : branch.from();
            }
            return way;
        }

        private Optional<PointId> search(PointId start, Set<PointId> targets, Map<PointId, Branch> arrivals) {
            Deque<PointId> open = new ArrayDeque<>(List.of(start));
            while (!open.isEmpty()) {
                PointId point = open.remove();
                if (targets.contains(point)) {
                    return Optional.of(point);
                }
                for (Branch branch : at.getOrDefault(point, List.of())) {
                    PointId next = branch.from().equals(point) ? branch.to() : branch.from();
                    if (!next.equals(start) && arrivals.putIfAbsent(next, branch) == null) {
                        open.add(next);
                    }
                }
            }
            return Optional.empty();
        }
    }
}
