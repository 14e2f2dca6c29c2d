package org.ohmloom.size.protection;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.ohmloom.BesideOthers;
import org.ohmloom.graph.Branch;
import org.ohmloom.graph.BranchId;
import org.ohmloom.graph.BranchKind;
import org.ohmloom.graph.Law;
import org.ohmloom.graph.PointId;

/** What can carry a fault's current lies on a loop with it. */
@BesideOthers
class DeadEndsTest {

    /** Source minus to plus, plus to bar, bar to far, bar to stub, stub to tip; the chassis is the source's minus. */
    private final List<Branch> branches = List.of(
            branch("S", "minus", "plus"),
            branch("W1", "plus", "bar"),
            branch("W2", "bar", "far"),
            branch("W3", "bar", "stub"),
            branch("W4", "stub", "tip"));

    private final DeadEnds ends = new DeadEnds(branches);

    private static Branch branch(String id, String from, String to) {
        return new Branch(
                new BranchId(id),
                BranchKind.WIRE,
                new PointId(from),
                new PointId(to),
                Optional.empty(),
                new Law.Resistance(1));
    }

    private static boolean[] all() {
        return new boolean[] {true, true, true, true, true};
    }

    @Test
    void aFaultAtTheFarEndLeavesTheLoopAndTakesTheStubAway() {
        boolean[] carries = all();
        assertTrue(ends.prune(carries, new PointId("far"), new PointId("minus")));
        assertArrayEquals(new boolean[] {true, true, true, false, false}, carries);
    }

    @Test
    void aFaultBehindAnOpenBranchCarriesNothing() {
        boolean[] carries = all();
        carries[1] = false;
        assertFalse(ends.prune(carries, new PointId("far"), new PointId("minus")));
    }

    @Test
    void aFaultAtThePlusTerminalLeavesTheSourceAlone() {
        boolean[] carries = all();
        assertTrue(ends.prune(carries, new PointId("plus"), new PointId("minus")));
        assertArrayEquals(new boolean[] {true, false, false, false, false}, carries);
    }

    @Test
    void aFaultAtAPointOutsideTheNetworkCarriesNothing() {
        assertFalse(ends.prune(all(), new PointId("elsewhere"), new PointId("minus")));
    }
}
