package org.ohmloom.ground;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.ohmloom.BesideOthers;
import org.ohmloom.graph.Branch;
import org.ohmloom.graph.BranchId;
import org.ohmloom.graph.BranchKind;
import org.ohmloom.graph.Law;
import org.ohmloom.graph.Network;
import org.ohmloom.graph.PointId;
import org.ohmloom.graph.Pulse;
import org.ohmloom.graph.SwitchedLoads.SwitchedLoad;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.ElementId;
import org.ohmloom.model.StateId;
import org.ohmloom.solve.NetworkSolution;
import org.ohmloom.solve.NetworkSolver;
import org.ohmloom.solve.Solution;

/** Common-impedance coupling worked by hand: V = I R on what is shared (grounding_formulas GF-1), and what duty cycles make of it. */
@BesideOthers
class SharedReturnsTest {

    private static final double EXACT = 1e-9;

    /** Moments keep their voltages to about a microvolt. */
    private static final double MOMENT_VOLTS = 3e-6;

    private static final PointId DATUM = new PointId("bat-");

    private final SortedMap<BranchId, Branch> branches = new TreeMap<>();
    private final SortedSet<PointId> points = new TreeSet<>();

    private void branch(String id, BranchKind kind, String from, String to, Law law) {
        points.add(new PointId(from));
        points.add(new PointId(to));
        branches.put(
                new BranchId(id),
                new Branch(
                        new BranchId(id),
                        kind,
                        new PointId(from),
                        new PointId(to),
                        Optional.of(new ComponentId(id)),
                        law));
    }

    private void battery(double volts) {
        branch("BT1", BranchKind.SOURCE, "bat-", "bat+", Law.VoltageSource.battery(volts, 0));
    }

    private void wire(String id, String from, String to, double ohms) {
        branch(id, BranchKind.WIRE, from, to, new Law.Resistance(ohms));
    }

    private void current(String id, String from, String to, double amps) {
        branch(id, BranchKind.LOAD, from, to, new Law.ConstantCurrent(amps));
    }

    private void output(String id, String from, String to, double onOhms, String clock, double phase, double duty) {
        branch(
                id,
                BranchKind.SOLID_STATE_OUTPUT,
                from,
                to,
                new Law.SwitchedResistance(onOhms, new Pulse(clock, 100, phase, duty)));
    }

    private Solution solve() {
        Network network = new Network(new StateId("on"), points, branches, Optional.of(DATUM)).watching(points);
        NetworkSolution solved = NetworkSolver.solve(network, () -> false);
        return new Solution(
                network,
                solved.islands(),
                solved.islandOf(),
                solved.volts(),
                solved.flows(),
                new TreeMap<>(),
                0,
                0,
                solved.duty());
    }

    private static Map<String, OffsetShare> shares(Solution solution, List<SwitchedLoad> switched, String at) {
        List<Attribution.Part> parts = Attribution.of(solution, () -> false)
                .ofVolts(new PointId(at), DATUM)
                .orElseThrow();
        return new OffsetShares(solution, Causes.of(switched, solution))
                .of(parts).stream()
                        .collect(Collectors.toMap(share -> share.cause().value(), Function.identity()));
    }

    private static double ripple(Solution solution, String at) {
        double mean = solution.volts(new PointId(at)).orElseThrow();
        return solution.duty()
                .momentVolts()
                .departure(new PointId(at), DATUM, mean)
                .orElseThrow();
    }

    private static SwitchedLoad switches(String output, String load, boolean highSide) {
        return new SwitchedLoad(new BranchId(output), new ComponentId(load), highSide, List.of(), List.of());
    }

    @Test
    void aFanOfTwentyAmpsOnTwoMetresOfSharedReturnShiftsASensorBy304Millivolts() {
        // worked example GE-5 (computed from V = I R): 20 A x 2 m x 7.6 mohm/m = 0.304 V, 7.6 % of a 4 V span
        battery(13.5);
        current("FAN", "bat+", "shared", 20);
        current("SENSOR", "bat+", "shared", 0.01);
        wire("W", "shared", "bat-", 2 * 0.0076);
        Map<String, OffsetShare> shares = shares(solve(), List.of(), "shared");
        assertEquals(0.304, shares.get("FAN").volts(), EXACT);
        assertEquals(0.076, shares.get("FAN").volts() / 4, EXACT);
        assertEquals(0.0152, shares.get("FAN").transferOhms(), EXACT);
        // the sensor disturbs itself by 10 mA x 15.2 mohm
        assertEquals(0.000152, shares.get("SENSOR").volts(), EXACT);
    }

    @Test
    void aLoadGroundedElsewhereAddsOnlyWhatItsCurrentMakesOnTheSharedPart() {
        // unit - 20 mohm - star - 5 mohm - battery; the pump comes back at the star: 10 A x 5 mohm; the unit 1 A x 25
        // mohm
        battery(12);
        current("UNIT", "bat+", "unit", 1);
        current("PUMP", "bat+", "star", 10);
        wire("W1", "unit", "star", 0.020);
        wire("W2", "star", "bat-", 0.005);
        Map<String, OffsetShare> shares = shares(solve(), List.of(), "unit");
        assertEquals(0.050, shares.get("PUMP").volts(), EXACT);
        assertEquals(0.025, shares.get("UNIT").volts(), EXACT);
    }

    @Test
    void aSecondSourceTakesOffsetAway() {
        // a supply of 30 A between the block and a load's feed: 10 A load back at the block, so 20 A come the other way
        battery(12);
        current("LOAD", "bat+", "block", 10);
        branch("ALT", BranchKind.SOURCE, "block", "alt+", Law.VoltageSource.regulated(14, 0, 30));
        wire("F", "alt+", "bat+", 0.01);
        wire("W", "block", "bat-", 0.002);
        Solution solution = solve();
        double altAmps = solution.flow(new BranchId("ALT")).orElseThrow().amps();
        Map<String, OffsetShare> shares = shares(solution, List.of(), "block");
        assertEquals(10 * 0.002, shares.get("LOAD").volts(), EXACT);
        assertEquals(-altAmps * 0.002, shares.get("ALT").volts(), EXACT);
        assertTrue(altAmps > 10, "it gives more than the load takes: " + altAmps);
    }

    @Test
    void aQuarterDutyGivesAQuarterOfTheOffsetAndThreeQuartersOfRipple() {
        // on: 12 V / (0.1 + 1.8 + 0.1 ohm) = 6 A, 0.6 V at the return; off: 0
        battery(12);
        output("Q", "bat+", "q", 0.1, "clock", 0, 0.25);
        branch("L", BranchKind.LOAD, "q", "ground", new Law.Resistance(1.8));
        wire("W", "ground", "bat-", 0.1);
        Solution solution = solve();
        OffsetShare share =
                shares(solution, List.of(switches("Q", "L", true)), "ground").get("L");
        assertEquals(0.25 * 0.6, share.volts(), EXACT);
        assertEquals(0.75 * 0.6, share.rippleVolts(), EXACT);
        assertEquals(0.75 * 0.6, ripple(solution, "ground"), MOMENT_VOLTS);
    }

    @Test
    void aLowSideOutputMakesItsLoadTheCauseAndNotItsControlUnit() {
        // the same load switched in its return: its current reaches the ground through the output
        battery(12);
        branch("L", BranchKind.LOAD, "bat+", "q", new Law.Resistance(1.8));
        output("Q", "q", "ground", 0.1, "clock", 0, 0.5);
        wire("W", "ground", "bat-", 0.1);
        Map<String, OffsetShare> shares = shares(solve(), List.of(switches("Q", "L", false)), "ground");
        assertEquals(0.5 * 0.6, shares.get("L").volts(), EXACT);
        assertEquals(0.5 * 0.6, shares.get("L").rippleVolts(), EXACT);
        assertEquals(1, shares.size(), shares.keySet().toString());
    }

    @Test
    void twoOutputsThatTakeTurnsOnOneClockLeaveNoRippleThoughEachMakesSome() {
        // 12 ohm each with 0 to 0.5 and 0.5 to 1 of the period: close to 1 A at any time on 10 mohm
        battery(12);
        output("Q1", "bat+", "q1", 0.5, "clock", 0, 0.5);
        output("Q2", "bat+", "q2", 0.5, "clock", 0.5, 0.5);
        branch("L1", BranchKind.LOAD, "q1", "ground", new Law.Resistance(11.49));
        branch("L2", BranchKind.LOAD, "q2", "ground", new Law.Resistance(11.49));
        wire("W", "ground", "bat-", 0.01);
        Solution solution = solve();
        Map<String, OffsetShare> shares =
                shares(solution, List.of(switches("Q1", "L1", true), switches("Q2", "L2", true)), "ground");
        assertEquals(0.010, solution.volts(new PointId("ground")).orElseThrow(), EXACT);
        assertEquals(0, ripple(solution, "ground"), MOMENT_VOLTS);
        for (String load : List.of("L1", "L2")) {
            assertEquals(0.005, shares.get(load).volts(), EXACT);
            assertEquals(0.005, shares.get(load).rippleVolts(), EXACT);
        }
    }

    @Test
    void theCurrentOfOneOfTwoJointsIsDividedAsTheVoltageIs() {
        // 9 A and 3 A come back over 1 and 2 mohm side by side: two thirds of each through the first
        battery(12);
        current("A", "bat+", "ground", 9);
        current("B", "bat+", "ground", 3);
        wire("J1", "ground", "bat-", 0.001);
        wire("J2", "ground", "bat-", 0.002);
        Solution solution = solve();
        Map<ElementId, Double> amps =
                Attribution.of(solution, () -> false).ofAmps(branches.get(new BranchId("J1"))).orElseThrow().stream()
                        .filter(part -> part.value() != 0)
                        .collect(Collectors.toMap(
                                part -> part.branch().element().orElseThrow(), Attribution.Part::value));
        assertEquals(6, amps.get(new ComponentId("A")), EXACT);
        assertEquals(2, amps.get(new ComponentId("B")), EXACT);
    }
}
