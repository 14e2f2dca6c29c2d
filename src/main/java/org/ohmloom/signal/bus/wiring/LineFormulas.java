package org.ohmloom.signal.bus.wiring;

import org.ohmloom.tables.BusFigure;
import org.ohmloom.tables.SignalTables;

/**
 * How much resistance the lines of a bus may have, and how many nodes a driver serves.
 *
 * <p>A driver puts Vo on its end; over the lines' resistance RL the far end has the termination RT and the n - 1 other receivers of Rd
 * beside it: V = Vo R / (R + RL) with R = RT Rd / (Rd + (n - 1) RT). It must reach the threshold with its margin, Vt; so RL is at most
 * R (Vo / Vt - 1) (algebra; with the figures of CiA 303-1 it gives that recommendation's table within 2.5 %). By the direct current a
 * driver of at least 45 ohm serves n nodes on two terminations of 120 ohm: n is at most Rd (1/45 - 1/60).
 */
public final class LineFormulas {

    private LineFormulas() {}

    /** Most resistance of high and low line together between driver and receiver, ohm. */
    public static double allowedOhms(int nodes, SignalTables tables) {
        double terminationOhms = tables.figure(BusFigure.TERMINATION_OF_LENGTH).value();
        double nodeOhms = tables.figure(BusFigure.RECEIVER_LEAST_OHMS).value();
        double driver = tables.figure(BusFigure.DRIVER_LEAST_VOLTS).value();
        double threshold = tables.figure(BusFigure.RECEIVER_MOST_VOLTS).value();
        double raised = threshold + tables.figure(BusFigure.RECEIVER_MARGIN).value() * (driver - threshold);
        double far = terminationOhms * nodeOhms / (nodeOhms + (nodes - 1) * terminationOhms);
        return far * (driver / raised - 1);
    }

    /** Most nodes by the direct current they take. */
    public static int allowedNodes(SignalTables tables) {
        double nodeOhms = tables.figure(BusFigure.RECEIVER_LEAST_OHMS).value();
        double least = tables.figure(BusFigure.LOAD_LEAST_OHMS).value();
        double both = tables.figure(BusFigure.TERMINATION).value() / 2;
        return (int) Math.floor(nodeOhms * (1 / least - 1 / both));
    }
}
