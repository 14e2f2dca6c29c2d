package org.ohmloom.size.protection;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.ohmloom.BesideOthers;
import org.ohmloom.tables.AdiabaticFactor;
import org.ohmloom.tables.CopperConstants;
import org.ohmloom.tables.WireTables;

/** Short circuits by the adiabatic equation, fusing currents by Onderdonk's. */
@BesideOthers
class AdiabaticTest {

    private static final WireTables TABLES = WireTables.bundled();
    private static final CopperConstants COPPER = TABLES.copper();
    private static final double THREE_DIGITS = 5e-3;

    /** Published factors are whole numbers; silicone at 180 C is printed half a unit low. */
    private static final double FACTOR_ROUNDING = 0.5;

    static Stream<AdiabaticFactor> copper() {
        return TABLES.adiabaticFactors().stream().filter(each -> each.metal().equals("copper"));
    }

    @ParameterizedTest
    @MethodSource("copper")
    void thePublishedFactorsOfCopperFollowFromTheFormula(AdiabaticFactor published) {
        // IEC 60364-5-54 Annex A: k = 226 sqrt(ln((234.5 + Tf)/(234.5 + Ti))); PVC 70 to 160 C: 226
        // sqrt(ln(394.5/304.5)) = 115
        double k = Adiabatic.k(COPPER, published.initialCelsius(), published.finalCelsius());
        assertEquals(published.factor().value(), k, FACTOR_ROUNDING, published.insulation());
    }

    @Test
    void threeThousandAmperesForPointFourSecondsNeedSixteenAndAHalfSquareMillimetres() {
        // BS 7671 adiabatic example: S = 3000 sqrt(0.4)/115 = 16.5 mm2, choose 25 mm2
        assertEquals(16.499, Adiabatic.areaMm2(115, 3000, 0.4), 5e-4);
        // 10 kA for 0.1 s: 27.5 mm2, choose 35 mm2
        assertEquals(27.498, Adiabatic.areaMm2(115, 10_000, 0.1), 5e-4);
    }

    @Test
    void halfASquareMillimetreWithstandsWhatATwentyAmpereFuseLetsThrough() {
        // k2 S2 = 115^2 x 0.5^2 = 3306 A2s, more than the 520 A2s that melt the fuse (from memory)
        double withstand = Adiabatic.withstandAmpSquaredSeconds(115, 0.5);
        assertEquals(3306, withstand, 0.5);
        double melting = TABLES.fuseSeries("ISO 8820-3 type C")
                .orElseThrow()
                .meltingAmpSquaredSeconds(20)
                .orElseThrow()
                .value();
        assertTrue(melting < withstand);
    }

    @Test
    void timeAndTemperatureAreInverse() {
        // 1 mm2 from 70 C at 35 A: (226/35)^2 ln(394.5/304.5) = 10.8 s to 160 C
        double seconds = Adiabatic.seconds(COPPER, 1, 35, 70, 160);
        assertEquals(10.8, seconds, 0.01);
        assertEquals(160, Adiabatic.endCelsius(COPPER, 1, 35, 70, seconds), 1e-9);
    }

    @Test
    void sixteenGaugeMeltsInFiveSecondsAtOneHundredAndSixtyNineAmperes() {
        // Onderdonk, 2581 circular mils, 25 C, 5 s: log10(1058/259 + 1) = 0.70662; 2581 sqrt(0.70662/165) = 168.9 A.
        // The printed 178 A uses 234 - 25 in place of 234 + 25 and is wrong.
        double areaMm2 = 2581 * Math.PI / 4 * 0.0254 * 0.0254;
        double amps = Onderdonk.meltingAmps(COPPER, areaMm2, 5, 25);
        assertEquals(168.9, amps, 0.05);
        double printed = 2581 * Math.sqrt(Math.log10((1083.0 - 25) / (234 - 25) + 1) / (33 * 5));
        assertEquals(178, printed, 0.5);
        assertNotEquals(printed, amps, 5);
        assertEquals(5, Onderdonk.meltingSeconds(COPPER, areaMm2, amps, 25), 1e-9);
    }

    @Test
    void onderdonkAndTheAdiabaticEquationAgree() {
        // sqrt(1/(33 ln 10))/5.067e-4 = 226.4 against 226 A s^0.5/mm2; beta 234 against 234.5
        double seconds = Adiabatic.seconds(COPPER, 2.5, 180, 20, 1083);
        assertEquals(seconds, Onderdonk.meltingSeconds(COPPER, 2.5, 180, 20), THREE_DIGITS * seconds);
        assertEquals(16.2, seconds, 0.2);
    }
}
