package org.ohmloom.ground;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.ohmloom.BesideOthers;
import org.ohmloom.graph.Branch;
import org.ohmloom.graph.BranchId;
import org.ohmloom.graph.Network;
import org.ohmloom.graph.PointId;
import org.ohmloom.solve.BranchFlow;
import org.ohmloom.solve.IslandStatus;
import org.ohmloom.solve.NetworkSolution;
import org.ohmloom.solve.NetworkSolver;

/** Shares of offsets and currents on random networks, held against the solution and against a dense solver. */
@BesideOthers
class AttributionTest {

    /** Agreement relative to the sum of the magnitudes of all shares. */
    private static final double AGREEMENT = 1e-9;

    private static final PointId DATUM = new PointId("r0");
    private static final BranchId SOURCE = new BranchId("S0");

    /** A solved network with its attribution. */
    private record Case(long seed, Network network, NetworkSolution solution, Attribution attribution) {

        static Case of(long seed) {
            Network network = RandomReturns.of(seed);
            NetworkSolution solution = NetworkSolver.solve(network, () -> false);
            assertEquals(IslandStatus.SOLVED, solution.islands().get(0).status(), "seed " + seed);
            return new Case(
                    seed,
                    network,
                    solution,
                    Attribution.of(
                            network.points(), network.datum(), solution.flows().values(), () -> false));
        }

        List<PointId> returns() {
            return network.points().stream()
                    .filter(point -> point.value().startsWith("r") && !point.equals(DATUM))
                    .toList();
        }

        double volts(PointId point) {
            return solution.volts().get(point);
        }

        List<Attribution.Part> parts(PointId at, PointId reference) {
            return attribution.ofVolts(at, reference).orElseThrow();
        }
    }

    private static double magnitude(List<Attribution.Part> parts) {
        return parts.stream().mapToDouble(part -> Math.abs(part.value())).sum();
    }

    private static double sum(List<Attribution.Part> parts) {
        return parts.stream().mapToDouble(Attribution.Part::value).sum();
    }

    @Test
    void sharesOfEveryReturnPointSumToItsOffset() {
        for (long seed = 0; seed < RandomReturns.count(); seed++) {
            Case drawn = Case.of(seed);
            for (PointId at : drawn.returns()) {
                for (PointId reference : List.of(DATUM, drawn.returns().get(0))) {
                    if (!at.equals(reference)) {
                        List<Attribution.Part> parts = drawn.parts(at, reference);
                        double offset = drawn.volts(at) - drawn.volts(reference);
                        assertEquals(offset, sum(parts), AGREEMENT * magnitude(parts), at + " seed " + seed);
                    }
                }
            }
        }
    }

    @Test
    void eachShareIsTheChangeWhenThatOneCurrentIsSetToZeroWithTheOthersHeld() {
        int compared = 0;
        for (long seed = 0; seed < RandomReturns.count(); seed++) {
            Case drawn = Case.of(seed);
            HeldCurrents dense =
                    new HeldCurrents(List.copyOf(drawn.solution().flows().values()), SOURCE, DATUM);
            List<PointId> returns = drawn.returns();
            PointId at = returns.get((int) (seed % returns.size()));
            double whole = dense.voltsWithout(new BranchId("none"), at, DATUM);
            List<Attribution.Part> parts = drawn.parts(at, DATUM);
            for (Attribution.Part part : parts) {
                double change = whole - dense.voltsWithout(part.branch().id(), at, DATUM);
                assertEquals(
                        change,
                        part.value(),
                        AGREEMENT * magnitude(parts),
                        part.branch().id() + " at " + at + " seed " + seed);
                compared++;
            }
        }
        assertTrue(compared > 5 * RandomReturns.count(), "shares compared: " + compared);
    }

    @Test
    void sharesOfTheCurrentOfEveryReturnSumToIt() {
        for (long seed = 0; seed < RandomReturns.count(); seed++) {
            Case drawn = Case.of(seed);
            for (BranchFlow flow : drawn.solution().flows().values()) {
                Branch branch = flow.branch();
                if (branch.id().value().startsWith("R") || branch.id().value().startsWith("Y")) {
                    List<Attribution.Part> parts =
                            drawn.attribution().ofAmps(branch).orElseThrow();
                    assertEquals(flow.amps(), sum(parts), AGREEMENT * magnitude(parts), branch.id() + " seed " + seed);
                }
            }
        }
    }
}
