package org.ohmloom.graph;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.jgrapht.Graph;
import org.jgrapht.alg.cycle.QueueBFSFundamentalCycleBasis;
import org.jgrapht.alg.interfaces.CycleBasisAlgorithm;
import org.jgrapht.graph.Multigraph;
import org.junit.jupiter.api.Test;

/** Loops of random networks of wires against the fundamental cycles that JGraphT finds. */
class CycleBasisTest {

    @Test
    void randomNetworksGiveAsManyLoopsAsIndependentCyclesAndNoLongerOnes() {
        Random random = new Random(20_240_611);
        for (int run = 0; run < 300; run++) {
            int points = 2 + random.nextInt(30);
            List<String[]> ends = new ArrayList<>();
            for (int k = 1; k < points; k++) {
                ends.add(new String[] {"P" + random.nextInt(k), "P" + k});
            }
            for (int k = random.nextInt(30); k > 0; k--) {
                int from = random.nextInt(points);
                int to = random.nextInt(points);
                if (from != to) {
                    ends.add(new String[] {"P" + from, "P" + to});
                }
            }
            compare(ends, points);
        }
    }

    @Test
    void aSmallMeshGivesItsFaces() {
        // 5 x 5 points: 16 squares of 4 wires each
        List<String[]> ends = new ArrayList<>();
        for (int point = 0; point < 25; point++) {
            if (point % 5 < 4) {
                ends.add(new String[] {"P" + point, "P" + (point + 1)});
            }
            if (point < 20) {
                ends.add(new String[] {"P" + point, "P" + (point + 5)});
            }
        }
        List<ReturnLoop> loops = ReturnLoops.of(ReturnLoopsTest.wires(ends)).loops();
        assertEquals(16, loops.size());
        assertTrue(loops.stream().allMatch(loop -> loop.members().size() == 4));
    }

    private static void compare(List<String[]> ends, int points) {
        Graph<String, Integer> graph = new Multigraph<>(Integer.class);
        IntStream.range(0, points).forEach(k -> graph.addVertex("P" + k));
        IntStream.range(0, ends.size()).forEach(k -> graph.addEdge(ends.get(k)[0], ends.get(k)[1], k));
        CycleBasisAlgorithm.CycleBasis<String, Integer> known =
                new QueueBFSFundamentalCycleBasis<>(graph).getCycleBasis();
        List<ReturnLoop> loops = ReturnLoops.of(ReturnLoopsTest.wires(ends)).loops();
        assertEquals(known.getCycles().size(), loops.size());
        assertEquals(loops.size(), rank(loops));
        int members = loops.stream().mapToInt(loop -> loop.members().size()).sum();
        assertTrue(members <= known.getLength(), members + " members, known " + known.getLength());
    }

    /** Count of independent loops: elimination over the two-element field. */
    private static int rank(List<ReturnLoop> loops) {
        List<BitSet> rows = new ArrayList<>();
        for (ReturnLoop loop : loops) {
            BitSet row = new BitSet();
            loop.members()
                    .forEach(member -> row.flip(Integer.parseInt(member.value().substring(1))));
            for (BitSet kept : rows) {
                if (row.get(kept.length() - 1)) {
                    row.xor(kept);
                }
            }
            if (!row.isEmpty()) {
                rows.add(row);
                rows.sort((one, other) -> other.length() - one.length());
            }
        }
        return rows.size();
    }
}
