package org.ohmloom.solve;

/** amps = volts / ohms, as a product with 1 / ohms, which is found once. */
final class Ohmic implements Characteristic {

    private final double ohms;
    private final Precise siemens;

    /**
     * A resistance.
     *
     * @param ohms resistance, ohm, more than 0
     */
    Ohmic(double ohms) {
        this.ohms = ohms;
        siemens = Precise.of(1).dividedBy(ohms);
    }

    @Override
    public Precise amps(Precise volts) {
        return volts.times(siemens);
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
