package org.ohmloom.size.protection;

/** How a conductor where it lies warms under a constant current. */
public interface ConductorHeating {

    /** The temperature it settles at, deg C; infinite when it does not settle. */
    double steadyCelsius(double amps);

    /** Time to warm from one temperature to another, s; infinite when it never gets there, 0 when it is there. */
    double seconds(double amps, double startCelsius, double endCelsius);

    /** The temperature after a time, deg C; infinite when it runs away before. */
    double celsiusAfter(double amps, double startCelsius, double seconds);
}
