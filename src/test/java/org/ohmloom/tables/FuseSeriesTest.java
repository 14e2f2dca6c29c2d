package org.ohmloom.tables;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Fuse ratings, colours, time-current bands and typical resistances. */
class FuseSeriesTest {
    private static final double ROUNDING = 1e-12;

    private static final WireTables TABLES = WireTables.bundled();

    @Test
    void bladeFusesAreColouredByRating() {
        FuseSeries blade = series("ISO 8820-3 type C");
        assertEquals(Optional.of("yellow"), blade.rating(20).orElseThrow().colour());
        assertEquals(Optional.of("brown"), blade.rating(7.5).orElseThrow().colour());
        assertEquals(7.5, blade.ratingFrom(6).orElseThrow().ratingAmps());
        assertEquals(Optional.empty(), blade.rating(12));
        // the same colour means another rating on another body
        assertEquals(
                Optional.of("yellow"),
                series("ISO 8820-3 type E").rating(20).orElseThrow().colour());
        assertEquals(
                Optional.of("grey"),
                series("ISO 8820-3 type E").rating(25).orElseThrow().colour());
        assertEquals(Optional.of("natural"), blade.rating(25).orElseThrow().colour());
    }

    @Test
    void theTimeCurrentBandOfATenAmpereBladeFuse() {
        // ISO 8820-3 type C: at 200 % it opens between 0.15 s and 5 s; at 110 % it holds 100 h = 360000 s
        List<FuseTimeLimit> band = series("ISO 8820-3 type C").timeCurrentBand(10);
        FuseTimeLimit twice = band.stream()
                .filter(each -> each.multipleRatio() == 2)
                .findFirst()
                .orElseThrow();
        assertEquals(0.15, twice.minimumSeconds().orElseThrow());
        assertEquals(5, twice.maximumSeconds().orElseThrow());
        assertEquals(Status.PUBLISHED, twice.citation().status());
        assertEquals(360000, band.get(0).minimumSeconds().orElseThrow());
        assertTrue(band.get(0).maximumSeconds().isEmpty());
    }

    @Test
    void everyBandRisesInCurrentAndFallsInTime() {
        for (FuseSeries series : TABLES.fuseSeries()) {
            for (FuseRating rating : series.ratings()) {
                List<FuseTimeLimit> band = series.timeCurrentBand(rating.ratingAmps());
                for (int index = 1; index < band.size(); index++) {
                    FuseTimeLimit before = band.get(index - 1);
                    FuseTimeLimit after = band.get(index);
                    String where = series.type() + " " + rating.ratingAmps() + " A";
                    assertTrue(after.multipleRatio() > before.multipleRatio(), where);
                    assertTrue(
                            after.maximumSeconds().orElse(0)
                                    <= before.maximumSeconds().orElse(Double.POSITIVE_INFINITY),
                            where);
                }
            }
        }
    }

    @Test
    void aListedColdResistanceComesFirst() {
        // 40 A type C: 1.44 mohm cold, 96 mV at 40 A
        CitedValue ohms = series("ISO 8820-3 type C").coldResistanceOhms(40).orElseThrow();
        assertEquals(0.00144, ohms.value(), ROUNDING);
        assertEquals(Status.PUBLISHED, ohms.citation().status());
    }

    @Test
    void withoutOneItFollowsFromTheTypesUsualDrop() {
        // 35 A type C is not listed: usual drop 100 mV, so 0.100 V / 35 A / 1.4 = 2.0408 mohm
        CitedValue ohms = series("ISO 8820-3 type C").coldResistanceOhms(35).orElseThrow();
        assertEquals(0.1 / 35 / 1.4, ohms.value(), ROUNDING);
        assertEquals(
                "ISO 8820-3, typical values from fuse data sheets, row ISO 8820-3 type C, ratings not listed, "
                        + "drop / rated current / 1.4 (common practice, no source)",
                ohms.citation().text());
    }

    @Test
    void everyRatingOfEverySeriesHasAColdResistance() {
        for (FuseSeries series : TABLES.fuseSeries()) {
            for (FuseRating rating : series.ratings()) {
                assertTrue(
                        series.coldResistanceOhms(rating.ratingAmps())
                                        .orElseThrow()
                                        .value()
                                > 0,
                        series.type() + " " + rating.ratingAmps() + " A");
            }
        }
    }

    @Test
    void aFuseIsLoadedToThreeQuartersOfItsRating() {
        DeratingRule rule = TABLES.fuseDerating("continuous-load-25-celsius");
        assertEquals(75, rule.value().value());
        assertEquals("%", rule.unit());
    }

    @Test
    void breakersOfTypeThreeStayOpen() {
        assertEquals(
                List.of("automatic", "modified", "manual"),
                TABLES.breakerTypes().stream().map(BreakerType::reset).toList());
    }

    private static FuseSeries series(String type) {
        return TABLES.fuseSeries(type).orElseThrow();
    }

    @Test
    void aMaxiFuseFallsFasterInHotAirThanTheGeneralRule() {
        // data sheet of a 40 A type E fuse: 40 A at 20 C, 34 A at 65 C, 25 A at 110 C: 0.33 and 0.42 % of 40 A a kelvin
        // from 20 C on; the general guide has 0.2 %/K
        assertEquals(40, derating("type-e-40-a-at-20-celsius"));
        assertEquals(34, derating("type-e-40-a-at-65-celsius"));
        assertEquals(25, derating("type-e-40-a-at-110-celsius"));
        assertEquals(0.33, 100 * (40 - 34) / 40.0 / (65 - 20), 5e-3);
        assertEquals(0.42, 100 * (40 - 25) / 40.0 / (110 - 20), 5e-3);
        assertEquals(0.2, derating("ambient-slope"));
    }

    @Test
    void repeatedPulsesUseAShareOfTheMeltingIntegral() {
        // fuse selection guide, chart 2: 100 000 pulses 22 %, 10 000 29 %, 100 48 %; a type C fuse of 10 A melts at 115
        // A2s (from memory), so 100 000 starts may have 25.3 A2s each
        assertEquals(22, derating("pulse-100000"));
        assertEquals(29, derating("pulse-10000"));
        assertEquals(48, derating("pulse-100"));
        double melting = series("ISO 8820-3 type C")
                .meltingAmpSquaredSeconds(10)
                .orElseThrow()
                .value();
        assertEquals(25.3, melting * derating("pulse-100000") / 100, 1e-9);
    }

    private static double derating(String rule) {
        return TABLES.fuseDerating(rule).value().value();
    }
}
