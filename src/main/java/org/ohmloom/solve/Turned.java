package org.ohmloom.solve;

/**
 * A characteristic connected the other way round.
 *
 * @param inner the characteristic from {@code to} to {@code from}
 */
record Turned(Characteristic inner) implements Characteristic {

    @Override
    public Precise amps(Precise volts) {
        return inner.amps(volts.negated()).negated();
    }

    @Override
    public double siemens(Precise volts) {
        return inner.siemens(volts.negated());
    }

    @Override
    public double leakSiemens(double stageSiemens) {
        return inner.leakSiemens(stageSiemens);
    }
}
