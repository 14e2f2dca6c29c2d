package org.ohmloom.solve;

import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * What the ripple of an inductive load does to its island in one moment: the standard deviation of each branch, the sign telling
 * what rises with what. By the tangents of the moment, so exact in networks of straight branches.
 *
 * @param choke     number of the load
 * @param peakRatio how many standard deviations above its level its current peaks; the square root of 3 for a straight ramp
 * @param amps      current of each branch, A
 * @param volts     voltage along each branch, V
 */
record RippleFlow(int choke, double peakRatio, double[] amps, double[] volts) {

    /** The ripples of each clock together: those of one clock rise and fall in step. */
    static List<RippleFlow> byClock(List<RippleFlow> ripples, List<Choke> chokes) {
        SortedMap<Integer, RippleFlow> byClock = new TreeMap<>();
        for (RippleFlow each : ripples) {
            byClock.merge(chokes.get(each.choke()).own(), each, RippleFlow::plus);
        }
        return new ArrayList<>(byClock.values());
    }

    /** The same with another {@link #peakRatio}. */
    RippleFlow withPeakRatio(double changed) {
        return new RippleFlow(choke, changed, amps, volts);
    }

    private RippleFlow plus(RippleFlow other) {
        double[] moreAmps = amps.clone();
        double[] moreVolts = volts.clone();
        for (int branch = 0; branch < moreAmps.length; branch++) {
            moreAmps[branch] += other.amps[branch];
            moreVolts[branch] += other.volts[branch];
        }
        return new RippleFlow(choke, Math.max(peakRatio, other.peakRatio), moreAmps, moreVolts);
    }
}
