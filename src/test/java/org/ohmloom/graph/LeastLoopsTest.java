package org.ohmloom.graph;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.ohmloom.BesideOthers;
import org.ohmloom.Campaign;

/**
 * The loops are a smallest set: fewest elements, then least length. On small networks against every cycle there is; a set of
 * independent cycles is smallest when it is taken greedily from all of them (matroid).
 */
@BesideOthers
class LeastLoopsTest {

    private static final double METRES = 1e-5;

    /** Wires of a length in tenths of a metre. */
    private record Sketch(List<String[]> ends, List<Integer> decimetres) {
        Network network() {
            return ReturnLoopsTest.wires(ends);
        }

        double metres(Branch branch) {
            return branch.kind() == BranchKind.WIRE ? decimetres.get(number(branch.id())) / 10.0 : 0;
        }

        FoundLoops loops() {
            return ReturnLoops.of(network(), this::metres);
        }

        double metres(ReturnLoop loop) {
            return loop.members().stream()
                            .mapToInt(member -> decimetres.get(number(member)))
                            .sum()
                    / 10.0;
        }

        static int number(BranchId wire) {
            return Integer.parseInt(wire.value().substring(1)) - 1;
        }
    }

    private static Sketch random(Random random) {
        int points = 2 + random.nextInt(6);
        List<String[]> ends = new ArrayList<>();
        List<Integer> lengths = new ArrayList<>();
        for (int k = 1; k < points; k++) {
            ends.add(new String[] {"P" + random.nextInt(k), "P" + k});
        }
        for (int k = random.nextInt(7); k > 0; k--) {
            int from = random.nextInt(points);
            int to = random.nextInt(points);
            if (from != to) {
                ends.add(new String[] {"P" + from, "P" + to});
            }
        }
        // few lengths, so that ties are common
        ends.forEach(each -> lengths.add(1 + random.nextInt(4)));
        return new Sketch(ends, lengths);
    }

    @Test
    void randomNetworksGiveTheSmallestSetByCountThenLength() {
        Random random = new Random(41);
        for (int run = 0; run < (Campaign.FULL ? 20_000 : 1500); run++) {
            Sketch sketch = random(random);
            FoundLoops found = sketch.loops();
            assertTrue(found.shortest());
            List<double[]> expected = leastByBruteForce(sketch);
            List<double[]> actual = found.loops().stream()
                    .map(loop -> new double[] {loop.members().size(), sketch.metres(loop)})
                    .sorted(byWeight())
                    .toList();
            assertEquals(expected.size(), actual.size());
            for (int k = 0; k < actual.size(); k++) {
                assertEquals(expected.get(k)[0], actual.get(k)[0]);
                assertEquals(expected.get(k)[1], actual.get(k)[1], METRES);
            }
            assertEquals(actual.size(), independent(found.loops()));
        }
    }

    @Test
    void withAnyMemberOfALoopTakenOutTheLoopIsGoneAndTheNumberOfLoopsIsOneLess() {
        Random random = new Random(43);
        for (int run = 0; run < (Campaign.FULL ? 2000 : 150); run++) {
            Sketch sketch = random(random);
            Network network = sketch.network();
            List<ReturnLoop> loops = sketch.loops().loops();
            for (ReturnLoop loop : loops) {
                for (BranchId member : loop.members()) {
                    SortedMap<BranchId, Branch> left = new TreeMap<>(network.branches());
                    left.remove(member);
                    Network opened = new Network(network.state(), network.points(), left, network.datum());
                    List<ReturnLoop> after =
                            ReturnLoops.of(opened, sketch::metres).loops();
                    assertEquals(loops.size() - 1, after.size());
                    assertFalse(after.contains(loop));
                }
            }
        }
    }

    @Test
    void aThousandWiresBetweenTwoSplicesAreLoopsOfTheShortestWireWithEachOfTheOthers() {
        List<String[]> ends = new ArrayList<>();
        List<Integer> lengths = new ArrayList<>();
        for (int k = 0; k < 1000; k++) {
            ends.add(new String[] {"P0", "P1"});
            lengths.add(k == 500 ? 1 : 5 + k % 7);
        }
        FoundLoops found = new Sketch(ends, lengths).loops();
        assertTrue(found.shortest());
        assertEquals(999, found.loops().size());
        assertTrue(found.loops().stream().allMatch(loop -> loop.members().contains(new BranchId("W501"))));
    }

    @Test
    void aHundredThousandWiresWithAThousandLoopsInOneBlockGiveExactlyThose() {
        // a chain of 99,000 wires with 1,000 across: the k-th from point 98k to point 98k + 100, so that each overlaps
        // the next
        List<String[]> ends = new ArrayList<>();
        for (int k = 0; k < 99_000; k++) {
            ends.add(new String[] {"P" + k, "P" + (k + 1)});
        }
        for (int k = 0; k < 1000; k++) {
            ends.add(new String[] {"P" + 98 * k, "P" + (98 * k + 100)});
        }
        FoundLoops found = ReturnLoops.of(ReturnLoopsTest.wires(ends));
        assertTrue(found.shortest());
        assertEquals(1000, found.loops().size());
        // each is one wire across and the 100 it spans: no sum of several is shorter
        Set<BranchId> across = new HashSet<>();
        for (ReturnLoop loop : found.loops()) {
            assertEquals(101, loop.members().size());
            loop.members().stream()
                    .filter(member -> Sketch.number(member) >= 99_000)
                    .forEach(across::add);
        }
        assertEquals(1000, across.size());
    }

    @Test
    void aMeshOfFortyByFortyPointsGivesItsSquaresAndNothingLonger() {
        // 2 x 40 x 39 = 3120 wires on 1600 points: 1521 squares
        FoundLoops found = ReturnLoops.of(ReturnLoopsTest.wires(mesh(40)));
        assertTrue(found.shortest());
        assertEquals(1521, found.loops().size());
        assertTrue(found.loops().stream().allMatch(loop -> loop.members().size() == 4));
    }

    @Test
    void aMeshWithAHoleHasOneLoopRoundIt() {
        // 12 x 12 points without the 4 x 4 in the middle: the way round the hole takes 4 x 5 = 20 wires
        List<String[]> ends = mesh(12).stream()
                .filter(each -> !isInHole(each[0]) && !isInHole(each[1]))
                .toList();
        FoundLoops found = ReturnLoops.of(ReturnLoopsTest.wires(ends));
        List<Integer> sizes = found.loops().stream()
                .map(loop -> loop.members().size())
                .sorted(Comparator.reverseOrder())
                .toList();
        assertTrue(found.shortest());
        assertEquals(20, sizes.get(0));
        assertEquals(4, sizes.get(1));
        // 11 x 11 squares, of which the hole takes 5 x 5, and the way round it
        assertEquals(121 - 25 + 1, sizes.size());
    }

    private static boolean isInHole(String point) {
        int number = Integer.parseInt(point.substring(1));
        int row = number / 12;
        int column = number % 12;
        return row >= 4 && row < 8 && column >= 4 && column < 8;
    }

    private static List<String[]> mesh(int side) {
        List<String[]> ends = new ArrayList<>();
        for (int point = 0; point < side * side; point++) {
            if (point % side < side - 1) {
                ends.add(new String[] {"P" + point, "P" + (point + 1)});
            }
            if (point < side * (side - 1)) {
                ends.add(new String[] {"P" + point, "P" + (point + side)});
            }
        }
        return ends;
    }

    @Test
    void aNetworkTooEntangledSaysThatItsLoopsMayNotBeTheSmallest() {
        // more loops in one block than are sorted out: 10,002 wires side by side
        List<String[]> ends = new ArrayList<>();
        for (int k = 0; k < CycleBasis.MOST_CYCLES + 2; k++) {
            ends.add(new String[] {"P0", "P1"});
        }
        FoundLoops found = ReturnLoops.of(ReturnLoopsTest.wires(ends));
        assertFalse(found.shortest());
        assertEquals(CycleBasis.MOST_CYCLES + 1, found.loops().size());
    }

    private static Comparator<double[]> byWeight() {
        return Comparator.<double[]>comparingDouble(each -> each[0]).thenComparingDouble(each -> each[1]);
    }

    /** Count and length of each cycle of a smallest set: of all subsets of wires that are one cycle, greedily. */
    private static List<double[]> leastByBruteForce(Sketch sketch) {
        int wires = sketch.ends().size();
        List<BitSet> cycles = new ArrayList<>();
        for (int subset = 1; subset < 1 << wires; subset++) {
            BitSet each = BitSet.valueOf(new long[] {subset});
            if (isCycle(sketch.ends(), each)) {
                cycles.add(each);
            }
        }
        cycles.sort(Comparator.comparingInt(BitSet::cardinality).thenComparingInt(each -> decimetres(sketch, each)));
        List<BitSet> rows = new ArrayList<>();
        List<double[]> kept = new ArrayList<>();
        for (BitSet cycle : cycles) {
            if (addsTo(rows, cycle)) {
                kept.add(new double[] {cycle.cardinality(), decimetres(sketch, cycle) / 10.0});
            }
        }
        return kept;
    }

    private static int decimetres(Sketch sketch, BitSet wires) {
        return wires.stream().map(wire -> sketch.decimetres().get(wire)).sum();
    }

    private static boolean isCycle(List<String[]> ends, BitSet wires) {
        Map<String, List<String>> at = new HashMap<>();
        wires.stream().mapToObj(ends::get).forEach(each -> {
            at.computeIfAbsent(each[0], point -> new ArrayList<>()).add(each[1]);
            at.computeIfAbsent(each[1], point -> new ArrayList<>()).add(each[0]);
        });
        Set<String> reached = new HashSet<>();
        List<String> open = new ArrayList<>(List.of(at.keySet().iterator().next()));
        while (!open.isEmpty()) {
            String point = open.remove(open.size() - 1);
            if (reached.add(point)) {
                open.addAll(at.get(point));
            }
        }
        return reached.size() == at.size() && at.values().stream().allMatch(each -> each.size() == 2);
    }

    /** Adds a row unless it is a sum of those there. */
    private static boolean addsTo(List<BitSet> rows, BitSet cycle) {
        BitSet left = (BitSet) cycle.clone();
        for (BitSet row : rows) {
            if (left.get(row.length() - 1)) {
                left.xor(row);
            }
        }
        if (left.isEmpty()) {
            return false;
        }
        rows.add(left);
        rows.sort((one, other) -> other.length() - one.length());
        return true;
    }

    private static int independent(List<ReturnLoop> loops) {
        List<BitSet> rows = new ArrayList<>();
        for (ReturnLoop loop : loops) {
            BitSet row = new BitSet();
            loop.members().forEach(member -> row.flip(Sketch.number(member)));
            addsTo(rows, row);
        }
        return rows.size();
    }
}
