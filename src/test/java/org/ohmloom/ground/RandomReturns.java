package org.ohmloom.ground;

import java.util.Optional;
import java.util.Random;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import org.ohmloom.Campaign;
import org.ohmloom.graph.Branch;
import org.ohmloom.graph.BranchId;
import org.ohmloom.graph.BranchKind;
import org.ohmloom.graph.Law;
import org.ohmloom.graph.Network;
import org.ohmloom.graph.PointId;
import org.ohmloom.graph.Pulse;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.StateId;

/**
 * Harness-like networks drawn at random: a feed and a return of wires with loops laid over the return, a battery and up to two
 * more sources, loads of every kind, outputs that switch at a duty with their freewheel diodes, resistances straight from feed
 * to return in one of four.
 */
final class RandomReturns {

    /** Networks of a whole campaign. */
    static final int CAMPAIGN = 500;

    /** Networks of an ordinary build. */
    static final int SAMPLE = 40;

    private final Random random;
    private final SortedMap<BranchId, Branch> branches = new TreeMap<>();
    private final SortedSet<PointId> points = new TreeSet<>();
    private final int half;

    private RandomReturns(long seed) {
        random = new Random(seed);
        half = 3 + random.nextInt(40);
    }

    /** How many networks this build looks at: all with the system property ohmloom.campaign=full. */
    static int count() {
        return Campaign.count(SAMPLE, CAMPAIGN);
    }

    /** The network of a seed; its returns are {@code r0} to {@code rN}, {@code r0} the datum. */
    static Network of(long seed) {
        RandomReturns draft = new RandomReturns(seed);
        draft.fill();
        return new Network(new StateId("run"), draft.points, draft.branches, Optional.of(new PointId("r0")));
    }

    private void fill() {
        branch("S0", BranchKind.SOURCE, "r0", "f0", Law.VoltageSource.battery(12 + random.nextDouble(), ideal()));
        for (int at = 1; at < half; at++) {
            resistance("F" + at, "f" + random.nextInt(at), "f" + at, ohms(-4, -2));
            resistance("R" + at, "r" + random.nextInt(at), "r" + at, ohms(-4, -2));
            load(at);
        }
        for (int loop = 0; loop < half / 3; loop++) {
            int at = 1 + random.nextInt(half - 1);
            resistance("Y" + loop, "r" + at, "r" + random.nextInt(at), ohms(-4, -1));
        }
        if (random.nextInt(4) == 0) {
            resistance("Z", "f" + random.nextInt(half), "r" + random.nextInt(half), ohms(0, 2));
        }
        for (int source = 1; source <= random.nextInt(3); source++) {
            int at = random.nextInt(half);
            double volts = 11.5 + 3 * random.nextDouble();
            resistance("C" + source, "s" + source, "f" + at, ohms(-3, -1));
            branch(
                    "S" + source,
                    BranchKind.SOURCE,
                    "r" + random.nextInt(half),
                    "s" + source,
                    random.nextBoolean()
                            ? Law.VoltageSource.battery(volts, ohms(-3, -1))
                            : Law.VoltageSource.regulated(volts, ohms(-3, -1), 1 + 20 * random.nextDouble()));
        }
    }

    private void load(int at) {
        String id = "L" + at;
        Law lamp = new Law.PowerLaw(0.05 + random.nextDouble(), 12, 0.55);
        switch (random.nextInt(5)) {
            case 0 -> branch(id, BranchKind.LOAD, "f" + at, "r" + at, new Law.Resistance(ohms(0, 2)));
            case 1 -> branch(id, BranchKind.LOAD, "f" + at, "r" + at, new Law.ConstantCurrent(2 * random.nextDouble()));
            case 2 -> branch(
                    id, BranchKind.LOAD, "f" + at, "r" + at, new Law.ConstantPower(1 + 9 * random.nextDouble()));
            case 3 -> branch(id, BranchKind.LOAD, "f" + at, "r" + at, lamp);
            default -> chopped(at, lamp);
        }
    }

    private void chopped(int at, Law law) {
        boolean highSide = random.nextBoolean();
        String from = highSide ? "f" + at : "q" + at;
        String to = highSide ? "q" + at : "r" + at;
        branch(
                "Q" + at,
                BranchKind.SOLID_STATE_OUTPUT,
                from,
                to,
                new Law.SwitchedResistance(
                        ohms(-3, -1), new Pulse("clock" + random.nextInt(3), 100, 0, 0.1 * (1 + random.nextInt(9)))));
        branch("L" + at, BranchKind.LOAD, highSide ? "q" + at : "f" + at, highSide ? "r" + at : "q" + at, law);
    }

    private void resistance(String id, String from, String to, double ohms) {
        branch(id, BranchKind.WIRE, from, to, new Law.Resistance(ohms));
    }

    private void branch(String id, BranchKind kind, String from, String to, Law law) {
        PointId one = new PointId(from);
        PointId other = new PointId(to);
        points.add(one);
        points.add(other);
        branches.put(
                new BranchId(id),
                new Branch(new BranchId(id), kind, one, other, Optional.of(new ComponentId(id)), law));
    }

    private double ideal() {
        return random.nextBoolean() ? 0 : ohms(-3, -2);
    }

    private double ohms(double lowExponent, double highExponent) {
        return Math.pow(10, lowExponent + (highExponent - lowExponent) * random.nextDouble());
    }
}
