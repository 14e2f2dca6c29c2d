package org.ohmloom.bundle.section;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.ohmloom.bundle.BundleReferences;
import org.ohmloom.bundle.section.CoveringFit.Problem;
import org.ohmloom.graph.HarnessSketch;
import org.ohmloom.graph.Routes;
import org.ohmloom.heat.ConductorResistance;
import org.ohmloom.model.BreakoutId;
import org.ohmloom.model.BundleSegment;
import org.ohmloom.model.Covering;
import org.ohmloom.model.FabricationRules;
import org.ohmloom.model.Harness;
import org.ohmloom.model.SegmentId;
import org.ohmloom.tables.FabricationTables;
import org.ohmloom.tables.WireTables;
import org.ohmloom.units.Gauge;

/** Cross-sections of segments, coverings, supports and markings. */
class SectionsTest {
    private static final WireTables TABLES = WireTables.bundled();
    private static final FabricationTables PRACTICE = TABLES.fabrication();
    private static final double EXACT = 1e-9;
    private static final double SEARCHED_RATIO = 1e-3;

    /** So many wires of a size along one segment of 2 m, under a covering. */
    private static SegmentSection section(int count, double areaMm2, Covering covering, OptionalDouble layLengthMm) {
        HarnessSketch sketch = new HarnessSketch()
                .segment("T1", "B1", "B2", 2)
                .battery("BAT1", 12, 0.01)
                .load("L1", 1, 12)
                .at("BAT1", "B1")
                .at("L1", "B2");
        for (int k = 1; k <= count; k++) {
            sketch.wire("W" + k, "BAT1.+", "L1.+", 0.1);
        }
        Harness plain = sketch.harness();
        Harness harness = plain.withAll(plain.wires().all().stream()
                        .map(wire -> wire.withGauge(Optional.of(Gauge.metric(areaMm2))))
                        .toList())
                .with(new BundleSegment(
                        new SegmentId("T1"),
                        new BreakoutId("B1"),
                        new BreakoutId("B2"),
                        2,
                        Optional.empty(),
                        Optional.of(covering),
                        Optional.empty(),
                        layLengthMm));
        ConductorResistance rows = new ConductorResistance(TABLES, TABLES.basis("road-vehicle"));
        return Sections.of(new BundleInput(
                        harness,
                        TABLES,
                        "road-vehicle",
                        wire -> wire.gauge().map(gauge -> rows.row(wire, gauge)),
                        Routes.of(harness),
                        wire -> 10))
                .of(new SegmentId("T1"))
                .orElseThrow();
    }

    private static Covering covering(Covering.Kind kind, String size) {
        return new Covering(kind, size, Optional.empty(), Optional.of(size), OptionalDouble.empty(), Optional.empty());
    }

    @Test
    void thePracticalDiameterIsTheIdealOneTimesLayAndMargin() {
        // seven wires of 2.1 mm: ideal 3 d = 6.3 mm; times 1.08 and 1.05 is 7.1442 mm
        SegmentSection section = section(7, 1, covering(Covering.Kind.CONDUIT, "conduit-10"), OptionalDouble.empty());
        assertEquals(6.3, section.idealMm(), 6.3 * SEARCHED_RATIO);
        assertEquals(6.3 * 1.08 * 1.05, section.practicalMm(), 7.2 * SEARCHED_RATIO);
        assertEquals(
                List.of(true, true, true, true, true, true, true),
                section.members().stream().map(Member::isListed).toList());
        // conduit-10: 13 mm outside; bend 10 and 6 times as much
        assertEquals(13, section.finishedMm(), EXACT);
        assertEquals(130, section.bendLastingMm(), EXACT);
        assertEquals(78, section.bendLeastMm(), EXACT);
    }

    @Test
    void copperOfASegmentIsDensityTimesAreaTimesLength() {
        // 7 x 1 mm2 x 2 m x 8890 kg/m3 = 0.12446 kg; all of it weighs more with insulation and conduit
        SegmentSection section = section(7, 1, covering(Covering.Kind.CONDUIT, "conduit-10"), OptionalDouble.empty());
        assertEquals(7 * 1e-6 * 2 * 8890, section.copperKg(), EXACT);
        assertTrue(section.massKg() > 1.2 * section.copperKg());
    }

    @Test
    void theMassOfASegmentIsCopperAndTheRingsOfInsulationAndConduit() {
        SegmentSection section = section(7, 1, covering(Covering.Kind.CONDUIT, "conduit-10"), OptionalDouble.empty());
        double copperMm2 =
                TABLES.family("iso-6722-1").row(Gauge.metric(1)).orElseThrow().assuredCopperAreaMm2();
        double insulationMm2 = 7 * (Math.PI / 4 * 2.1 * 2.1 - 1.15 * 1.15 * copperMm2);
        // conduit-10: 13 mm outside, walls of 1.45 mm
        double conduitMm2 = Math.PI / 4 * (13 * 13 - 10.1 * 10.1);
        assertEquals(
                (insulationMm2 * 1400 + conduitMm2 * 1200) * 1e-6 * 2, section.massKg() - section.copperKg(), EXACT);
        assertEquals(7, section.wireCount());
        assertEquals(0, section.estimated());
        assertEquals(section.entered(), section.covering());
    }

    @Test
    void tapeWeighsWhatLiesOutsideTheWires() {
        SegmentSection bare = section(7, 1, covering(Covering.Kind.CONDUIT, "conduit-10"), OptionalDouble.empty());
        SegmentSection taped = section(7, 1, covering(Covering.Kind.TAPE, "tape-cloth-19"), OptionalDouble.empty());
        double conduitMm2 = Math.PI / 4 * (13 * 13 - 10.1 * 10.1);
        double tapeMm2 =
                Math.PI / 4 * (taped.finishedMm() * taped.finishedMm() - taped.practicalMm() * taped.practicalMm());
        assertTrue(taped.finishedMm() > taped.practicalMm() + 2 * 0.25 - EXACT, "a tape is 0.25 mm thick");
        assertEquals((conduitMm2 - tapeMm2) * 1e-6 * 2 * 1200, bare.massKg() - taped.massKg(), EXACT);
    }

    @Test
    void theLimitsOfFillingAreThoseOfTheBuildingRule() {
        for (double[] row : BundleReferences.rows("fill-limits.csv")) {
            CoveringFit fit = section(
                            (int) row[0], 1, covering(Covering.Kind.CONDUIT, "conduit-50"), OptionalDouble.empty())
                    .entered()
                    .orElseThrow();
            assertEquals(row[1], fit.limitFraction());
        }
        // inside diameter at least sqrt(sum d^2 / 0.40) = 1.581 sqrt(sum d^2)
        assertEquals(1.581, Math.sqrt(1 / PRACTICE.value("fill-more").value()), 5e-4);
    }

    @Test
    void fillingIsTheAreaOfTheWiresOverThatOfTheBore() {
        // two wires of 2.4 mm in a bore of 6 mm: 2 x 2.4^2 / 6^2 = 0.32, more than 0.31; in 6.2 mm 0.2997
        CoveringFit over = section(2, 1.5, covering(Covering.Kind.TUBE, "tube-6"), OptionalDouble.empty())
                .entered()
                .orElseThrow();
        assertEquals(0.32, over.fillFraction(), EXACT);
        assertEquals(Set.of(Problem.OVER_FILLED), over.problems());
        CoveringFit within = section(2, 1.5, covering(Covering.Kind.CONDUIT, "conduit-6"), OptionalDouble.empty())
                .entered()
                .orElseThrow();
        assertTrue(within.suits());
    }

    @Test
    void theChosenCoveringIsTheSmallestThatServes() {
        for (int count : new int[] {1, 2, 3, 7, 19, 30}) {
            SegmentSection section =
                    section(count, 1, covering(Covering.Kind.CONDUIT, "conduit-4.5"), OptionalDouble.empty());
            CoveringFit chosen = section.chosen().orElseThrow();
            assertTrue(chosen.suits());
            double bore = chosen.size().insideMaxMm().orElseThrow();
            assertTrue(section.practicalMm() <= bore && chosen.fillFraction() <= chosen.limitFraction());
            PRACTICE.coverings().stream()
                    .filter(size ->
                            size.kind().equals("CONDUIT") && size.insideMaxMm().orElse(0) < bore)
                    .forEach(smaller -> {
                        double inside = smaller.insideMaxMm().orElseThrow();
                        double fill = count * 2.1 * 2.1 / (inside * inside);
                        assertTrue(section.practicalMm() > inside || fill > chosen.limitFraction(), smaller.id());
                    });
        }
    }

    @Test
    void heatShrinkGoesOverTheBundleAndBecomesTight() {
        // 1 mm2 is 2.1 mm; alone its practical diameter is its own. 3.2 to 1.6: done when at 3.2 - 0.75 x 1.6 = 2.0,
        // so not yet tight; 2.4 to 1.2: 2.4 - 0.75 x 1.2 = 1.5, neither; 6 to 2: 3.0, tight
        SegmentSection section =
                section(1, 1, covering(Covering.Kind.HEAT_SHRINK, "shrink-2-1-1.6"), OptionalDouble.empty());
        assertEquals(
                Set.of(Problem.BUNDLE_TOO_THICK),
                section.entered().orElseThrow().problems());
        CoveringFit chosen = section.chosen().orElseThrow();
        assertEquals("shrink-3-1-6", chosen.size().id());
        // loses at most 15 % of its length: cut 1/0.85 as long
        assertEquals(1 / 0.85, chosen.materialMetres(), EXACT);
    }

    @Test
    void tapeGoesRoundInASpiral() {
        // L sqrt((pi D)^2 + p^2)/p with p = 19 x 0.5 = 9.5 mm; half overlap lays it twice: 4 x 0.13 mm thicker
        SegmentSection section = section(7, 1, covering(Covering.Kind.TAPE, "tape-pvc-19"), OptionalDouble.empty());
        CoveringFit fit = section.entered().orElseThrow();
        double round = Math.PI * section.practicalMm();
        assertEquals(Math.sqrt(round * round + 9.5 * 9.5) / 9.5, fit.materialMetres(), EXACT);
        assertEquals(section.practicalMm() + 4 * 0.13, fit.finishedMm(), EXACT);
    }

    @Test
    void aCoveringStandsTheTemperatureOfItsBundleOrNot() {
        // air 30 deg C, wires 10 K warmer: 40 deg C
        SegmentSection section = section(7, 1, covering(Covering.Kind.TAPE, "tape-pvc-19"), OptionalDouble.empty());
        assertEquals(40, section.celsius(), EXACT);
        assertTrue(section.entered().orElseThrow().suits());
    }

    @Test
    void aTwistedSegmentIsAsThickAsItsLayers() {
        // 19 wires of 2.1 mm in 1-6-12: 5 d = 10.5 mm, no lay factor, margin 1.05
        SegmentSection section =
                section(19, 1, covering(Covering.Kind.BRAIDED_SLEEVE, "braid-8"), OptionalDouble.of(120));
        assertEquals("1-6-12", section.lay().orElseThrow().words());
        assertEquals(10.5 * 1.05, section.practicalMm(), EXACT);
    }

    @Test
    void tiesComeCloserOnThinBundles() {
        for (double[] row : BundleReferences.rows("support-spacing.csv")) {
            assertEquals(row[1], PRACTICE.tieSpacing(row[0]).spacingMm().value());
        }
    }

    @Test
    void supportsAreNeverFurtherApartThanAllowed() {
        // 610 mm by AC 43.13-1B, 455 mm in boats by ABYC E-11
        assertEquals(0.610, PRACTICE.value("support-spacing").value());
        assertEquals(0.455, PRACTICE.value("support-spacing-small-craft").value());
        for (double length : new double[] {0.1, 0.609, 0.61, 0.611, 1.22, 2, 7.3}) {
            List<Double> places = SupportPlan.spread(length, 0.61);
            assertEquals((int) Math.max(1, Math.ceil(length / 0.61 - EXACT)), places.size());
            assertTrue(places.get(0) <= 0.305 + EXACT && length - places.get(places.size() - 1) <= 0.305 + EXACT);
            for (int k = 1; k < places.size(); k++) {
                assertTrue(places.get(k) - places.get(k - 1) <= 0.61 + EXACT);
            }
        }
    }

    @Test
    void wiresAreMarkedAtBothEndsAndAtMostEverySoFar() {
        // first 76 mm from each end, then at most 381 mm apart; a wire under 76 mm not at all
        assertEquals(
                List.of(), LabelPlan.of(0.07, FabricationRules.NONE, PRACTICE).metres());
        assertEquals(
                1, LabelPlan.of(0.1, FabricationRules.NONE, PRACTICE).metres().size());
        List<Double> places = LabelPlan.of(2, FabricationRules.NONE, PRACTICE).metres();
        // 2000 - 152 = 1848 mm in 5 gaps of 369.6 mm
        assertEquals(6, places.size());
        assertEquals(0.076, places.get(0), EXACT);
        assertEquals(1.924, places.get(5), EXACT);
        assertFalse(places.get(1) - places.get(0) > 0.381);
    }
}
