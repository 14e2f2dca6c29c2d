package org.ohmloom.solve;

/** amps = 0: an output in the off part of its period. */
enum Blocked implements Characteristic {
    BLOCKED;

    @Override
    public Precise amps(Precise volts) {
        return Precise.ZERO;
    }

    @Override
    public double siemens(Precise volts) {
        return 0;
    }
}
