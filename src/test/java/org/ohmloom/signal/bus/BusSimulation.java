package org.ohmloom.signal.bus;

import java.util.List;
import java.util.Random;

/** A bus frame by frame: whenever it is free, the first of what is ready to send begins and is not broken off. */
public final class BusSimulation {
    private final List<Message> ordered;
    private final double bitSeconds;
    private final Random random;
    private final boolean worstPhases;
    private final double[] due;
    private final double[] ready;

    /**
     * @param ordered     messages, first priority first
     * @param worstPhases whether all fall due together just after a long frame has begun
     */
    public BusSimulation(List<Message> ordered, double bitsPerSecond, Random random, boolean worstPhases) {
        this.ordered = ordered;
        this.bitSeconds = 1 / bitsPerSecond;
        this.random = random;
        this.worstPhases = worstPhases;
        this.due = new double[ordered.size()];
        this.ready = new double[ordered.size()];
        for (int k = 0; k < due.length; k++) {
            due[k] = worstPhases ? 0 : ordered.get(k).periodSeconds() * random.nextDouble();
            ready[k] = due[k] + late(k, true);
        }
    }

    private double late(int k, boolean first) {
        double jitter = ordered.get(k).jitterSeconds();
        return worstPhases ? (first ? jitter : 0) : jitter * random.nextDouble();
    }

    private int bits(Message message) {
        int least = message.format().leastBits(message.dataBytes());
        int most = message.format().mostBits(message.dataBytes());
        return worstPhases ? most : most - random.nextInt(3) * random.nextInt(most - least + 1) / 2;
    }

    /** Runs for some time; takes down the longest time from the begin of a period to the end of its frame. */
    public void run(double seconds, double[] latest) {
        double now = 0;
        while (now < seconds) {
            int next = -1;
            double soonest = Double.POSITIVE_INFINITY;
            for (int k = 0; k < ready.length; k++) {
                soonest = Math.min(soonest, ready[k]);
                if (ready[k] <= now && next < 0) {
                    next = k;
                }
            }
            if (next < 0) {
                now = soonest;
                continue;
            }
            now += bits(ordered.get(next)) * bitSeconds;
            latest[next] = Math.max(latest[next], now - due[next]);
            due[next] += ordered.get(next).periodSeconds();
            ready[next] = due[next] + late(next, false);
        }
    }
}
