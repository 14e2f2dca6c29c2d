package org.ohmloom.solve;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.ohmloom.graph.BranchKind;
import org.ohmloom.graph.Law;
import org.ohmloom.graph.Pulse;

/**
 * A random network of outputs that switch: a battery, a feed and a return all loads share, sized to lose 10 % at full current,
 * and for each load wires of its own, an output, and, when it is inductive, a freewheel diode in one of three places.
 *
 * @param emfVolts   battery, V
 * @param feedOhms   shared feed with the battery's own resistance, ohm
 * @param returnOhms shared return, ohm
 * @param loads      the loads
 */
record ChoppedNetwork(double emfVolts, double feedOhms, double returnOhms, List<Chopped> loads) {

    /** Where the current of a load goes while its output is off. */
    enum Freewheel {
        /** A resistance: nowhere. */
        NONE,
        /** A diode at the load, behind a high-side output. */
        AT_LOAD,
        /** From a low-side output to the driver's supply, which has a wire to the feed of its own. */
        DRIVER_SUPPLY,
        /** From the driver's ground, which has a wire to the return of its own, to a high-side output. */
        DRIVER_GROUND
    }

    /**
     * One load.
     *
     * @param ohms       resistance, ohm
     * @param henries    inductance, H; 0 for a resistance
     * @param pulse      when its output is on
     * @param freewheel  where its current goes
     * @param feedOhms   its own feed with its output, ohm
     * @param returnOhms its own return, ohm
     * @param driverOhms the driver's own wire to feed or return, ohm
     * @param diodeVolts forward drop of its diode, V
     */
    record Chopped(
            double ohms,
            double henries,
            Pulse pulse,
            Freewheel freewheel,
            double feedOhms,
            double returnOhms,
            double driverOhms,
            double diodeVolts) {}

    static final double OUTPUT_OHMS = 0.01;
    static final double DIODE_OHMS = 0.01;

    static ChoppedNetwork random(long seed) {
        Random random = new Random(seed);
        double emfVolts = 12 + 2 * random.nextDouble();
        int count = 2 + random.nextInt(4);
        int clocks = 1 + random.nextInt(count);
        List<Chopped> loads = new ArrayList<>();
        double fullAmps = 0;
        double[] hertz = random.doubles(clocks, 80, 400).toArray();
        for (int load = 0; load < count; load++) {
            int clock = load < clocks ? load : random.nextInt(clocks);
            double ohms = 1 + 4 * random.nextDouble();
            boolean inductive = random.nextInt(4) > 0;
            // from a third of a period to thirty periods
            double periods = Math.pow(10, -0.5 + 2 * random.nextDouble());
            double henries = inductive ? ohms * periods / hertz[clock] : 0;
            Freewheel freewheel = inductive ? Freewheel.values()[1 + random.nextInt(3)] : Freewheel.NONE;
            Pulse pulse = new Pulse("C" + clock, hertz[clock], random.nextDouble(), 0.1 + 0.8 * random.nextDouble());
            loads.add(new Chopped(
                    ohms,
                    henries,
                    pulse,
                    freewheel,
                    OUTPUT_OHMS + 0.05 * random.nextDouble(),
                    0.01 + 0.05 * random.nextDouble(),
                    0.01 + 0.05 * random.nextDouble(),
                    0.4 + 0.5 * random.nextDouble()));
            fullAmps += emfVolts / ohms;
        }
        double shared = 0.1 * emfVolts / fullAmps;
        return new ChoppedNetwork(emfVolts, 0.6 * shared, 0.4 * shared, loads);
    }

    /** The same for the solver. Load n is Ln, its own feed Fn, its diode Dn; FEED is shared. */
    Net net() {
        Net net = new Net()
                .battery("B", "0", "s", emfVolts, 0)
                .wire("FEED", "s", "a", feedOhms)
                .wire("RETURN", "g", "0", returnOhms);
        for (int number = 0; number < loads.size(); number++) {
            add(net, loads.get(number), number);
        }
        return net;
    }

    private static void add(Net net, Chopped load, int n) {
        Law law = load.henries() > 0 ? new Law.Inductive(load.ohms(), load.henries()) : new Law.Resistance(load.ohms());
        Law diode = new Law.Threshold(load.diodeVolts(), DIODE_OHMS);
        double feed = load.feedOhms() - OUTPUT_OHMS;
        if (load.freewheel() == Freewheel.DRIVER_SUPPLY) {
            net.wire("F" + n, "a", "p" + n, feed)
                    .branch("L" + n, BranchKind.LOAD, "p" + n, "d" + n, law)
                    .output("Q" + n, "d" + n, "n" + n, OUTPUT_OHMS, load.pulse())
                    .wire("R" + n, "n" + n, "g", load.returnOhms())
                    .branch("D" + n, BranchKind.FREEWHEEL_DIODE, "d" + n, "v" + n, diode)
                    .wire("V" + n, "v" + n, "a", load.driverOhms());
            return;
        }
        net.wire("F" + n, "a", "i" + n, feed)
                .output("Q" + n, "i" + n, "p" + n, OUTPUT_OHMS, load.pulse())
                .branch("L" + n, BranchKind.LOAD, "p" + n, "n" + n, law)
                .wire("R" + n, "n" + n, "g", load.returnOhms());
        if (load.freewheel() == Freewheel.AT_LOAD) {
            net.branch("D" + n, BranchKind.FREEWHEEL_DIODE, "n" + n, "p" + n, diode);
        } else if (load.freewheel() == Freewheel.DRIVER_GROUND) {
            net.branch("D" + n, BranchKind.FREEWHEEL_DIODE, "v" + n, "p" + n, diode)
                    .wire("V" + n, "g", "v" + n, load.driverOhms());
        }
    }
}
