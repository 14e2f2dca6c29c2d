package org.ohmloom.solve;

/**
 * A diode in two straight pieces: amps = (volts - forwardVolts) / ohms above the threshold, 0 below.
 *
 * @param forwardVolts threshold, V, 0 or more
 * @param ohms         slope resistance, ohm, more than 0
 */
record Rectifier(double forwardVolts, double ohms) implements Characteristic {

    @Override
    public Precise amps(Precise volts) {
        Precise above = volts.plus(-forwardVolts);
        return above.value() > 0 ? above.dividedBy(ohms) : Precise.ZERO;
    }

    @Override
    public double siemens(Precise volts) {
        return volts.plus(-forwardVolts).value() > 0 ? 1 / ohms : 0;
    }
}
