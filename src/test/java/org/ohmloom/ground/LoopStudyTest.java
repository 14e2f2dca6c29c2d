package org.ohmloom.ground;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.SortedMap;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.ohmloom.BesideOthers;
import org.ohmloom.graph.BranchKind;
import org.ohmloom.graph.HarnessSketch;
import org.ohmloom.graph.Network;
import org.ohmloom.graph.ReturnLoops;
import org.ohmloom.graph.Routes;
import org.ohmloom.ground.GroundReading.CurrentShare;
import org.ohmloom.ground.GroundReading.JointReading;
import org.ohmloom.heat.balance.RoundWire;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.ControlUnit;
import org.ohmloom.model.DesignRules;
import org.ohmloom.model.Harness;
import org.ohmloom.model.OperatingState;
import org.ohmloom.model.Pin;
import org.ohmloom.model.PinRole;
import org.ohmloom.model.Position;
import org.ohmloom.model.ReturnRules;
import org.ohmloom.model.ReturnRules.IntendedParallel;
import org.ohmloom.model.Setting;
import org.ohmloom.model.SignalClass;
import org.ohmloom.model.StateId;
import org.ohmloom.model.WireId;
import org.ohmloom.solve.DcSolver;
import org.ohmloom.solve.Solution;
import org.ohmloom.units.GaugeSystem;

/** What flows at ground points and in loops, by hand. */
@BesideOthers
class LoopStudyTest {

    private static final StateId RUNNING = new StateId("running");
    private static final double MICROAMP = 1e-6;
    private static final double RELATIVE = 1e-9;
    private static final RoundWire SQUARE_MILLIMETRE = new RoundWire(0.0185, 1, 1.3, 2.4, 0.17);

    private static ReturnRules rules(
            OptionalDouble tesla, OptionalDouble hertz, OptionalDouble height, List<IntendedParallel> intended) {
        OptionalDouble none = OptionalDouble.empty();
        return new ReturnRules(none, none, none, tesla, hertz, height, none, intended);
    }

    private static LoopStudy study(HarnessSketch sketch, ReturnRules asked, Map<String, Position> layout) {
        Harness plain = sketch.harness();
        DesignRules rules = new DesignRules(
                "road-vehicle",
                12,
                0.03,
                GaugeSystem.METRIC,
                "none named",
                Optional.empty(),
                30,
                Optional.empty(),
                Optional.of(asked));
        Harness harness = plain.withRules(rules).withLayout(new TreeMap<>(layout));
        OperatingState state = HarnessSketch.state();
        for (var component : harness.components().all()) {
            if (component.id().value().startsWith("L")) {
                state = state.with(component.id(), Setting.ON);
            }
        }
        Network network = sketch.network(state);
        SortedMap<StateId, Solution> solutions =
                new TreeMap<>(Map.of(RUNNING, DcSolver.solve(network, harness, () -> false)));
        TreeMap<WireId, RoundWire> shapes = new TreeMap<>();
        harness.wires().ids().forEach(id -> shapes.put(id, SQUARE_MILLIMETRE));
        return LoopStudy.of(
                new LoopInput(harness, sketch.network(), ReturnLoops.of(sketch.network()), Routes.of(harness), shapes),
                solutions,
                () -> false);
    }

    private static LoopStudy study(HarnessSketch sketch) {
        return study(sketch, ReturnRules.NONE, Map.of());
    }

    private static double amps(GroundReading ground, String cause) {
        return ground.returning().stream()
                .filter(share -> share.cause().value().equals(cause))
                .mapToDouble(CurrentShare::amps)
                .sum();
    }

    private static GroundReading ground(LoopStudy study, String id) {
        return study.grounds().stream()
                .filter(each -> each.ground().value().equals(id))
                .findFirst()
                .orElseThrow();
    }

    /** 12 V; L1 of 6 ohm and L2 of 12 ohm at the front ground G1, the battery's negative on G2. */
    private static HarnessSketch twoLamps() {
        return new HarnessSketch()
                .battery("BAT1", 12, 0.01)
                .body("FRAME", 0.002)
                .ground("G1", "FRAME", 0.001)
                .ground("G2", "FRAME", 0.0005)
                .load("L1", 2, 12)
                .load("L2", 1, 12)
                .wire("W1", "BAT1.+", "L1.+", 0.1)
                .wire("W2", "BAT1.+", "L2.+", 0.1)
                .wire("W3", "L1.-", "G1", 0.1)
                .wire("W4", "L2.-", "G1", 0.1)
                .wire("W5", "BAT1.-", "G2", 0.01);
    }

    @Test
    void aGroundPointTellsItsStackItsCurrentItsJointsShareAndWhoseCurrentItIs() {
        LoopStudy study = study(twoLamps());
        GroundReading front = ground(study, "G1");
        assertEquals(
                List.of("W3", "W4"),
                front.stacked().stream().map(id -> id.value()).toList());
        assertEquals(1, front.studs());
        assertEquals(4, front.mostStacked());
        JointReading joint = front.states().get(RUNNING);
        // the common way back: 1 mohm, 2 + 2 mohm of frame, 0.5 mohm, 10 mohm of W5
        double common = 0.001 + 0.004 + 0.0005 + 0.01;
        double one = 1 / (6 + 0.2);
        double other = 1 / (12 + 0.2);
        double amps = 12 / (0.01 + common + 1 / (one + other));
        assertEquals(amps, joint.amps(), MICROAMP);
        assertEquals(amps * 0.001, joint.jointVolts(), MICROAMP);
        assertEquals(amps * common, joint.offsetVolts(), MICROAMP);
        assertEquals(0.001 / common, joint.jointFraction(), RELATIVE * 10);
        assertEquals(amps * one / (one + other), amps(front, "L1"), MICROAMP);
        assertEquals(amps * other / (one + other), amps(front, "L2"), MICROAMP);
        assertEquals(Optional.of(RUNNING), front.worst());
        assertEquals(-amps, ground(study, "G2").states().get(RUNNING).amps(), MICROAMP);
        assertEquals(List.of(), study.loops());
    }

    @Test
    void aJointWithoutResistanceHasTheCurrentItsWiresBring() {
        HarnessSketch sketch = twoLamps().ground("G1", "FRAME", 0);
        GroundReading front = ground(study(sketch), "G1");
        JointReading joint = front.states().get(RUNNING);
        double sum = front.returning().stream().mapToDouble(CurrentShare::amps).sum();
        assertTrue(joint.amps() > 2.8 && joint.amps() < 3.0, () -> joint.amps() + " A");
        assertEquals(joint.amps(), sum, RELATIVE);
        assertEquals(0, joint.jointVolts());
    }

    @Test
    void aCaseAndAStrapCountOnTheStudAndTheCaseBringsItsCurrent() {
        HarnessSketch sketch = new HarnessSketch()
                .battery("BAT1", 12, 0.01)
                .body("FRAME")
                .body("ENGINE")
                .ground("G1", "FRAME", 0.001)
                .ground("G2", "ENGINE", 0.001)
                .strap("BS1", "G1", "G2", 0.002)
                .load("L1", 12, 12)
                .bolt("L1", "-", "G2", 0.0005)
                .wire("W1", "BAT1.+", "L1.+", 0.1)
                .wire("W5", "BAT1.-", "G1", 0.01);
        GroundReading engine = ground(study(sketch), "G2");
        assertEquals(
                List.of("L1", "BS1"),
                engine.stacked().stream().map(id -> id.value()).toList());
        // 12 V over 10 m + 0.1 + 1 + 0.5 m + 1 m + 2 m + 1 m + 10 m ohm
        double amps = 12 / (0.01 + 0.1 + 1 + 0.0005 + 0.001 + 0.002 + 0.001 + 0.01);
        assertEquals(amps, engine.states().get(RUNNING).amps(), MICROAMP);
        assertEquals(amps, amps(engine, "L1"), MICROAMP);
        // the same without any resistance of the bolt and the joint
        sketch.bolt("L1", "-", "G2", 0).ground("G2", "ENGINE", 0);
        GroundReading bare = ground(study(sketch), "G2");
        double more = 12 / (0.01 + 0.1 + 1 + 0.002 + 0.001 + 0.01);
        assertEquals(more, bare.states().get(RUNNING).amps(), MICROAMP);
        assertEquals(more, amps(bare, "L1"), MICROAMP);
    }

    /** A shield grounded at both ends lies beside 4 mohm of frame and both joints' 1 mohm: it takes its share of the lamp's current. */
    private static HarnessSketch shieldedBothEnds() {
        return new HarnessSketch()
                .battery("BAT1", 12, 0.01)
                .body("FRAME", 0.002)
                .ground("G1", "FRAME", 0.001)
                .ground("G2", "FRAME", 0.001)
                .load("L1", 12, 12)
                .wire("W1", "BAT1.+", "L1.+", 0.1)
                .wire("W3", "L1.-", "G1", 0.1)
                .wire("W5", "BAT1.-", "G2", 0.01)
                .wire("W6", "G1", "G2", 0.024, SignalClass.SHIELD, OptionalDouble.of(2), OptionalDouble.empty());
    }

    @Test
    void aShieldGroundedAtBothEndsCarriesTheLampsCurrentByTheCurrentDivider() {
        LoopReading loop = study(shieldedBothEnds()).loops().get(0);
        double chassis = 0.001 + 0.002 + 0.002 + 0.001;
        double amps = 12 / (0.01 + 0.1 + 1 + 0.1 + 0.01 + chassis * 0.024 / (chassis + 0.024));
        double shield = amps * chassis / (chassis + 0.024);
        assertEquals(chassis + 0.024, loop.ohms(), RELATIVE);
        assertEquals(shield, loop.stray().orElseThrow().amps(), MICROAMP);
        assertEquals("W6", loop.stray().orElseThrow().member().value());
        // along the loop the shield runs against the frame; their difference is what the lamp brings
        List<Double> along = loop.ampsByState().get(RUNNING);
        int atShield = loop.loop().members().indexOf(loop.stray().orElseThrow().member());
        assertEquals(amps - shield, Math.abs(along.get((atShield + 1) % along.size())), MICROAMP);
        assertTrue(along.get(atShield) * along.get((atShield + 1) % along.size()) < 0);
        assertEquals(Optional.empty(), loop.enclosed());
        assertEquals(Optional.empty(), loop.field());
    }

    @Test
    void aHeightAboveTheChassisGivesTheAreaAndTheInductanceAndAFieldItsCurrent() {
        ReturnRules asked = rules(OptionalDouble.of(1e-5), OptionalDouble.of(1000), OptionalDouble.of(0.05), List.of());
        LoopReading loop = study(shieldedBothEnds(), asked, Map.of()).loops().get(0);
        // 2 m of shield 50 mm above the frame
        assertEquals(2 * 0.05, loop.enclosed().orElseThrow().squareMetres(), RELATIVE);
        double henries = 0.2e-6 * Math.log(4 * 0.05 / 0.0013) * 2;
        assertEquals(henries, loop.enclosed().orElseThrow().henries().getAsDouble(), RELATIVE * henries);
        double volts = 2 * Math.PI * 1000 * 1e-5 * 0.1;
        assertEquals(volts, loop.field().orElseThrow().volts(), RELATIVE);
        double reactance = 2 * Math.PI * 1000 * henries;
        assertEquals(
                volts / Math.hypot(0.030, reactance), loop.field().orElseThrow().amps(), RELATIVE);
    }

    @Test
    void theLayoutGivesTheAreaOfTheOutlineScaledToTheLengthsOfTheSegments() {
        // shield from G1 at B1 round the corner B2 to G2 at B3; 1 m and 0.5 m, drawn at half the size: a triangle
        HarnessSketch sketch = shieldedBothEnds().segment("S1", "B1", "B2", 1).segment("S2", "B2", "B3", 0.5);
        sketch.at("G1", "B1").at("G2", "B3");
        Map<String, Position> layout =
                Map.of("B1", new Position(0, 0), "B2", new Position(500, 0), "B3", new Position(500, 250));
        LoopReading loop = study(sketch, ReturnRules.NONE, layout).loops().get(0);
        assertEquals(0.5 * 1 * 0.5, loop.enclosed().orElseThrow().squareMetres(), RELATIVE);
        assertEquals(OptionalDouble.empty(), loop.enclosed().orElseThrow().henries());
        // without one of the positions there is none
        Map<String, Position> part = Map.of("B1", new Position(0, 0), "B3", new Position(500, 250));
        assertEquals(
                Optional.empty(),
                study(sketch, ReturnRules.NONE, part).loops().get(0).enclosed());
    }

    @Test
    void twoReturnsInOneBundleEncloseTheirSpacingTimesTheirLength() {
        HarnessSketch sketch = new HarnessSketch()
                .battery("BAT1", 12, 0.01)
                .load("L1", 12, 12)
                .segment("S1", "B1", "B2", 3)
                .at("BAT1", "B1")
                .at("L1", "B2")
                .wire("W1", "BAT1.+", "L1.+", 0.1)
                .wire("W2", "L1.-", "BAT1.-", 0.1)
                .wire("W3", "L1.-", "BAT1.-", 0.3);
        IntendedParallel intended =
                new IntendedParallel(List.of(new WireId("W2"), new WireId("W3")), List.of(), "a spare return");
        ReturnRules asked =
                rules(OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty(), List.of(intended));
        LoopReading loop = study(sketch, asked, Map.of()).loops().get(0);
        assertEquals(Optional.of("a spare return"), loop.intended());
        assertEquals(3 * 0.0024, loop.enclosed().orElseThrow().squareMetres(), RELATIVE);
        double henries = 0.4e-6 * Math.log(2 * 0.0024 / 0.0013) * 3;
        assertEquals(henries, loop.enclosed().orElseThrow().henries().getAsDouble(), RELATIVE * henries);
        // three quarters of the current in W2; the loop runs against one of them
        List<Double> along = loop.ampsByState().get(RUNNING);
        assertEquals(-3, along.get(0) / along.get(1), RELATIVE);
        assertEquals(Optional.empty(), loop.stray());
        assertEquals(Optional.empty(), study(sketch).loops().get(0).intended());
    }

    @Test
    void aUnitWithASensorReturnAndAGroundedCaseIsALoopThroughItsInside() {
        HarnessSketch sketch = new HarnessSketch()
                .battery("BAT1", 12, 0.01)
                .body("FRAME")
                .ground("G1", "FRAME", 0.001)
                .ground("G2", "FRAME", 0.001)
                .load("L1", 12, 12)
                .component(
                        "U1",
                        new ControlUnit(
                                List.of(
                                        Pin.of("1", PinRole.SUPPLY),
                                        Pin.of("2", PinRole.GROUND),
                                        Pin.of("3", PinRole.CASE)),
                                0.2,
                                OptionalDouble.empty(),
                                OptionalDouble.of(0.01)))
                .bolt("U1", "3", "G1", 0.001)
                .wire("W1", "BAT1.+", "U1.1", 0.1)
                .wire("W2", "U1.2", "G2", 0.1)
                .wire("W3", "BAT1.-", "G2", 0.01)
                .wire("W4", "BAT1.+", "L1.+", 0.1)
                .wire("W5", "L1.-", "U1.2", 0.1);
        List<LoopReading> loops = study(sketch).loops();
        assertEquals(1, loops.size());
        assertTrue(
                loops.get(0).loop().members().stream().anyMatch(id -> id.value().equals("U1.ground~case")));
        // the lamp's return by the unit divides: part of it leaves by the case
        assertTrue(loops.get(0).stray().orElseThrow().amps() > 0.5);
    }

    @Test
    void onRandomNetworksTheSharesSumToTheJointsCurrentWithinABillionthOfTheirMagnitudes() {
        Random random = new Random(7);
        for (int run = 0; run < 60; run++) {
            int grounds = 2 + random.nextInt(3);
            HarnessSketch sketch = new HarnessSketch()
                    .battery("BAT1", 12, 0.005 + 0.01 * random.nextDouble())
                    .body("FRAME", 0.001 * (1 + random.nextInt(3)));
            for (int k = 0; k < grounds; k++) {
                sketch.ground("G" + k, "FRAME", 0.0005 * random.nextInt(3));
            }
            sketch.wire("W0", "BAT1.-", "G0", 0.005);
            for (int k = 1; k <= 6; k++) {
                sketch.load("L" + k, 1 + random.nextInt(9), 12)
                        .wire("W" + k, "BAT1.+", "L" + k + ".+", 0.05)
                        .wire("W2" + k, "L" + k + ".-", "G" + random.nextInt(grounds), 0.02);
                if (random.nextInt(3) == 0) {
                    sketch.wire("W3" + k, "L" + k + ".-", "G" + random.nextInt(grounds), 0.02);
                }
            }
            for (GroundReading ground : study(sketch).grounds()) {
                double sum = ground.returning().stream()
                        .mapToDouble(CurrentShare::amps)
                        .sum();
                double all = ground.returning().stream()
                        .mapToDouble(share -> Math.abs(share.amps()))
                        .sum();
                double amps = ground.worst()
                        .map(state -> ground.states().get(state).amps())
                        .orElse(0.0);
                assertEquals(amps, sum, RELATIVE * Math.max(all, 1));
            }
        }
    }

    @Test
    void membersMeantForSignalsAreTellable() {
        Harness harness = shieldedBothEnds().harness();
        LoopMembers members = new LoopMembers(harness);
        Network network = shieldedBothEnds().network();
        assertTrue(members.isSignal(network.branch(new WireId("W6")).orElseThrow()));
        assertFalse(members.isSignal(network.branch(new WireId("W3")).orElseThrow()));
        assertTrue(network.of(new ComponentId("BAT1")).stream()
                .filter(branch -> branch.kind() == BranchKind.SOURCE)
                .noneMatch(members::isSignal));
    }
}
