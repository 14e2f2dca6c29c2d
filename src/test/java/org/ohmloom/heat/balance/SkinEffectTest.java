package org.ohmloom.heat.balance;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The formulas of IEC 60287-1-1 against what Bessel functions give for a solid round wire. */
class SkinEffectTest {
    private static final double HALF_A_PER_CENT = 0.005;

    /**
     * x/2 (ber bei' - bei ber') / (ber'^2 + bei'^2), computed from the series of ber and bei; the values at whole x are those of
     * the skin-effect table of NBS Circular 74, from memory.
     */
    @ParameterizedTest
    @CsvSource({
        "1, 1.00519",
        "2, 1.07816",
        "2.7, 1.22753",
        "3, 1.31809",
        "3.3, 1.41999",
        "3.7, 1.56587",
        "4, 1.67787",
        "5, 2.04273",
    })
    void theResistanceRisesAsBesselFunctionsSay(double x, double ratio) {
        // x^2 = 8 pi f 1e-7 / R'
        double ohmsPerMetre = 0.001;
        double hertz = x * x * ohmsPerMetre / (8 * Math.PI * 1e-7);
        assertEquals(ratio, SkinEffect.resistanceRatio(hertz, ohmsPerMetre), HALF_A_PER_CENT * ratio);
    }

    @Test
    void aSteadyCurrentHasNoHarmonics() {
        assertEquals(0, SkinEffect.extraHeatFraction(20_000, 1, 0.001));
        assertEquals(0, SkinEffect.extraHeatFraction(20_000, 0, 0.001));
    }
}
