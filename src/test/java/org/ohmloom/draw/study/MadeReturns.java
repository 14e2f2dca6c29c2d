package org.ohmloom.draw.study;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.SortedMap;
import java.util.TreeMap;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.graph.BranchId;
import org.ohmloom.graph.PointId;
import org.ohmloom.graph.ReturnLoop;
import org.ohmloom.ground.GroundReading;
import org.ohmloom.ground.LoopReading;
import org.ohmloom.ground.LostReturn;
import org.ohmloom.ground.Offset;
import org.ohmloom.ground.OffsetShare;
import org.ohmloom.ground.ReferencePoint;
import org.ohmloom.ground.ReturnStudy;
import org.ohmloom.ground.coupling.Coupling;
import org.ohmloom.ground.sensor.SensorBudget;
import org.ohmloom.ground.sensor.Unjudged;
import org.ohmloom.model.Component;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.ControlUnit;
import org.ohmloom.model.ElementId;
import org.ohmloom.model.GroundPoint;
import org.ohmloom.model.Load;
import org.ohmloom.model.Sensor;
import org.ohmloom.model.StateId;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireId;
import org.ohmloom.review.Evidence;
import org.ohmloom.review.StudyResults;
import org.ohmloom.solve.Solution;
import org.ohmloom.words.Text;

/** Studies of return paths as they might come out, made by a seed for the elements of a harness: numbers are not those of its physics. */
public final class MadeReturns {

    private final Analysis analysis;
    private final Random random;

    private MadeReturns(Analysis analysis, long seed) {
        this.analysis = analysis;
        this.random = new Random(seed);
    }

    /** The analysis with a made study in the place of its own. */
    public static Analysis in(Analysis analysis, long seed) {
        return with(analysis, new MadeReturns(analysis, seed).study());
    }

    /** The analysis with another study of its return paths. */
    public static Analysis with(Analysis analysis, ReturnStudy study) {
        StudyResults was = analysis.evidence().studies();
        Evidence changed = analysis.evidence()
                .with(new StudyResults(
                        was.envelope(),
                        was.startUps(),
                        was.charge(),
                        was.protection(),
                        study,
                        was.bundles(),
                        was.pending()));
        return new Analysis(changed, analysis.findings(), analysis.totals(), analysis.log());
    }

    private ReturnStudy study() {
        List<SensorBudget> sensors = sensors();
        return new ReturnStudy(
                grounds(),
                loops(),
                offsets(),
                sensors,
                couplings(),
                losses(),
                List.of(Unjudged.of(
                        Unjudged.Study.SENSORS,
                        Unjudged.Reason.NOT_ENTERED,
                        Text.of("Sensor error not checked: the span is not entered for"),
                        List.of("S99"))));
    }

    private List<GroundReading> grounds() {
        List<GroundReading> grounds = new ArrayList<>();
        for (GroundPoint ground : analysis.harness().grounds().all()) {
            SortedMap<StateId, GroundReading.JointReading> states = new TreeMap<>();
            analysis.evidence().solutions().forEach((state, solution) -> {
                double amps = amps(solution, new BranchId(ground.id() + ".joint"));
                double joint = solution.flow(new BranchId(ground.id() + ".joint"))
                        .map(flow -> flow.dropVolts())
                        .orElse(0.0);
                double volts = solution.volts(new PointId(ground.id().value())).orElse(joint);
                states.put(state, new GroundReading.JointReading(amps, amps, joint, volts));
            });
            List<ElementId> stacked = new ArrayList<>();
            analysis.harness().wires().all().stream()
                    .filter(wire -> wire.from().text().equals(ground.id().value())
                            || wire.to().text().equals(ground.id().value()))
                    .forEach(wire -> stacked.add(wire.id()));
            List<GroundReading.CurrentShare> returning = loads().stream()
                    .limit(3)
                    .map(load -> new GroundReading.CurrentShare(load, 1 + random.nextDouble()))
                    .toList();
            grounds.add(new GroundReading(
                    ground.id(),
                    stacked,
                    1,
                    states,
                    states.isEmpty() ? Optional.empty() : Optional.of(states.firstKey()),
                    returning));
        }
        return grounds;
    }

    private static double amps(Solution solution, BranchId branch) {
        return solution.flow(branch).map(flow -> flow.amps()).orElse(0.0);
    }

    private List<LoopReading> loops() {
        List<LoopReading> loops = new ArrayList<>();
        for (LoopReading reading : analysis.evidence().returns().loops()) {
            ReturnLoop loop = reading.loop();
            SortedMap<StateId, List<Double>> amps = new TreeMap<>();
            analysis.evidence()
                    .solutions()
                    .forEach((state, solution) -> amps.put(
                            state,
                            loop.members().stream()
                                    .map(member -> amps(solution, member))
                                    .toList()));
            Optional<LoopReading.Stray> stray = random.nextBoolean() || amps.isEmpty()
                    ? Optional.empty()
                    : Optional.of(new LoopReading.Stray(loop.members().get(0), amps.firstKey(), 1.25, 2.5));
            loops.add(new LoopReading(
                    loop,
                    0.01 + random.nextDouble() * 0.1,
                    amps,
                    random.nextInt(4) == 0 ? Optional.of("two returns share the winch current") : Optional.empty(),
                    stray,
                    Optional.of(new LoopReading.Enclosed(
                            0.3,
                            Text.of("wires on the layout"),
                            OptionalDouble.of(2e-6),
                            Text.of("L = mu0 l / 2 pi ..."))),
                    Optional.of(new LoopReading.FieldPickUp(1e-6, 50, 9.4e-5, 0.002))));
        }
        return loops;
    }

    private List<ComponentId> loads() {
        return analysis.harness().components().all().stream()
                .filter(component -> component.device() instanceof Load)
                .map(Component::id)
                .toList();
    }

    private List<Offset> offsets() {
        List<Offset> offsets = new ArrayList<>();
        for (Component component : analysis.harness().components().all()) {
            if (component.device() instanceof ControlUnit) {
                offsets.addAll(offsets(ReferencePoint.Kind.UNIT_GROUND, component.id()));
            } else if (component.device() instanceof Sensor) {
                offsets.addAll(offsets(ReferencePoint.Kind.SENSOR_RETURN, component.id()));
            }
        }
        analysis.harness().grounds().ids().forEach(id -> offsets.addAll(offsets(ReferencePoint.Kind.GROUND_POINT, id)));
        return offsets;
    }

    private List<Offset> offsets(ReferencePoint.Kind kind, ElementId owner) {
        ElementId against = analysis.harness().components().ids().iterator().next();
        ReferencePoint point =
                new ReferencePoint(kind, owner, new PointId(owner + ".at"), new PointId(against + ".-"), against);
        return analysis.evidence().solutions().keySet().stream()
                .map(state -> offset(point, state))
                .toList();
    }

    private Offset offset(ReferencePoint point, StateId state) {
        List<OffsetShare> shares = new ArrayList<>();
        for (ComponentId load : loads()) {
            double amps = random.nextDouble() * 20;
            double volts = amps * 0.001 * (random.nextDouble() - 0.2);
            shares.add(new OffsetShare(
                    load,
                    amps,
                    volts,
                    random.nextInt(4) == 0 ? Math.abs(volts) : 0,
                    random.nextInt(4) == 0 ? OptionalDouble.empty() : OptionalDouble.of(0.05 - volts)));
        }
        shares.sort(Comparator.comparingDouble((OffsetShare share) -> Math.abs(share.volts()))
                .reversed());
        double volts = shares.stream().mapToDouble(OffsetShare::volts).sum();
        double ripple = shares.stream().mapToDouble(OffsetShare::rippleVolts).sum();
        return new Offset(point, state, volts, ripple, shares);
    }

    private List<SensorBudget> sensors() {
        List<SensorBudget> budgets = new ArrayList<>();
        for (Component component : analysis.harness().components().all()) {
            if (component.device() instanceof Sensor) {
                for (StateId state : analysis.evidence().solutions().keySet()) {
                    budgets.add(new SensorBudget(
                            component.id(),
                            component.id(),
                            "A1",
                            state,
                            "bar",
                            5,
                            List.of(
                                    part("return offset", 0.08 * (random.nextDouble() - 0.5)),
                                    part("supply droop", -0.01),
                                    part("lead resistance", 0.002)),
                            List.of(part("sensor tolerance", 0.05), part("converter", 0.01)),
                            OptionalDouble.of(0.004),
                            0.1,
                            Text.of("1 % of the span of 10 bar")));
                }
            }
        }
        return budgets;
    }

    private static SensorBudget.ErrorPart part(String name, double error) {
        return new SensorBudget.ErrorPart(Text.of(name), error, Text.of(name + " = 12.3 mV / 5 V x 10 bar"), "formula");
    }

    private List<Coupling> couplings() {
        List<WireId> wires =
                analysis.harness().wires().all().stream().map(Wire::id).toList();
        List<Coupling> couplings = new ArrayList<>();
        analysis.evidence().solutions().keySet().stream().limit(1).forEach(state -> {
            for (int k = 0; k + 1 < Math.min(40, wires.size()); k += 2) {
                double volts = random.nextDouble() * 0.2;
                couplings.add(new Coupling(
                        wires.get(k),
                        wires.get(k + 1),
                        state,
                        1.5,
                        0.006,
                        volts * 0.4,
                        volts * 0.6,
                        volts,
                        random.nextBoolean() ? OptionalDouble.of(volts / 10) : OptionalDouble.empty(),
                        OptionalDouble.of(0.025),
                        new ComponentId("B1"),
                        new Coupling.Edge(12, 2, 1e-6),
                        Text.of("nothing")));
            }
        });
        return couplings;
    }

    private List<LostReturn> losses() {
        List<LostReturn> losses = new ArrayList<>();
        List<WireId> wires =
                analysis.harness().wires().all().stream().map(Wire::id).toList();
        for (GroundPoint ground : analysis.harness().grounds().all()) {
            for (StateId state : analysis.evidence().solutions().keySet()) {
                List<LostReturn.Detour> detours = wires.stream()
                        .limit(4)
                        .map(wire -> new LostReturn.Detour(wire, 0.01, 3 * random.nextDouble()))
                        .toList();
                losses.add(new LostReturn(
                        ground.id(),
                        state,
                        detours,
                        wires.stream()
                                .limit(1)
                                .map(wire -> new LostReturn.Overload(wire, 2.4, 0.5, "enamel of a sensor return"))
                                .toList(),
                        loads().stream().limit(1).toList(),
                        loads().stream().skip(1).limit(2).toList()));
            }
        }
        return losses;
    }
}
