package org.ohmloom.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.ohmloom.BesideOthers;
import org.ohmloom.Campaign;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Wire;
import org.ohmloom.size.JointChoice;
import org.ohmloom.size.ProvisionalSizes;
import org.ohmloom.solve.LoadVolts;
import org.ohmloom.tables.WireTables;
import org.ohmloom.units.Gauge;

/**
 * The joint choice of random small harnesses against all choices there are, each solved by the whole network analysis with
 * conductors at temperature: from the least copper up, the first with which every load keeps its limit.
 */
@BesideOthers
class JointBruteForceTest {
    private static final int CAMPAIGN = 200;
    private static final int SAMPLE = 3;
    private static final double SAME = 1e-9;
    private static final double[] AREAS = {1, 1.5, 2.5, 4, 6};

    private final WireTables tables = WireTables.bundled();

    private static int count() {
        return Campaign.count(SAMPLE, CAMPAIGN);
    }

    /** A trunk, one or two loads behind it and a shared or separate return: three to five open wires. */
    private static Harness random(long seed) {
        Random random = new Random(seed);
        OpenFeeds feeds = new OpenFeeds(OpenFeeds.stock(AREAS)).splice("S1").splice("S2");
        int loads = 1 + random.nextInt(2);
        feeds.wire("W0", "B.+", "S1", 0.5 + 3 * random.nextDouble());
        feeds.wire("R0", "S2", "B.-", 0.5 + 3 * random.nextDouble());
        for (int load = 1; load <= loads; load++) {
            feeds.load("L" + load, 2 + random.nextInt(7), 0.25 + 0.4 * random.nextDouble());
            feeds.wire("W" + load, "S1", "L" + load + ".+", 0.5 + 3 * random.nextDouble());
            if (random.nextBoolean() || load == loads) {
                feeds.wire("R" + load, "L" + load + ".-", "S2", 0.3 + random.nextDouble());
            } else {
                feeds.wire(
                        "R" + load,
                        "L" + load + ".-",
                        "B.-",
                        1,
                        Optional.of(Gauge.metric(4)),
                        Optional.empty(),
                        true,
                        false);
            }
        }
        return feeds.harness();
    }

    private record Sizes(double[] areasMm2, double volumeMm2Metres) {}

    private static List<Sizes> all(List<Wire> wires) {
        List<Sizes> all = new ArrayList<>();
        int[] pick = new int[wires.size()];
        while (true) {
            double[] areas = new double[pick.length];
            double volume = 0;
            for (int wire = 0; wire < pick.length; wire++) {
                areas[wire] = AREAS[pick[wire]];
                volume += areas[wire] * wires.get(wire).lengthMetres().orElseThrow();
            }
            all.add(new Sizes(areas, volume));
            int next = 0;
            while (next < pick.length && ++pick[next] == AREAS.length) {
                pick[next++] = 0;
            }
            if (next == pick.length) {
                all.sort(Comparator.comparingDouble(Sizes::volumeMm2Metres));
                return all;
            }
        }
    }

    private boolean isKept(Harness harness) {
        Bench bench = Bench.of(harness, tables, Cancel.NEVER);
        ProvisionalSizes given = ProvisionalSizes.minimum(harness, tables, bench.basis());
        return HeatedSolutions.solve(bench, given).solutions().values().stream()
                .flatMap(solution -> solution.loads().values().stream())
                .allMatch(JointBruteForceTest::isKept);
    }

    private static boolean isKept(LoadVolts load) {
        return load.onDropVolts() <= load.limitVolts() * (1 + SAME);
    }

    @Test
    void theJointChoiceOfRandomSmallHarnessesIsTheLeastOfAllThatTheAnalysisPasses() {
        int possible = 0;
        for (long seed = 0; seed < count(); seed++) {
            Harness harness = random(seed);
            List<Wire> open = OpenFeeds.open(harness);
            JointChoice choice =
                    Analyst.analyse(harness, tables, Cancel.NEVER).evidence().joint();
            double volume = choice.sizes().entrySet().stream()
                    .mapToDouble(entry -> entry.getValue().nominalAreaMm2()
                            * harness.wires().get(entry.getKey()).lengthMetres().orElseThrow())
                    .sum();
            if (choice.unmet().isEmpty()) {
                possible++;
                Sizes least = all(open).stream()
                        .filter(sizes -> isKept(OpenFeeds.sized(harness, open, sizes.areasMm2())))
                        .findFirst()
                        .orElseThrow();
                assertEquals(least.volumeMm2Metres(), volume, SAME * volume, "seed " + seed);
                assertTrue(choice.isProvenLeast(), "seed " + seed);
            } else {
                double[] largest = open.stream()
                        .mapToDouble(wire -> AREAS[AREAS.length - 1])
                        .toArray();
                assertTrue(!isKept(OpenFeeds.sized(harness, open, largest)), "seed " + seed);
            }
        }
        assertTrue(possible >= count() * 2 / 3, possible + " harnesses have a choice");
    }
}
