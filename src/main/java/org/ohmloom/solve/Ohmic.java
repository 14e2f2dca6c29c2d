package org.ohmloom.solve;

/** amps = volts / ohms, as a product with 1 / ohms, which is found once. */
final class Ohmic implements Characteristic {

    private final double slopeSiemens;
    private final Precise siemens;

    /**
     * A resistance.
     *
     * @param ohms resistance, ohm, more than 0
     */
    Ohmic(double ohms) {
        slopeSiemens = 1 / ohms;
        siemens = Precise.of(1).dividedBy(ohms);
    }

    @Override
    public Precise amps(Precise volts) {
        return volts.times(siemens);
    }

    @Override
    public double siemens(Precise volts) {
        return slopeSiemens;
    }

    /** Slope everywhere, S. */
    double siemens() {
        return slopeSiemens;
    }

    @Override
    public void amps(PreciseRow along, int branch, PreciseRow into) {
        into.setProduct(branch, along, branch, siemens);
    }

    @Override
    public double siemens(PreciseRow along, int branch) {
        return slopeSiemens;
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
