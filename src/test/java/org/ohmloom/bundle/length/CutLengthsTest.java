package org.ohmloom.bundle.length;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.ohmloom.bundle.BundleReferences;
import org.ohmloom.graph.HarnessSketch;
import org.ohmloom.graph.Routes;
import org.ohmloom.heat.ConductorResistance;
import org.ohmloom.model.BreakoutId;
import org.ohmloom.model.BundleSegment;
import org.ohmloom.model.Cable;
import org.ohmloom.model.CableId;
import org.ohmloom.model.ConnectorAllowance;
import org.ohmloom.model.ConnectorId;
import org.ohmloom.model.FabricationRules;
import org.ohmloom.model.Harness;
import org.ohmloom.model.SegmentId;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireId;
import org.ohmloom.tables.WireTables;
import org.ohmloom.units.Gauge;

/** How long wires are cut. */
class CutLengthsTest {
    private static final WireTables TABLES = WireTables.bundled();
    private static final double EXACT_METRES = 1e-9;
    private static final double SIX_DIGITS = 1e-6;

    /** A battery at B1, a load with a connector at B3, 1 m and 2 m of segments between, a splice at B2. */
    private static HarnessSketch trunk() {
        return new HarnessSketch()
                .segment("T1", "B1", "B2", 1)
                .segment("T2", "B2", "B3", 2)
                .battery("BAT1", 12, 0.01)
                .load("L1", 1, 12)
                .splice("S1", 0)
                .connector("X1", "L1", "1 +")
                .at("BAT1", "B1")
                .at("L1", "B3")
                .at("S1", "B2");
    }

    private static CutLengths lengths(Harness harness) {
        ConductorResistance rows = new ConductorResistance(TABLES, TABLES.basis("road-vehicle"));
        return CutLengths.of(
                harness, TABLES, wire -> wire.gauge().map(gauge -> rows.row(wire, gauge)), Routes.of(harness));
    }

    private static CutLength length(Harness harness, String wire) {
        return lengths(harness).of(new WireId(wire)).orElseThrow();
    }

    private static double sum(CutLength length, LengthPart.Kind kind) {
        return length.parts().stream()
                .filter(part -> part.kind() == kind)
                .mapToDouble(LengthPart::millimetres)
                .sum();
    }

    private static Harness with(Harness harness, FabricationRules rules) {
        return harness.withRules(harness.rules().withFabrication(rules));
    }

    @Test
    void aWireFromAStudToAConnectorIsItsWayAndWhatEachEndTakes() {
        // way 3000 mm; stud: strip 8, 2 x (8 + 5) anew; connector: depth 20, strip 6 (no contact chosen), loop 25,
        // 2 x (6 + 5) anew: 3000 + 34 + 73 = 3107 mm, rounded up to 3110 mm
        CutLength length = length(trunk().wire("W1", "BAT1.+", "X1.1", 0.1).harness(), "W1");
        assertEquals(3.110, length.metres(), EXACT_METRES);
        assertEquals(3000, sum(length, LengthPart.Kind.ROUTE), EXACT_METRES);
        assertEquals(20, sum(length, LengthPart.Kind.CONNECTOR_DEPTH), EXACT_METRES);
        assertEquals(8 + 6, sum(length, LengthPart.Kind.STRIP), EXACT_METRES);
        assertEquals(25, sum(length, LengthPart.Kind.SERVICE_LOOP), EXACT_METRES);
        assertEquals(2 * (8 + 5) + 2 * (6 + 5), sum(length, LengthPart.Kind.RETERMINATION), EXACT_METRES);
        assertEquals(3, sum(length, LengthPart.Kind.ROUNDING), EXACT_METRES);
        assertTrue(length.parts().stream().noneMatch(part -> part.source().isBlank()));
        assertEquals("X1.1", length.parts().get(3).end().orElseThrow().english());
        assertEquals(3, length.routeMetres().orElseThrow(), EXACT_METRES);
        assertEquals(0.110, length.allowanceMetres(), EXACT_METRES);
        assertFalse(length.isEntered());
        assertEquals(length.tolerance().metres(3.110), length.toleranceMetres(), EXACT_METRES);
        assertTrue(length.toleranceMetres() > 0);
    }

    @Test
    void inASpliceConductorsOverlapAndNothingElseIsAdded() {
        // way 1000 mm; stud 34, splice 10: 1044, rounded up to 1045 mm
        assertEquals(
                1.045,
                length(trunk().wire("W1", "BAT1.+", "S1", 0.1).harness(), "W1").metres(),
                EXACT_METRES);
    }

    @Test
    void anEnteredLengthIsTheCutLengthToTheLastDigit() {
        CutLength length = length(trunk().run("W1", "BAT1.+", "X1.1", 0.7231).harness(), "W1");
        assertEquals(0.7231, length.metres(), 0);
        assertTrue(length.isEntered());
        assertEquals(0, length.allowanceMetres());
        assertTrue(length.routeMetres().isEmpty());
    }

    @Test
    void aHarnessAndAConnectorMayHaveAllowancesOfTheirOwn() {
        Harness plain = trunk().wire("W1", "BAT1.+", "X1.1", 0.1).harness();
        FabricationRules none = FabricationRules.NONE;
        ConnectorAllowance own = new ConnectorAllowance(
                new ConnectorId("X1"), OptionalDouble.of(30), OptionalDouble.of(50), true, OptionalDouble.empty());
        FabricationRules asked = new FabricationRules(
                OptionalDouble.of(11),
                OptionalDouble.of(12),
                OptionalDouble.of(0),
                OptionalDouble.of(40),
                OptionalDouble.of(0),
                List.of(own),
                none.layRatio(),
                none.marginRatio(),
                none.spliceClearanceMetres(),
                none.spliceStaggerMetres(),
                none.fixedSplices(),
                none.supportSpacingMetres(),
                none.labelSpacingMetres(),
                none.routing());
        // 3000 + 8 at the stud; depth 30, strip 6, loop 50 and drip loop 40 at the connector; nothing anew, no rounding
        assertEquals(3.134, length(with(plain, asked), "W1").metres(), EXACT_METRES);
    }

    @Test
    void movingAConnectorOrChangingASegmentChangesTheLength() {
        HarnessSketch sketch = trunk().wire("W1", "BAT1.+", "X1.1", 0.1);
        double before = length(sketch.harness(), "W1").metres();
        Harness longer = sketch.harness()
                .with(sketch.harness().segments().get(new SegmentId("T2")).withLengthMetres(2.5));
        assertEquals(before + 0.5, length(longer, "W1").metres(), EXACT_METRES);
        assertEquals(before - 2, length(sketch.at("X1", "B2").harness(), "W1").metres(), EXACT_METRES);
    }

    @Test
    void theTakeUpOfAHelixIsThatOfItsFormula() {
        for (double[] row : BundleReferences.rows("helix.csv")) {
            assertEquals(row[2], Helix.takeUpRatio(row[0], row[1]), SIX_DIGITS);
        }
    }

    @Test
    void theToleranceGoesInStepsAndIsNeverShort() {
        for (double[] row : BundleReferences.rows("length-tolerance.csv")) {
            assertEquals(
                    row[1] / 1000, TABLES.fabrication().tolerance(row[0]).metres(row[0]), EXACT_METRES, row[0] + " m");
        }
    }

    @Test
    void aTwistedPairTakesUpByItsLayLengthOrTheHandbooksShare() {
        // 1 mm2 of the ISO 6722-1 table is 2.1 mm thick: sqrt(1 + (pi x 2.1/25)^2) = 1.034244 of 3000 mm of way
        Harness harness = pair(OptionalDouble.of(25));
        double outsideMm = 2.1;
        double expected = 3000 * (Math.sqrt(1 + Math.pow(Math.PI * outsideMm / 25, 2)) - 1);
        assertEquals(expected, sum(length(harness, "W1"), LengthPart.Kind.TWIST), 1e-6);
        // without a lay length 3 % of 3000 mm
        assertEquals(90, sum(length(pair(OptionalDouble.empty()), "W1"), LengthPart.Kind.TWIST), 1e-6);
    }

    private static Harness pair(OptionalDouble layLengthMm) {
        Harness plain = trunk().wire("W1", "BAT1.+", "X1.1", 0.1).harness();
        Cable cable = new Cable(
                new CableId("P1"),
                "Pair",
                Cable.Kind.TWISTED_PAIR,
                false,
                OptionalDouble.empty(),
                layLengthMm,
                Optional.empty(),
                Optional.empty());
        Wire wire = plain.wires().get(new WireId("W1"));
        return plain.withAll(List.of(cable, sized(wire, Optional.of(new CableId("P1")))));
    }

    private static Wire sized(Wire wire, Optional<CableId> cable) {
        return new Wire(
                wire.id(),
                wire.from(),
                wire.to(),
                Optional.of(Gauge.metric(1)),
                wire.family(),
                wire.insulation(),
                wire.colour(),
                OptionalDouble.empty(),
                wire.signalClass(),
                wire.circuit(),
                cable,
                OptionalDouble.empty(),
                wire.presentAmps(),
                false,
                wire.assembly());
    }

    @Test
    void inASegmentTwistedInLayersEveryWireIsCutForTheOutermostOne() {
        // seven wires of 2.1 mm: 1-6, the outer six on a circle of 2 x 2.1 = 4.2 mm; lay 60 mm over the 2 m of T2 only
        HarnessSketch sketch = trunk();
        for (int k = 1; k <= 7; k++) {
            sketch.wire("W" + k, "BAT1.+", "X1.1", 0.1);
        }
        Harness plain = sketch.harness();
        Harness twisted = plain.with(new BundleSegment(
                new SegmentId("T2"),
                new BreakoutId("B2"),
                new BreakoutId("B3"),
                2,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                OptionalDouble.of(60)));
        Harness sized = twisted.withAll(plain.wires().all().stream()
                .map(wire -> sized(wire, Optional.empty()))
                .toList());
        double expected = 2000 * (Math.sqrt(1 + Math.pow(Math.PI * 4.2 / 60, 2)) - 1);
        for (int k = 1; k <= 7; k++) {
            assertEquals(expected, sum(length(sized, "W" + k), LengthPart.Kind.TWIST), 1e-6);
        }
    }
}
