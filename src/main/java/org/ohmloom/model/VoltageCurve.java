package org.ohmloom.model;

import java.util.OptionalDouble;

/** A voltage over a sensor's return that tells a value, both ways. */
public interface VoltageCurve {

    /** Voltage at a value, V, with the supply of {@link #supplyVolts()}; the value in the unit of the measurement. */
    double volts(double value);

    /** Value at a voltage. */
    double value(double volts);

    /** Supply the voltages are in proportion to, V; empty where they do not follow the supply. */
    OptionalDouble supplyVolts();

    /** Resistance behind the signal terminal, ohm, if known. */
    OptionalDouble outputOhms();
}
