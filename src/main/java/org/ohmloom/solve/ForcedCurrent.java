package org.ohmloom.solve;

/**
 * A current that no voltage changes.
 *
 * @param amps the current, A
 */
record ForcedCurrent(double amps) implements Characteristic {

    @Override
    public Precise amps(Precise volts) {
        return Precise.of(amps);
    }

    @Override
    public double siemens(Precise volts) {
        return 0;
    }
}
