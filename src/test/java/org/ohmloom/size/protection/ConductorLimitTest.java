package org.ohmloom.size.protection;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.ohmloom.BesideOthers;
import org.ohmloom.model.WireId;
import org.ohmloom.tables.CopperConstants;
import org.ohmloom.tables.InsulationType;
import org.ohmloom.tables.ShortTimeLimit;
import org.ohmloom.tables.WireTables;

/** What a conductor stands, and whether a fuse opens before. */
@BesideOthers
class ConductorLimitTest {

    private static final WireTables TABLES = WireTables.bundled();
    private static final CopperConstants COPPER = TABLES.copper();

    /** 1 mm2 that carries 17.5 A at 70 C in 30 C air, DIN VDE PVC; resistance as IEC 60228 class 5. */
    private static ConductorLimit oneSquareMillimetre() {
        return limit(1, 0.0195, 17.5, "DIN VDE PVC 70C", 30, 70);
    }

    private static ConductorLimit limit(
            double areaMm2, double ohmsPerMetre, double ampacity, String insulation, double ambient, double running) {
        double continuous = TABLES.insulation(insulation).maximumCelsius();
        return new ConductorLimit(
                new WireId("W1"),
                areaMm2 + " mm2",
                areaMm2,
                ampacity,
                ambient,
                running,
                continuous,
                TABLES.findShortTimeLimit(insulation).orElseThrow(),
                LumpedHeating.of(COPPER, areaMm2, ohmsPerMetre, ampacity, continuous, ambient),
                COPPER,
                List.of());
    }

    @Test
    void everyInsulationTypeHasAShortTimeLimitAboveItsContinuousOne() {
        for (InsulationType type : TABLES.insulations()) {
            ShortTimeLimit limit = TABLES.findShortTimeLimit(type.id()).orElseThrow();
            assertTrue(limit.overload().value() > type.maximumCelsius(), type::id);
            assertTrue(limit.shortCircuit().value() >= limit.overload().value(), type::id);
        }
    }

    @Test
    void theLumpSettlesAtItsLimitWhenItCarriesItsAmpacity() {
        ConductorHeating heating = oneSquareMillimetre().heating();
        assertEquals(70, heating.steadyCelsius(17.5), 1e-9);
        assertEquals(30, heating.steadyCelsius(0), 0);
        assertTrue(heating.steadyCelsius(1.35 * 17.5) > 102, "free-air balance: 102.8 C at 135 %");
        assertEquals(Double.POSITIVE_INFINITY, heating.seconds(17.5, 30, 70.001));
    }

    @Test
    void timesAreNeverLongerThanThoseOfAFreeAirBalanceWithItsInsulation() {
        // computed for 1 mm2 from 70 C at twice its current with insulation and natural convection: 16.9 s to 105 C,
        // 59.6 s
        // to 160 C; the copper alone, losing nothing, takes 10.8 s to 160 C
        ConductorHeating heating = oneSquareMillimetre().heating();
        assertTrue(heating.seconds(35, 70, 105) < 16.9);
        assertTrue(heating.seconds(35, 70, 160) < 59.6);
        assertTrue(heating.seconds(35, 70, 160) > 10.8);
        double seconds = heating.seconds(35, 70, 105);
        assertEquals(105, heating.celsiusAfter(35, 70, seconds), 1e-9);
    }

    @Test
    void upToTenSecondsTheCopperAloneCounts() {
        // 61.25 A (3.5 times) from 70 C: 3.5 s to 160 C, the short-circuit limit, within 5 s
        OptionalDouble seconds = oneSquareMillimetre().damageSeconds(61.25);
        assertEquals(3.53, seconds.orElseThrow(), 0.01);
        assertEquals(115, oneSquareMillimetre().shortCircuitFactor(), 0.5);
    }

    @Test
    void timesFallAsCurrentsRise() {
        double before = Double.POSITIVE_INFINITY;
        for (double amps = 18; amps < 2000; amps *= 1.03) {
            double seconds = oneSquareMillimetre().damageSeconds(amps).orElse(Double.POSITIVE_INFINITY);
            assertTrue(seconds <= before, amps + " A");
            before = seconds;
        }
    }

    @Test
    void aTenAmpereFuseProtectsOneSquareMillimetre() {
        // it carries 13.5 A for ever, the wire 17.5 A; the worst stretch ends at 20 A just below the 200 % row: 50 s
        TimeCurrentBand band =
                TimeCurrentBand.of(TABLES, "ISO 8820-3 type C", 10).orElseThrow();
        BandAgainstConductor found = BandAgainstConductor.of(band, oneSquareMillimetre(), 400, 0);
        assertEquals(13.5, found.foreverAmps(), 1e-9);
        assertEquals(30 + 40 * 13.5 * 13.5 / (17.5 * 17.5), found.steadyCelsius(), 2);
        assertTrue(found.isProtected());
    }

    @Test
    void aFifteenAmpereFuseMayHeatItBeyondItsLimitForEver() {
        // 1.35 x 15 = 20.25 A for ever, the wire may carry 17.5 A
        TimeCurrentBand band =
                TimeCurrentBand.of(TABLES, "ISO 8820-3 type C", 15).orElseThrow();
        BandAgainstConductor found = BandAgainstConductor.of(band, oneSquareMillimetre(), 400, 0);
        assertFalse(found.settles());
        assertFalse(found.isProtected());
    }

    @Test
    void aFaultTooSmallForTheFuseIsWhatItCarriesForEver() {
        TimeCurrentBand band =
                TimeCurrentBand.of(TABLES, "ISO 8820-3 type C", 30).orElseThrow();
        BandAgainstConductor found = BandAgainstConductor.of(band, oneSquareMillimetre(), 17, 0);
        assertEquals(17, found.foreverAmps());
        assertTrue(found.isProtected(), "no more than 17 A can flow");
    }
}
