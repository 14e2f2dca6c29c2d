package org.ohmloom.model;

/** A resistance that tells a value, both ways. */
public interface ResistanceCurve {

    /** Resistance at a value, ohm; the value in the unit of the measurement, deg C for thermistors. */
    double ohms(double value);

    /** Value at a resistance. */
    double value(double ohms);
}
