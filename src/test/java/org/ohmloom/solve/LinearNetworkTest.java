package org.ohmloom.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.ohmloom.BesideOthers;
import org.ohmloom.graph.Branch;
import org.ohmloom.graph.Law;
import org.ohmloom.graph.Network;
import org.ohmloom.graph.PointId;

/** Responses of linear networks by hand, against the solver, and against themselves by reciprocity. */
@BesideOthers
class LinearNetworkTest {
    private static final double EXACT = 1e-9;
    private static final int NETWORKS = 60;

    private static LinearNetwork.Link link(String from, String to, double ohms, double emfVolts) {
        return new LinearNetwork.Link(new PointId(from), new PointId(to), ohms, emfVolts);
    }

    private static PointId point(String id) {
        return new PointId(id);
    }

    @Test
    void oneAmpereLowersTheVoltageByTheResistanceOfItsWay() {
        // 12 V behind 0.01 ohm, feed 0.02 ohm, return 0.03 ohm: 0.06 V less for each ampere, 1 A in the feed
        LinearNetwork.Link feed = link("BAT.+", "L.+", 0.02, 0);
        List<LinearNetwork.Link> links = List.of(link("BAT.-", "BAT.+", 0.01, 12), feed, link("L.-", "BAT.-", 0.03, 0));
        LinearNetwork network = LinearNetwork.of(
                List.of(point("BAT.-"), point("BAT.+"), point("L.+"), point("L.-")), links, () -> false);
        LinearNetwork.Response draw = network.ofDraw(point("L.+"), point("L.-"));
        assertEquals(-0.06, draw.along(point("L.+"), point("L.-")), EXACT);
        assertEquals(1, draw.amps(feed), EXACT);
        assertEquals(12, network.ofSources().along(point("L.+"), point("L.-")), EXACT);
        assertEquals(1, draw.amps(links.get(0)), EXACT);
    }

    @Test
    void partsThatShareNoConductorDoNotFeelEachOther() {
        LinearNetwork network = LinearNetwork.of(
                List.of(point("a"), point("b"), point("c"), point("d"), point("e")),
                List.of(link("a", "b", 1, 12), link("c", "d", 1, 24)),
                () -> false);
        assertFalse(network.together(point("a"), point("c")));
        assertEquals(24, network.ofSources().along(point("d"), point("c")), EXACT);
        assertEquals(0, network.ofDraw(point("b"), point("a")).along(point("d"), point("c")), EXACT);
        assertThrows(IllegalArgumentException.class, () -> network.ofDraw(point("b"), point("e")));
    }

    @Test
    void sourcesAndDrawsAddUpToWhatTheSolverFinds() {
        for (long seed = 0; seed < NETWORKS; seed++) {
            Network network = RandomNetworks.linear(seed).network();
            NetworkSolution solved = NetworkSolver.solve(network, () -> false);
            List<LinearNetwork.Link> links = new ArrayList<>();
            for (Branch branch : network.all()) {
                if (branch.law() instanceof Law.Resistance resistance) {
                    links.add(new LinearNetwork.Link(branch.from(), branch.to(), resistance.ohms(), 0));
                } else if (branch.law() instanceof Law.VoltageSource source) {
                    links.add(new LinearNetwork.Link(
                            branch.from(), branch.to(), Math.max(source.ohms(), 1e-9), source.emfVolts()));
                }
            }
            LinearNetwork linear = LinearNetwork.of(network.points(), links, () -> false);
            LinearNetwork.Response base = linear.ofSources();
            for (Branch target : network.all()) {
                double volts = base.along(target.from(), target.to());
                LinearNetwork.Response transposed = linear.ofDraw(target.from(), target.to());
                for (Branch draw : network.all()) {
                    if (draw.law() instanceof Law.FixedCurrent current) {
                        volts += current.amps() * transposed.along(draw.from(), draw.to());
                    }
                }
                double expected = solved.flows().get(target.id()).dropVolts();
                assertEquals(expected, volts, 1e-6 * (1 + Math.abs(expected)), "network " + seed + ", " + target.id());
            }
        }
    }

    @Test
    void theTransferResistanceBetweenTwoPortsIsTheSameBothWays() {
        Random random = new Random(5);
        List<PointId> points = new ArrayList<>();
        List<LinearNetwork.Link> links = new ArrayList<>();
        for (int number = 0; number < 40; number++) {
            points.add(point("p" + number));
            if (number > 0) {
                links.add(link("p" + random.nextInt(number), "p" + number, 0.001 + random.nextDouble(), 0));
                links.add(link("p" + random.nextInt(number), "p" + number, 0.001 + random.nextDouble(), 0));
            }
        }
        LinearNetwork network = LinearNetwork.of(points, links, () -> false);
        for (int round = 0; round < 100; round++) {
            PointId[] ports = random.ints(4, 0, 40).mapToObj(points::get).toArray(PointId[]::new);
            double there = network.ofDraw(ports[0], ports[1]).along(ports[2], ports[3]);
            double back = network.ofDraw(ports[2], ports[3]).along(ports[0], ports[1]);
            assertEquals(there, back, 1e-12 * (1 + Math.abs(there)));
            assertTrue(network.ofDraw(ports[0], ports[1]).along(ports[0], ports[1]) <= 0);
        }
    }
}
