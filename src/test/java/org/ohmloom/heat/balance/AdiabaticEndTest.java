package org.ohmloom.heat.balance;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Conductors that keep their heat: k of IEC 60364-5-54, tables A.54.2 to A.54.6, and the way there and back. */
class AdiabaticEndTest {
    private static final double PRINTED = 0.5;
    private static final double EXACT = 1e-9;

    @ParameterizedTest
    @CsvSource({"70, 160, 115", "30, 160, 143", "90, 250, 143", "30, 250, 176"})
    void theFactorsOfCopperAreThoseOfTheStandard(double startCelsius, double endCelsius, double factor) {
        assertEquals(factor, Adiabatic.COPPER.k(startCelsius, endCelsius), PRINTED);
    }

    @Test
    void whatHasNotToWarmHasNoFactor() {
        assertEquals(0, Adiabatic.COPPER.k(70, 70));
        assertEquals(0, Adiabatic.COPPER.k(70, 60));
    }

    @Test
    void afterTheTimeToATemperatureTheConductorHasIt() {
        // k of 115 through 2.5 mm2 with 200 A: (115 x 2.5 / 200)^2 = 2.07 s from 70 to 160 C
        double seconds = Adiabatic.COPPER.seconds(2.5, 200, 70, 160);
        assertEquals(2.07, seconds, 0.01);
        assertEquals(160, Adiabatic.COPPER.endCelsius(2.5, 200, 70, seconds), EXACT);
        assertEquals(70, Adiabatic.COPPER.endCelsius(2.5, 200, 70, 0), EXACT);
        // twice the current in a quarter of the time, and half the area
        assertEquals(160, Adiabatic.COPPER.endCelsius(2.5, 400, 70, seconds / 4), EXACT);
        assertEquals(160, Adiabatic.COPPER.endCelsius(1.25, 100, 70, seconds), EXACT);
    }
}
