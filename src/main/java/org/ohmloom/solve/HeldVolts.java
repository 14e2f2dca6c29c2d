package org.ohmloom.solve;

/**
 * A large capacitor in one moment: it holds its voltage and takes or gives what current that needs.
 *
 * @param volts its voltage, V(from) - V(to), V
 */
record HeldVolts(double volts) implements Characteristic {

    /** What stands in for no resistance, ohm: at 100 A it loses 1 mV. */
    private static final double OHMS = 1e-5;

    @Override
    public Precise amps(Precise along) {
        return along.plus(-volts).dividedBy(OHMS);
    }

    @Override
    public double siemens(Precise along) {
        return 1 / OHMS;
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
