package org.ohmloom.solve;

/**
 * A filament: amps = ratedAmps x (|volts| / ratedVolts)^exponent, with the sign of volts.
 *
 * <p>At 0 V the slope of that law is infinite. Below a thousand-millionth of the rated voltage the chord to that point
 * takes its place; a dark lamp in a path of other currents then loses a few nanovolts.
 *
 * @param ratedAmps  current at the rated voltage, A, more than 0
 * @param ratedVolts rated voltage, V, more than 0
 * @param exponent   more than 0, at most 1
 */
record Lamp(double ratedAmps, double ratedVolts, double exponent) implements Characteristic {

    private static final double CHORD_RATIO = 1e-9;

    @Override
    public Precise amps(Precise volts) {
        double ratio = Math.abs(volts.value()) / ratedVolts;
        if (ratio < CHORD_RATIO) {
            return volts.times(chordSiemens());
        }
        return Precise.of(Math.copySign(ratedAmps * Math.pow(ratio, exponent), volts.value()));
    }

    @Override
    public double siemens(Precise volts) {
        double ratio = Math.abs(volts.value()) / ratedVolts;
        if (ratio < CHORD_RATIO) {
            return chordSiemens();
        }
        return exponent * ratedAmps * Math.pow(ratio, exponent - 1) / ratedVolts;
    }

    private double chordSiemens() {
        return ratedAmps * Math.pow(CHORD_RATIO, exponent - 1) / ratedVolts;
    }

    @Override
    public double leakSiemens(double stageSiemens) {
        return 0;
    }
}
