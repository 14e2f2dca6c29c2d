package org.ohmloom.draw.form;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.ohmloom.BesideOthers;
import org.ohmloom.Campaign;
import org.ohmloom.draw.Extent;
import org.ohmloom.draw.Point;

/** Trees of all shapes: laid on a board or, when it is too small, on a larger one; never across themselves, always at true length. */
@BesideOthers
class RandomTreesTest {

    private static final long SEED = 20261130;
    private static final int TREES = Campaign.count(5, 300);
    private static final double ROUNDING_MM = 1e-6;

    @Test
    void noRunCrossesAnotherAndEachHasItsTrueLength() {
        Random random = new Random(SEED);
        int within = 0;
        for (int k = 0; k < TREES; k++) {
            FormTree tree = tree(random, 2 + random.nextInt(k % 6 == 5 ? 60 : 22));
            Laid laid = PieceLaying.lay(tree, 2400, 1180);
            check(tree, laid, "tree " + k + " of seed " + SEED);
            within += laid.bounds().widthMm() <= 2400 && laid.bounds().heightMm() <= 1180 ? 1 : 0;
        }
        assertTrue(within >= TREES / 3, within + " of " + TREES + " fit on a sheet of plywood");
    }

    @Test
    void aTreeTooLargeForAnyBoardIsLaidStraightInSectorsWithoutCrossing() {
        Random random = new Random(SEED);
        for (int k = 0; k < TREES; k++) {
            FormTree tree = tree(random, 2 + random.nextInt(150));
            check(tree, Wedges.of(tree), "tree " + k + " of seed " + SEED);
        }
    }

    private static void check(FormTree tree, Laid laid, String what) {
        List<String> names = tree.runs().stream().map(FormRun::id).toList();
        List<List<Point>> lines = laid.ways().stream().map(Way::points).toList();
        assertEquals(List.of(), Boards.crossings(names, lines), what);
        List<Extent> cards = laid.cards().stream().flatMap(Optional::stream).toList();
        for (int k = 0; k < cards.size(); k++) {
            for (Extent other : cards.subList(0, k)) {
                assertFalse(cards.get(k).overlaps(other), what + ": cards " + cards.get(k) + " and " + other);
            }
        }
        for (int k = 0; k < tree.runs().size(); k++) {
            FormRun run = tree.runs().get(k);
            Way way = laid.ways().get(k);
            assertEquals(run.lengthMm(), way.lengthMm(), ROUNDING_MM, what + ", " + run.id());
            assertEquals(0, way.first().distanceMm(laid.nodes().get(run.from())), ROUNDING_MM, what);
            assertEquals(0, way.last().distanceMm(laid.nodes().get(run.to())), ROUNDING_MM, what);
            assertTrue(
                    Boards.leastRadiusMm(way.points()) >= run.bendMm() * 0.999,
                    what + ", " + run.id() + " bent to " + Boards.leastRadiusMm(way.points()));
        }
    }

    /** Nodes join the tree at a random earlier one, rather a late one; lengths 150 mm to 2 m, diameters 3 to 25 mm. */
    private static FormTree tree(Random random, int nodes) {
        List<FormNode> all = new ArrayList<>(List.of(new FormNode("N0", 60, 40)));
        List<FormRun> runs = new ArrayList<>();
        int[] joined = new int[nodes];
        for (int k = 1; k < nodes; k++) {
            int from = (int) ((k - 1) * Math.sqrt(random.nextDouble()) + 0.5);
            joined[from]++;
            all.add(new FormNode("N" + k, 60, 30));
            double width = 3 + 22 * random.nextDouble() * random.nextDouble();
            double length = 150 + 1850 * random.nextDouble() * random.nextDouble();
            runs.add(new FormRun("R" + k, from, k, length, width, 6.5 * width, OptionalDouble.empty(), false));
        }
        return new FormTree(all, runs);
    }
}
