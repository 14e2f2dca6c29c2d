package org.ohmloom.size.protection;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.ohmloom.BesideOthers;
import org.ohmloom.model.ComponentId;
import org.ohmloom.tables.WireTables;

/** Worked examples of handbooks and data sheets on fuses and on copper that melts. */
@BesideOthers
class HandbookProtectionTest {

    private final WireTables tables = WireTables.bundled();

    /**
     * A maker's example for a thin-film chip fuse: 1.5 A through it, ambient factor 0.95, no more than 0.70 of the rating for good: at
     * least 2.255 A (1.5 / 0.95 / 0.70 = 2.2556).
     */
    @Test
    void co3AChipFuseForOneAndAHalfAmperes() {
        assertEquals(2.255, ContinuousRating.leastAmps(1.5, 0.70, 0.95), 1e-3);
        assertEquals(0, ContinuousRating.leastAmps(0, 0.70, 0));
        assertTrue(Double.isInfinite(ContinuousRating.leastAmps(1.5, 0.70, 0)));
    }

    /**
     * Data sheet of a 40 A type E fuse: it may carry 40 A from -40 to 20 C, 34 A at 65 C and 25 A at 110 C. For good 80 % of that, which is
     * the usual share for blade fuses (from memory).
     */
    @Test
    void aMaxiFuseInHotAir() {
        double[][] points = {{-40, 40}, {20, 40}, {65, 34}, {110, 25}};
        for (double[] point : points) {
            ContinuousRating rating = ContinuousRating.of(tables, "ISO 8820-3 type E", 40, point[0]);
            assertEquals(point[1], rating.carriesAmps(), 1e-9);
            assertEquals(0.8 * point[1], rating.continuousAmps(), 1e-9);
        }
    }

    /** A fuse guide: a general fuse loses 0.2 % of its rating for every kelvin above 25 C: 10 A carry 9 A at 75 C. */
    @Test
    void anOrdinaryFuseLosesAFifthOfAPercentEachKelvin() {
        assertEquals(9, ContinuousRating.of(tables, "ISO 8820-3 type C", 10, 75).carriesAmps(), 1e-9);
    }

    /**
     * Preece as handed round in handbooks, I = 10244 d^1.5 with d in inches: 123 A for d = 0.0524 in; 16 AWG by its definition is
     * 0.0508 in: 117.3 A. In millimetres 80 d^1.5.
     */
    @Test
    void preeceSixteenGaugeMeltsForGood() {
        assertEquals(123, Preece.meltingAmps(0.0524 * 25.4), 0.2);
        assertEquals(117.3, Preece.meltingAmps(0.0508 * 25.4), 0.05);
        assertEquals(80, Preece.meltingAmps(1), 0.05);
        // 16 AWG, 1.309 mm2: as one round wire the same
        assertEquals(117.3, Preece.ofArea(1.3087), 0.1);
        // and Onderdonk's current for 5 s, where no heat is lost, is above it
        assertTrue(Onderdonk.meltingAmps(tables.copper(), 1.3087, 5, 25) > Preece.ofArea(1.3087));
    }

    /**
     * ICEA P-32-382 writes (I/A)^2 t = 0.0297 log10((T2 + 234)/(T1 + 234)), A in circular mils: sqrt(0.0297/ln 10) / 5.067e-4 =
     * 224.1 A s^0.5/mm2, 0.8 % below the 226 of IEC 60364-5-54. From 75 to 150 C, 1 s, 10 AWG (10,380 circular mils): 557 A by it,
     * 561 A by ours.
     */
    @Test
    void iceaAndIecShortCircuits() {
        double icea = 10_380 * Math.sqrt(0.0297 * Math.log10(384.0 / 309));
        double areaMm2 = 10_380 * Math.PI / 4 * 0.0254 * 0.0254;
        double iec = Adiabatic.k(tables.copper(), 75, 150) * areaMm2;
        assertEquals(224.1, Math.sqrt(0.0297 / Math.log(10)) / 5.067075e-4, 0.1);
        assertEquals(icea, iec, 0.01 * icea);
    }

    /**
     * Fuse guides: fuses in series discriminate at a rating ratio of 1 to 2 (from memory). The published bands of type C show less than
     * that ratio promises: 10 A below 20 A is shown up to the 22 A which 20 A holds for good, so at 100 A the ratio alone stands for it.
     */
    @Test
    void selectivityByTheUsualRatioOfOneToTwo() {
        assertFalse(between(15, 15).selective());
        assertFalse(between(15, 20).selective());
        Selectivity twice = between(10, 20);
        assertTrue(twice.selective());
        assertEquals(22, twice.shownAmps().orElseThrow(), 1e-9);
        assertEquals(
                "F1 (20 A) is 2 times its rating; shown by the bands up to 22 A; beyond, 1 to 2 counts as selective"
                        + " (common practice)",
                twice.sentence());
    }

    private Selectivity between(double lower, double upper) {
        return Selectivity.of(
                new ComponentId("F1"),
                lower,
                upper,
                TimeCurrentBand.of(tables, "ISO 8820-3 type C", lower),
                TimeCurrentBand.of(tables, "ISO 8820-3 type C", upper),
                OptionalDouble.of(100));
    }
}
