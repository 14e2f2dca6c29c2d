package org.ohmloom.bundle;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.ohmloom.bundle.length.Helix;
import org.ohmloom.bundle.packing.CirclePacking;
import org.ohmloom.tables.FabricationTables;
import org.ohmloom.tables.PullForce;
import org.ohmloom.tables.WireTables;
import org.ohmloom.tables.WorkmanshipClass;
import org.ohmloom.units.Gauge;

/** Published rows on workmanship, twisting and coverings against the tables and formulas that use them. */
class FabricationRowsTest {
    private static final WireTables TABLES = WireTables.bundled();
    private static final FabricationTables PRACTICE = TABLES.fabrication();
    private static final double EXACT = 1e-9;
    private static final double METRES_IN_AN_INCH = 0.0254;

    /** Documents print inches with rounded millimetres beside them. */
    private static final double ROUNDED_METRES = 0.003;

    private static double value(String item) {
        return PRACTICE.value(item).value();
    }

    @ParameterizedTest
    @CsvSource({
        // FAA AC 43.13-1B: 11-96 a, 11-158 b, 11-167 d (from memory), 11-208 and figure 11-23; ABYC E-11, 11.14.6.8
        "support-spacing, 24",
        "support-spacing-small-craft, 18",
        "tie-above-support, 12",
        "splice-clearance, 12",
        "label-spacing, 15",
        "label-first, 3",
        "label-least, 3",
    })
    void distancesPrintedInInchesAreTheMillimetresOfTheTable(String item, double inches) {
        assertEquals(inches * METRES_IN_AN_INCH, value(item), ROUNDED_METRES, item);
    }

    @Test
    void aBundleBendsSixDiametersWhileFittingAndTenWhereItStaysBent() {
        // NASA-STD-8739.4 with change 6, 7.3.21: 6 x outside diameter, 10 x for good; US Army TM 1-1500-204-23-4: 10 x
        assertEquals(6, value("bend-least"));
        assertEquals(10, value("bend-lasting"));
    }

    @Test
    void aBundleIsKeptToSeventyFiveWiresOrTwoInches() {
        // FAA-H-8083-32, wire groups and bundles
        assertEquals(75, value("bundle-most-wires"));
        assertEquals(2 * 25.4, value("bundle-most-diameter"), 0.5);
    }

    @Test
    void slackAllowsTwoTerminationsAnewAndAStudTakesFourTerminals() {
        // FAA AC 43.13-1B, 11-118 and 11-174 b; NAVEDTRA 14009; ABYC E-11, 11.14.6.9
        assertEquals(2, value("re-terminations"));
        assertEquals(4, value("stud-terminals"));
    }

    @Test
    void theThreeClassesOfWorkmanshipAreThoseOfTheStandard() {
        // IPC/WHMA-A-620, section 1.3
        assertEquals(
                List.of("general electronic products", "dedicated service", "high performance"),
                Arrays.asList(1, 2, 3).stream()
                        .map(PRACTICE::workmanshipClass)
                        .map(WorkmanshipClass::title)
                        .toList());
        assertEquals(
                "class 2, dedicated service (IPC/WHMA-A-620)",
                PRACTICE.workmanshipClass(2).text());
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/org/ohmloom/bundle/pull-forces.csv", numLinesToSkip = 3)
    void theSmallestPullOutForcesAreThoseOfTheirSets(String set, String gauge, double newtons, Double poundsForce) {
        Optional<PullForce> row = TABLES.pullForces().stream()
                .filter(force -> force.set().equals(set) && force.gauge().equals(Gauge.parse(gauge)))
                .findFirst();
        assertEquals(newtons, row.orElseThrow().forceNewtons().value(), EXACT);
        if (poundsForce != null) {
            // newtons are printed rounded beside the pounds-force: 1 lbf is 4.448222 N
            assertEquals(poundsForce * 4.448222, newtons, Math.max(1, 0.003 * newtons));
        }
    }

    @ParameterizedTest
    @CsvSource({"8, 1.074343", "12, 1.033702", "16, 1.019094"})
    void aLayOfEightToSixteenPitchDiametersTakesUpSevenToTwoPercent(double layOverPitch, double factor) {
        // sqrt(1 + (pi / 8)^2) = 1.074343; ASTM B8 has outer layers between 8 and 16 diameters (from memory)
        assertEquals(factor, Helix.takeUpRatio(3, 3 * layOverPitch), 1e-6);
    }

    @Test
    void cabledConductorsOfUnknownLayGetTheThreePercentOfAWireMakersHandbook() {
        assertEquals(1.03, value("twist-loss"));
    }

    @ParameterizedTest
    @CsvSource({"2, 2", "3, 2.1547005384", "4, 2.4142135624", "6, 3", "7, 3"})
    void noSingleFactorOnTheRootOfTheSummedSquaresWorksBelowSevenWires(int count, double ratio) {
        // closed forms of circle packing: the factor would have to be ratio / sqrt(N), from 1.414 down to 1.134
        double found = CirclePacking.of(Collections.nCopies(count, 1.0)).diameterMm();
        assertEquals(ratio, found, 1e-6);
        double factor = found / Math.sqrt(count);
        assertTrue(count < 7 ? factor > 1.2 : factor < 1.2, count + " wires: " + factor);
    }

    @Test
    void theUsualFactorOfOnePointTwoFallsFifteenPercentShortForTwoWires() {
        // 1.2 x sqrt(2) = 1.697 against 2: -15.1 %; sqrt(1.332 N): -18.4 %; 1.15 x sqrt(2): -18.7 %
        double two = CirclePacking.of(List.of(1.0, 1.0)).diameterMm();
        assertEquals(-0.151, 1.2 * Math.sqrt(2) / two - 1, 5e-4);
        assertEquals(-0.184, Math.sqrt(1.332 * 2) / two - 1, 5e-4);
        assertEquals(-0.187, 1.15 * Math.sqrt(2) / two - 1, 5e-4);
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/org/ohmloom/bundle/equal-circles.csv", numLinesToSkip = 3)
    void fromSevenWiresOnTheFactorOfOnePointTwoIsNeverMuchUnderTheIdeal(int count, double ratio) {
        // -0.5 % to +8.4 % from 7 to 61 wires
        if (count >= 7 && count <= 61) {
            double error = 1.2 * Math.sqrt(count) / ratio - 1;
            assertTrue(error > -0.0056 && error < 0.085, count + " wires: " + error);
        }
    }

    @ParameterizedTest
    @CsvSource({"1, 0.53", "2, 0.31", "3, 0.40"})
    void theBuildingRuleOfFillingAsksForABoreByTheRootOfTheSummedSquares(int count, double most) {
        // NEC chapter 9 Table 1; above two: bore >= sqrt(sum d^2 / 0.40) = 1.581 x sqrt(sum d^2)
        double limit = value(count == 1 ? "fill-one" : count == 2 ? "fill-two" : "fill-more");
        assertEquals(most, limit);
        if (count == 3) {
            assertEquals(1.581, 1 / Math.sqrt(limit), 5e-4);
        }
    }

    @Test
    void heatShrinkIsLeftAfterThreeQuartersOfItsShrinkingLosesItsLengthAndLiesFlatHalfRound() {
        // guidance of sellers of tubing: 0.75 of the shrinking; 5 to 15 % along; flat width pi / 2 = 1.571 diameters
        assertEquals(0.75, value("shrink-share"));
        assertEquals(0.15, value("shrink-along"));
        assertEquals(Math.PI / 2, value("sleeve-flat"), 5e-4);
    }

    @Test
    void everyCorrugatedTubeOfTheTradeSeriesIsListed() {
        // nominal sizes from memory; 4.5 and 7.5 and 8.5 are names, not bores
        for (String size : "4.5 6 7.5 8.5 10 12 13 14 17 19 22 23 26".split(" ")) {
            assertTrue(PRACTICE.findCovering("conduit-" + size).isPresent(), size);
        }
    }
}
