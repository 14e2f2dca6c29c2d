package org.ohmloom.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.ohmloom.graph.BranchId;
import org.ohmloom.graph.PointId;

/** A solution with short ways to read and to check it. */
record Solved(NetworkSolution solution) {

    /** Values worked by hand are compared to this, relative. */
    static final double EXACT = 1e-12;

    /** What a stranger who recomputes the published numbers allows, relative and without a floor for the voltages. */
    private static final double PUBLISHED = 1e-9;

    Solved {
        ResidualCheck check = ResidualCheck.of(solution.flows().values(), solution.volts());
        assertTrue(check.isWithinTolerances(), () -> "Kirchhoff's laws are missed: " + check);
        for (BranchFlow flow : solution.flows().values()) {
            if (flow.ohms().isPresent()) {
                double from = solution.volts().get(flow.branch().from());
                double to = solution.volts().get(flow.branch().to());
                double drop = flow.amps() * flow.ohms().getAsDouble();
                assertEquals(
                        drop,
                        flow.dropVolts(),
                        0,
                        "published drop of " + flow.branch().id());
                assertEquals(
                        from - to,
                        drop,
                        PUBLISHED * Math.max(Math.abs(from), Math.abs(to)),
                        "voltages along " + flow.branch().id());
            }
        }
    }

    BranchFlow flow(String branch) {
        return solution.flows().get(new BranchId(branch));
    }

    double amps(String branch) {
        return flow(branch).amps();
    }

    double drop(String branch) {
        return flow(branch).dropVolts();
    }

    double volts(String point) {
        return solution.volts().get(new PointId(point));
    }

    boolean hasVolts(String point) {
        return solution.volts().containsKey(new PointId(point));
    }

    /** The island a point is in. */
    Island island(String point) {
        String id = solution.islandOf().get(new PointId(point));
        return solution.islands().stream()
                .filter(island -> island.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    IslandStatus status(String point) {
        return island(point).status();
    }

    Solved hasAmps(String branch, double expected) {
        near(expected, amps(branch), "current of " + branch);
        return this;
    }

    Solved hasVolts(String point, double expected) {
        near(expected, volts(point), "voltage of " + point);
        return this;
    }

    static void near(double expected, double actual, String what) {
        assertEquals(expected, actual, EXACT * Math.max(1, Math.abs(expected)), what);
    }
}
