package org.ohmloom.tables;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.ohmloom.units.Gauge;

/** Known cells of published conductor and ampacity tables come back with their citation. */
class PublishedCellsTest {
    /** A few roundings of a double of this size. */
    private static final double ROUNDING = 1e-14;

    private static final WireTables TABLES = WireTables.bundled();

    @Test
    void fourteenGaugeInAircraftPractice() {
        // FAA AC 43.13-1B CHG 1, Table 11-9: 14 AWG 3.06 ohm per 1000 ft, 3831 circular mils; 1000 ft = 304.8 m
        ConductorRow row =
                TABLES.family("ac-43.13-1b").row(Gauge.parse("14 AWG")).orElseThrow();
        assertEquals(3.06 / 304.8, row.ohmsPerMetreAt20Celsius(), ROUNDING);
        // 1 circular mil = pi/4 (0.0254 mm)^2 = 5.067075e-4 mm2; 3831 of them = 1.9412 mm2
        assertEquals(1.9412, row.copperAreaMm2(), 5e-5);
        assertEquals(
                "FAA AC 43.13-1B CHG 1 (2001), Table 11-9, row 14 AWG",
                row.citation().text());
    }

    @Test
    void theAmpacityColumnIsTheHottestNotAboveTheInsulation() {
        AmpacityTable table = TABLES.ampacity("ac-43.13-1b");
        // AC 43.13-1B Table 11-9, 20 AWG: 4 A at 105 C, 7 A at 150 C, 9 A at 200 C
        CitedValue at150 = table.amps(Gauge.parse("20 AWG"), 150).orElseThrow();
        assertEquals(7, at150.value());
        assertEquals(
                "FAA AC 43.13-1B CHG 1 (2001), Table 11-9, row 20 AWG, 150 C column",
                at150.citation().text());
        assertEquals(4, table.amps(Gauge.parse("20 AWG"), 149.9).orElseThrow().value());
        assertEquals(9, table.amps(Gauge.parse("20 AWG"), 260).orElseThrow().value());
        assertEquals(Optional.empty(), table.amps(Gauge.parse("20 AWG"), 100), "no column at or below 100 C");
        assertEquals(70, table.baseAmbientCelsius());
        assertEquals(150, table.columnCelsius(175).orElseThrow());
        assertTrue(table.columnCelsius(100).isEmpty());
    }

    @Test
    void tenGaugeOfBoatCable() {
        // 33 CFR 183.425 Table 5: 10 AWG, 105 C insulation, 60 A
        CitedValue amps = TABLES.ampacity("33-cfr-183.425")
                .amps(Gauge.parse("10 AWG"), TABLES.insulation("105C").maximumCelsius())
                .orElseThrow();
        assertEquals(60, amps.value());
        assertEquals(Status.PUBLISHED, amps.citation().status());
    }

    @Test
    void aMetricConductorTakesTheLargestRowNotAboveItsAssuredCopper() {
        // ISO 6722-1 2.5 mm2: 7.60 mohm/m, so at least (1000/58)/7.60 = 2.2686 mm2 of pure copper.
        // AWG areas: 14 AWG 2.0809 mm2 fits, 12 AWG 3.3088 mm2 does not; 33 CFR Table 5, 14 AWG, 105 C: 35 A
        ConductorRow row =
                TABLES.family("iso-6722-1").row(Gauge.parse("2.5 mm2")).orElseThrow();
        assertTrue(row.areaIsNominalLabel());
        assertEquals(2.5, row.copperAreaMm2());
        assertEquals(2.2686, row.assuredCopperAreaMm2(), 5e-5);
        CitedValue amps = TABLES.ampacity("33-cfr-183.425").amps(row, 105).orElseThrow();
        assertEquals(35, amps.value());
        assertEquals(
                "33 CFR 183.425, Table 5, row 14 AWG (the largest row not above 2.269 mm2 of copper), "
                        + "105 C column",
                amps.citation().text());
    }

    @Test
    void theNominalLabelAloneWouldPromiseTooMuch() {
        // ISO 6722-1 35 mm2: 0.527 mohm/m, (1000/58)/0.527 = 32.72 mm2, which is below 2 AWG (33.63 mm2): take 3 AWG.
        // By its label, 35 mm2, it would have been 2 AWG: 210 A instead of 180 A in 33 CFR Table 5 at 105 C.
        ConductorRow row =
                TABLES.family("iso-6722-1").row(Gauge.parse("35 mm2")).orElseThrow();
        AmpacityTable table = TABLES.ampacity("33-cfr-183.425");
        assertEquals(180, table.amps(row, 105).orElseThrow().value());
        assertEquals(210, table.amps(35.0, 105).orElseThrow().value());
    }

    @Test
    void aConductorThinnerThanEveryRowHasNoAmpacity() {
        assertEquals(Optional.empty(), TABLES.ampacity("33-cfr-183.425").amps(Gauge.parse("20 AWG"), 105));
    }

    @Test
    void theMetricFreeAirTableIsPublishedAt70CelsiusAndComputedAbove() {
        // DIN VDE 0298-4 Table 11 column 2: 1.5 mm2, 24 A at 30 C ambient, 70 C conductor
        AmpacityTable table = TABLES.ampacity("din-vde-0298-4");
        CitedValue published = table.amps(Gauge.parse("1.5 mm2"), 70).orElseThrow();
        assertEquals(24, published.value());
        assertEquals(Status.PUBLISHED, published.citation().status());
        // class B, 100 C: 24 sqrt((100-30)/(70-30) x (234.5+70)/(234.5+100)) = 24 x 1.26216 = 30.29, down to 30.2 A
        CitedValue computed = table.amps(Gauge.parse("1.5 mm2"), 100).orElseThrow();
        assertEquals(30.2, computed.value());
        assertEquals(Status.COMPUTED, computed.citation().status());
        // 2.5 mm2 is from memory, which is weaker than computed
        assertEquals(
                Status.FROM_MEMORY,
                table.amps(Gauge.parse("2.5 mm2"), 100).orElseThrow().citation().status());
    }

    @Test
    void everyHotterColumnOfTheMetricTableFollowsItsFormula() {
        for (AmpacityRow row : TABLES.ampacity("din-vde-0298-4").rows()) {
            double amps70 = row.ampsByCelsius().get(70.0).value();
            row.ampsByCelsius().forEach((celsius, amps) -> {
                double byFormula = amps70 * Math.sqrt((celsius - 30) / 40 * 304.5 / (234.5 + celsius));
                assertEquals(byFormula - 0.05, amps.value(), 0.05 + 1e-9, row.gauge() + " at " + celsius + " C");
            });
        }
    }

    @Test
    void ampacityAndFamilyOfOneFileShareTheListedCopper() {
        AmpacityRow row = TABLES.ampacity("ac-43.13-1b").rows().get(0);
        assertEquals(Gauge.parse("24 AWG"), row.gauge());
        assertEquals(475 * Math.PI / 4 * 0.0254 * 0.0254, row.copperAreaMm2(), ROUNDING);
    }

    @Test
    void classFiveCopperIsListedPlainAndTinned() {
        // IEC 60228 (2004) Table 3: 2.5 mm2, 7.98 ohm/km plain, 8.21 ohm/km metal-coated
        Gauge gauge = Gauge.parse("2.5 mm2");
        ConductorRow plain = TABLES.family("iec-60228-class-5").row(gauge).orElseThrow();
        ConductorRow tinned =
                TABLES.family("iec-60228-class-5-tinned").row(gauge).orElseThrow();
        assertEquals(0.00798, plain.ohmsPerMetreAt20Celsius(), ROUNDING);
        assertEquals(0.00821, tinned.ohmsPerMetreAt20Celsius(), ROUNDING);
        // sizes below 0.5 mm2 cite another document in the same file
        assertEquals(
                "DIN VDE 0295, class 5 plain, row 0.25 mm2",
                TABLES.family("iec-60228-class-5")
                        .row(Gauge.parse("0.25 mm2"))
                        .orElseThrow()
                        .citation()
                        .text());
    }
}
