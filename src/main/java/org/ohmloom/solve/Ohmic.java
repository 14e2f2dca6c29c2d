package org.ohmloom.solve;

/**
 * amps = volts / ohms.
 *
 * @param ohms resistance, ohm, more than 0
 */
record Ohmic(double ohms) implements Characteristic {

    @Override
    public Precise amps(Precise volts) {
        return volts.dividedBy(ohms);
    }

    @Override
    public double siemens(Precise volts) {
        return 1 / ohms;
    }

    @Override
    public double leakSiemens(double stageSiemens) {
        return 0;
    }

    @Override
    public boolean isLinear() {
        return true;
    }
}
