package org.ohmloom.tables;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.ohmloom.model.WireColour;
import org.ohmloom.units.Gauge;
import org.ohmloom.units.GaugeSystem;

/** Insulation, copper, colours, terminals, limits and rules. */
class ReferenceRowsTest {
    private static final WireTables TABLES = WireTables.bundled();

    @Test
    void insulationTypesCarryTheStandardsOwnNames() {
        assertEquals(100, TABLES.insulation("ISO 6722-1 class B").maximumCelsius());
        assertEquals(-40, TABLES.insulation("ISO 6722-1 class B").minimumCelsius());
        assertEquals(125, TABLES.insulation("SAE J1128 TXL").maximumCelsius());
        assertEquals(105, TABLES.insulation("105C").maximumCelsius());
        assertFalse(TABLES.insulation("105C").listsMinimum());
        assertEquals(
                "ISO 6722-1:2011, temperature classes, row ISO 6722-1 class B (from memory)",
                TABLES.insulation("ISO 6722-1 class B").citation().text());
    }

    @Test
    void copperFollowsTheInferredZeroResistanceTemperature() {
        CopperConstants copper = TABLES.copper();
        assertEquals(0.00393, copper.alpha20PerKelvin());
        assertEquals(234.5, copper.betaCelsius());
        assertEquals(1.0 / 58, copper.resistivity().value(), 1e-18);
        // AC 43.13-1B uses 254.5/(234.5 + T): at 100 C, 334.5/254.5 = 1.31434
        assertEquals(1.31434, copper.resistanceRatio(100), 5e-6);
        assertEquals(
                "IEC 60949:1988, beta for copper, row beta",
                copper.beta().citation().text());
    }

    @Test
    void everyColourTheModelKnowsHasARow() {
        for (String code : WireColour.CODES) {
            assertTrue(TABLES.findColour(code).isPresent(), code);
        }
        assertEquals("red", TABLES.findColour("RD").orElseThrow().name());
        assertEquals(0xC8102E, TABLES.findColour("RD").orElseThrow().rgb());
    }

    @Test
    void terminalThirtyIsBatteryPositive() {
        TerminalNumber thirty = TABLES.terminals().stream()
                .filter(each -> each.number().equals("30"))
                .findFirst()
                .orElseThrow();
        assertEquals("battery positive, unswitched", thirty.meaning());
        assertEquals(
                "DIN 72552, terminal designations, row 30", thirty.citation().text());
    }

    @Test
    void aircraftPracticeAllowsDropsBySystemVoltage() {
        // AC 43.13-1B Table 11-6: 14 V system 0.5 V continuous, 28 V system 1 V continuous and 2 V intermittent
        AllowableDrops drops = TABLES.allowableDrops("ac-43.13-1b");
        assertEquals(0.5, drops.volts(12, "continuous").orElseThrow().value());
        assertEquals(1.0, drops.volts(24, "continuous").orElseThrow().value());
        assertEquals(2.0, drops.volts(28, "intermittent").orElseThrow().value());
        assertEquals(Optional.empty(), drops.volts(48, "continuous"), "no row near 48 V");
        assertEquals(
                "FAA AC 43.13-1B 8 September 1998, Table 11-6, row 28 V continuous",
                drops.volts(28, "continuous").orElseThrow().citation().text());
    }

    @Test
    void smallCraftPracticeAllowsAShareOfTheVoltage() {
        // ABYC E-11: 3 % of 12 V = 0.36 V, 10 % = 1.2 V
        AllowableDrops drops = TABLES.allowableDrops("abyc-e-11");
        assertEquals(0.36, drops.volts(12, "critical").orElseThrow().value(), 1e-12);
        assertEquals(1.2, drops.volts(12, "continuous").orElseThrow().value(), 1e-12);
    }

    @Test
    void smallCraftPlacementDistancesDependOnEnclosure() {
        // 33 CFR 183.455(b): 7 in = 0.1778 m, 40 in = 1.016 m when sheathed or enclosed
        List<PlacementRule> rules = TABLES.placementRules("33-cfr-183");
        double bare = largest(rules, false, false);
        double enclosed = largest(rules, true, false);
        double battery = largest(rules, false, true);
        assertEquals(0.1778, bare, 1e-12);
        assertEquals(1.016, enclosed, 1e-12);
        assertEquals(1.8288, battery, 1e-12); // 183.460(a): 72 in, from memory
        assertEquals(PlacementSeverity.ERROR, TABLES.basis("33-cfr-183").placementSeverity());
        assertEquals(PlacementSeverity.NOTE, TABLES.basis("road-vehicle").placementSeverity());
    }

    private static double largest(List<PlacementRule> rules, boolean enclosed, boolean battery) {
        return rules.stream()
                .filter(rule -> rule.holds(enclosed, battery))
                .mapToDouble(PlacementRule::distanceMetres)
                .max()
                .orElseThrow();
    }

    @Test
    void theRegulationAllowsOneAndAHalfTimesTheTableBelowFiftyVolts() {
        // 33 CFR 183.455(c): 150 % below 50 V; at 50 V and above 100 %, the next size up to 150 %
        DeviceRatingRule low = TABLES.deviceRatingRule("33-cfr-183", 24).orElseThrow();
        DeviceRatingRule high = TABLES.deviceRatingRule("33-cfr-183", 50).orElseThrow();
        assertEquals(1.5, low.ampacityRatio());
        assertEquals(1.0, high.ampacityRatio());
        assertEquals(1.5, high.nextSizeRatio());
    }

    @Test
    void theProtectorChartGivesTheLargestBreakerAndFuse() {
        // AC 43.13-1B Table 11-3: 16 AWG, breaker 15 A, fuse 10 A; 1 AWG no breaker, fuse 150 A
        ProtectorChart chart = TABLES.protectorChart("ac-43.13-1b");
        ProtectorRow sixteen = chart.row(Gauge.parse("16 AWG")).orElseThrow();
        assertEquals(15, sixteen.breakerAmps().orElseThrow().value());
        assertEquals(10, sixteen.fuseAmps().orElseThrow().value());
        assertTrue(chart.row(Gauge.parse("1 AWG")).orElseThrow().breakerAmps().isEmpty());
        // 1.5 mm2 lies between 16 AWG (1.309 mm2) and 14 AWG (2.081 mm2): the thinner row counts
        assertEquals(sixteen, chart.row(Gauge.parse("1.5 mm2")).orElseThrow());
    }

    @Test
    void mechanicalMinimumsAreGivenInBothSystems() {
        MechanicalMinimum minimum = TABLES.mechanicalMinimum("33-cfr-183").orElseThrow();
        assertEquals("16 AWG", minimum.gauge(GaugeSystem.AWG).text());
        assertEquals("1.5 mm2", minimum.gauge(GaugeSystem.METRIC).text());
    }

    @Test
    void switchesForLampsAreDeratedMost() {
        // AC 43.13-1B Table 11-4: 28 V lamp 8, 12 V lamp 5, 12 V inductive 2
        assertEquals(
                8,
                TABLES.switchDeratings().stream()
                        .filter(each -> each.systemVolts() == 28 && each.load().equals("lamp"))
                        .findFirst()
                        .orElseThrow()
                        .factor()
                        .value());
    }

    @Test
    void outsideDiametersAreFoundBySeriesAndSize() {
        CitedValue diameter =
                TABLES.outsideDiameterMm("AS22759/32", Gauge.parse("20 AWG")).orElseThrow();
        assertEquals(1.27, diameter.value(), 1e-12);
        assertEquals(Status.FROM_MEMORY, diameter.citation().status());
    }

    /** The factor of the switch derating table. */
    private static double switchFactor(double volts, String load) {
        return TABLES.switchDeratings().stream()
                .filter(each -> each.systemVolts() == volts && each.load().startsWith(load))
                .findFirst()
                .orElseThrow()
                .factor()
                .value();
    }

    @Test
    void aSwitchForAFiveAmpereLampAtTwelveVoltsIsRatedTwentyFive() {
        // AC 43.13-1B (8 Sep 1998) Table 11-4: rating = continuous current x factor, 5 A x 5 = 25 A
        assertEquals(25, 5 * switchFactor(12, "lamp"), 1e-12);
        // the other rows of the page: 12 V relay or solenoid 2, heater 1; 28 V heater 2
        assertEquals(2, switchFactor(12, "inductive"));
        assertEquals(1, switchFactor(12, "resistive"));
        assertEquals(2, switchFactor(28, "resistive"));
    }

    @Test
    void theProtectorChartPutsAFiveAmpereFuseOnTwentyGauge() {
        // AC 43.13-1B Table 11-3: 20 AWG, breaker 7.5 A, fuse 5 A
        ProtectorRow twenty =
                TABLES.protectorChart("ac-43.13-1b").row(Gauge.parse("20 AWG")).orElseThrow();
        assertEquals(7.5, twenty.breakerAmps().orElseThrow().value());
        assertEquals(5, twenty.fuseAmps().orElseThrow().value());
    }
}
