package org.ohmloom.solve;

import java.util.Random;
import org.ohmloom.Campaign;
import org.ohmloom.graph.BranchKind;
import org.ohmloom.graph.Law;

/** Networks drawn at random with a fixed seed: a tree of 3 to 300 points with loops laid over it, sources and loads. */
final class RandomNetworks {

    /** Networks of a whole campaign. */
    static final int CAMPAIGN = 1000;

    /** Networks of an ordinary build. */
    static final int SAMPLE = 100;

    private final Random random;
    private final int points;
    private final double mostWatts;
    private final Net net = new Net();

    private RandomNetworks(long seed) {
        random = new Random(seed);
        points = 3 + random.nextInt(298);
        // one in four asks more than most wirings bring
        mostWatts = random.nextInt(4) == 0 ? 200 : 3;
    }

    /** How many networks this build looks at: all with the system property ohmloom.campaign=full. */
    static int count() {
        return Campaign.count(SAMPLE, CAMPAIGN);
    }

    /** Batteries, some without resistance, resistances from 1e-4 to 1e4 ohm and fixed currents. */
    static Net linear(long seed) {
        RandomNetworks draft = new RandomNetworks(seed);
        draft.conductors();
        draft.sources(false);
        for (int load = 0; load < draft.points / 4; load++) {
            draft.net.branch(
                    "P" + load,
                    BranchKind.PRESENT_LOAD,
                    draft.any(),
                    draft.other(),
                    new Law.FixedCurrent(draft.random.nextGaussian()));
        }
        return draft.net;
    }

    /** A feed and a return tree of wires with loads of every kind between them, diodes and limited sources. */
    static Net nonlinear(long seed) {
        RandomNetworks draft = new RandomNetworks(seed);
        draft.harness();
        return draft.net;
    }

    private void conductors() {
        for (int point = 1; point < points; point++) {
            net.wire("W" + point, "p" + point, "p" + random.nextInt(point), ohms(-4, 4));
        }
        for (int loop = 0; loop < points / 3; loop++) {
            net.wire("X" + loop, any(), other(), ohms(-4, 4));
        }
    }

    private void sources(boolean limited) {
        int sources = 1 + random.nextInt(4);
        for (int source = 0; source < sources; source++) {
            double volts = 10 + 20 * random.nextDouble();
            // only the first may be without resistance: two could contradict each other
            double ohms = source == 0 && random.nextBoolean() ? 0 : ohms(-3, 0);
            if (limited && source > 0) {
                net.regulated("S" + source, any(), other(), volts, ohms, 100 * random.nextDouble() + 1);
            } else {
                net.battery("S" + source, any(), other(), volts, ohms);
            }
        }
    }

    private void harness() {
        net.battery("S0", "r0", "f0", 12 + random.nextDouble(), random.nextBoolean() ? 0 : ohms(-3, -2));
        int half = Math.max(2, points / 2);
        for (int point = 1; point < half; point++) {
            net.wire("F" + point, "f" + random.nextInt(point), "f" + point, ohms(-4, -2));
            net.wire("R" + point, "r" + random.nextInt(point), "r" + point, ohms(-4, -2));
        }
        for (int loop = 0; loop < half / 4; loop++) {
            int point = 1 + random.nextInt(half - 1);
            net.wire("Y" + loop, "r" + point, "r" + random.nextInt(point), ohms(-4, -1));
        }
        for (int point = 1; point < half; point++) {
            load(point);
        }
        for (int source = 1; source < 3; source++) {
            int at = random.nextInt(half);
            net.diode("D" + source, "s" + source, "f" + at, 0.5 * random.nextDouble(), ohms(-3, -1));
            net.regulated(
                    "S" + source,
                    "r" + at,
                    "s" + source,
                    11.5 + 3 * random.nextDouble(),
                    random.nextBoolean() ? 0 : ohms(-3, -1),
                    1 + 20 * random.nextDouble());
        }
    }

    private void load(int point) {
        String from = "f" + point;
        String to = "r" + point;
        String id = "L" + point;
        switch (random.nextInt(6)) {
            case 0 -> net.heater(id, from, to, ohms(1, 3));
            case 1 -> net.current(id, from, to, random.nextDouble());
            case 2 -> net.power(id, from, to, mostWatts * (0.05 + random.nextDouble()));
            case 3 -> net.lamp(id, from, to, 0.05 + random.nextDouble(), 12);
            case 4 -> {
                net.output("Q" + point, from, "q" + point, ohms(-3, -1), 0.1 * (1 + random.nextInt(9)));
                net.lamp(id, "q" + point, to, 0.05 + random.nextDouble(), 12);
            }
            default -> net.diode("E" + point, to, from, 0.6, 0.01);
        }
    }

    private double ohms(double lowExponent, double highExponent) {
        return Math.pow(10, lowExponent + (highExponent - lowExponent) * random.nextDouble());
    }

    private int last = -1;

    private String any() {
        last = random.nextInt(points);
        return "p" + last;
    }

    private String other() {
        return "p" + (last + 1 + random.nextInt(points - 1)) % points;
    }
}
