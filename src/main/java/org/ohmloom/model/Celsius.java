package org.ohmloom.model;

/** Celsius and kelvin. */
final class Celsius {

    /** 0 deg C in kelvin. */
    static final double ZERO_KELVIN = 273.15;

    private Celsius() {}

    static double kelvin(double celsius) {
        return celsius + ZERO_KELVIN;
    }

    static double of(double kelvin) {
        return kelvin - ZERO_KELVIN;
    }
}
