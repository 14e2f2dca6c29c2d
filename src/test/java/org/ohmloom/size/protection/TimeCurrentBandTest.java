package org.ohmloom.size.protection;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.ohmloom.BesideOthers;
import org.ohmloom.tables.WireTables;

/** Reading times from published bands, ISO 8820-3 as fuse makers declare it, without ever reading between two rows. */
@BesideOthers
class TimeCurrentBandTest {

    private static final WireTables TABLES = WireTables.bundled();
    private static final double ROUNDING = 1e-9;

    private static TimeCurrentBand band(String type, double ratingAmps) {
        return TimeCurrentBand.of(TABLES, type, ratingAmps).orElseThrow();
    }

    @Test
    void twoMotorsStalledTogetherOnATenAmpereFuse() {
        // Two motors stalled together take 18.9 A, 189 % of a 10 A type C fuse: between 160 % (0.25 to 50 s) and 200 %
        // (0.15 to 5 s), so it may take the 50 s of the row below and holds no more than the 0.15 s of the row above.
        TimeCurrentBand band = band("ISO 8820-3 type C", 10);
        assertEquals(OptionalDouble.of(50), band.opensWithinSeconds(18.9));
        assertEquals(OptionalDouble.of(0.15), band.holdsSeconds(18.9, 1));
        assertEquals(OptionalDouble.of(5), band.opensWithinSeconds(20));
    }

    @Test
    void hundredAndThirtyFivePercentIsNoTripPoint() {
        // 33.8 A on a 25 A type C fuse is 135.2 %: anything from 0.15 s (row above) to 600 s
        TimeCurrentBand band = band("ISO 8820-3 type C", 25);
        assertEquals(OptionalDouble.of(600), band.opensWithinSeconds(33.8));
        assertEquals(OptionalDouble.of(0.75), band.holdsSeconds(33.75, 1));
    }

    @Test
    void betweenTheLastRowThatHoldsAndTheFirstThatOpensItNeverOpens() {
        // type C: 110 % holds 100 h, 135 % opens within 600 s: at 134.9 % it is taken never to open
        TimeCurrentBand band = band("ISO 8820-3 type C", 10);
        assertEquals(13.5, band.foreverAmps(), ROUNDING);
        assertEquals(OptionalDouble.empty(), band.opensWithinSeconds(13.49));
        assertEquals(OptionalDouble.of(600), band.opensWithinSeconds(13.5));
        assertEquals(OptionalDouble.of(360000), band.holdsSeconds(11, 1));
    }

    @Test
    void beyondTheLastRowItsTimeHoldsAndNothingIsHeldForCertain() {
        TimeCurrentBand band = band("ISO 8820-3 type C", 15);
        assertEquals(OptionalDouble.of(0.1), band.opensWithinSeconds(5000));
        assertEquals(OptionalDouble.empty(), band.holdsSeconds(91, 1));
    }

    @Test
    void aFuseOfFifteenAmperesOpensInHalfASecondFromThreeAndAHalfTimesItsRating() {
        // 12 V, 15 A type C, open in 0.5 s: 350 %, so the loop may have 12/(3.5 x 15) = 0.229 ohm with battery and fuse
        TimeCurrentBand band = band("ISO 8820-3 type C", 15);
        double amps = band.ampsToOpenWithin(0.5).orElseThrow();
        assertEquals(52.5, amps, ROUNDING);
        assertEquals(0.229, 12 / amps, 5e-4);
    }

    @Test
    void inHotAirItHoldsAsIfItsRatingWereSmaller() {
        // 10 A at 75 C carries 90 %: the 200 % row stands at 18 A, so 18.9 A is beyond it and only the 350 % row is
        // left
        assertEquals(OptionalDouble.of(0.04), band("ISO 8820-3 type C", 10).holdsSeconds(18.9, 0.9));
    }

    @Test
    void devicesThatFeedOneWireTogetherAddUp() {
        // 10 A and 10 A: together 27 A for ever, and at 200 % each takes up to 5 s, one after the other 10 s
        TimeCurrentBand ten = band("ISO 8820-3 type C", 10);
        TimeCurrentBand together = TimeCurrentBand.together(List.of(ten, ten));
        assertEquals(27, together.foreverAmps(), ROUNDING);
        assertEquals(OptionalDouble.of(10), together.opensWithinSeconds(40));
        assertEquals(OptionalDouble.of(0.15), together.holdsSeconds(40, 1));
    }

    @Test
    void breakersWithoutPublishedTimesHaveNoBand() {
        // SAE J553 names types by reset; its trip limits are not held
        assertTrue(TimeCurrentBand.of(TABLES, "SAE J553 Type III", 15).isEmpty());
        assertFalse(TimeCurrentBand.of(TABLES, "ISO 8820-3 type E", 60).isEmpty());
    }

    @Test
    void aLoopOfThirtyEightAmperesOpensATenAmpereFuseInHalfASecond() {
        // 12 V over 8 m of 0.5 mm2, battery and fuse (0.3145 ohm) drive 38.16 A: 382 % of 10 A, beyond the 350 % row
        assertEquals(OptionalDouble.of(0.5), band("ISO 8820-3 type C", 10).opensWithinSeconds(12 / 0.3145));
    }

    @Test
    void theCableRuleOfBuildingsMeansARatingUpToTheAmpacityForABladeFuse() {
        // IEC 60364-4-43, 433.1: In <= Iz, and what surely opens it <= 1.45 Iz. A type C fuse surely opens within 600 s
        // at
        // 1.35 In, so the second asks for In <= 1.45 / 1.35 = 1.074 Iz only, and the first governs
        TimeCurrentBand band = band("ISO 8820-3 type C", 25);
        assertEquals(OptionalDouble.of(600), band.opensWithinSeconds(1.35 * 25));
        assertEquals(OptionalDouble.empty(), band.opensWithinSeconds(1.34 * 25));
        assertEquals(1.074, 1.45 / 1.35, 5e-4);
        // on its own it must then survive 2 In for 5 s
        assertEquals(OptionalDouble.of(5), band.opensWithinSeconds(2 * 25));
    }
}
