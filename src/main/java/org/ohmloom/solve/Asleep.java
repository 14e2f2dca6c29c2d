package org.ohmloom.solve;

/**
 * A load that draws nothing for want of voltage.
 *
 * <p>It leaks ten thousand times more than an output that is off, so that what hangs between the two reads as without voltage
 * and the load does not seem to be fed by the leak.
 */
enum Asleep implements Characteristic {
    ASLEEP;

    private static final double LEAK_RATIO = 1e4;

    @Override
    public Precise amps(Precise volts) {
        return Precise.ZERO;
    }

    @Override
    public double siemens(Precise volts) {
        return 0;
    }

    @Override
    public double leakSiemens(double stageSiemens) {
        return Math.max(stageSiemens, Leak.FINAL_SIEMENS * LEAK_RATIO);
    }
}
