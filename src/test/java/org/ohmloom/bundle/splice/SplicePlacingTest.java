package org.ohmloom.bundle.splice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.ohmloom.BesideOthers;
import org.ohmloom.Campaign;
import org.ohmloom.graph.Distances;
import org.ohmloom.graph.HarnessSketch;
import org.ohmloom.heat.ConductorResistance;
import org.ohmloom.model.BreakoutId;
import org.ohmloom.model.BundleSegment;
import org.ohmloom.model.FabricationRules;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Place;
import org.ohmloom.model.SpliceId;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireEnd;
import org.ohmloom.model.WireId;
import org.ohmloom.tables.WireTables;
import org.ohmloom.units.Gauge;

/** Where splices lie best. */
@BesideOthers
class SplicePlacingTest {
    private static final WireTables TABLES = WireTables.bundled();
    private static final ConductorResistance ROWS = new ConductorResistance(TABLES, TABLES.basis("road-vehicle"));
    private static final double EXACT = 1e-9;

    private static SpliceAdvice advice(Harness harness, String splice) {
        return SplicePlacing.of(harness, TABLES, wire -> wire.gauge().map(gauge -> ROWS.row(wire, gauge)))
                .get(new SpliceId(splice));
    }

    private static Harness sized(Harness harness, String wire, double areaMm2) {
        Wire found = harness.wires().get(new WireId(wire));
        return harness.with(found.withGauge(Optional.of(Gauge.metric(areaMm2))));
    }

    static Harness kept(Harness harness, double clearanceMetres, double staggerMetres, List<SpliceId> fixed) {
        FabricationRules none = FabricationRules.NONE;
        return harness.withRules(harness.rules()
                .withFabrication(new FabricationRules(
                        none.connectorDepthMm(),
                        none.serviceLoopMm(),
                        none.reterminationCount(),
                        none.dripLoopMm(),
                        none.cutStepMm(),
                        List.of(),
                        none.layRatio(),
                        none.marginRatio(),
                        OptionalDouble.of(clearanceMetres),
                        OptionalDouble.of(staggerMetres),
                        fixed,
                        none.supportSpacingMetres(),
                        none.labelSpacingMetres(),
                        List.of())));
    }

    /** A feed at B1 to a splice at B2, 2 m on, and from it two lamps at B3 and B4, 3 m and 1 m further. */
    private static Harness fork() {
        Harness plain = new HarnessSketch()
                .segment("T1", "B1", "B2", 2)
                .segment("T2", "B2", "B3", 3)
                .segment("T3", "B2", "B4", 1)
                .battery("BAT1", 12, 0.01)
                .load("L1", 1, 12)
                .load("L2", 1, 12)
                .splice("S1", 0)
                .at("BAT1", "B1")
                .at("L1", "B3")
                .at("L2", "B4")
                .at("S1", "B1")
                .wire("W1", "BAT1.+", "S1", 0.1)
                .wire("W2", "S1", "L1.+", 0.1)
                .wire("W3", "S1", "L2.+", 0.1)
                .harness();
        return sized(sized(sized(plain, "W1", 2.5), "W2", 1.5), "W3", 1.5);
    }

    @Test
    void aSpliceLiesWhereItsConductorsPartWhenNoneOutweighsTheOthers() {
        // at B2: 2.5 x 2 + 1.5 x 3 + 1.5 x 1 = 11 mm2 m; at B1: 1.5 x 5 + 1.5 x 3 = 12; at B3 and B4 more
        SpliceAdvice advice = advice(kept(fork(), 0.1, 0.05, List.of()), "S1");
        assertEquals(Optional.of(new Place.AtBreakout(new BreakoutId("B2"))), advice.best());
        assertEquals(11.0 / 12, advice.bestKg() / advice.presentKg(), EXACT);
    }

    @Test
    void aHeavyFeedDrawsTheSpliceAsNearAsTheClearanceAllows() {
        // 6 mm2 against 1.5 + 1.5: as near to B1 as 0.4 m
        SpliceAdvice advice = advice(kept(sized(fork(), "W1", 6), 0.4, 0.05, List.of()), "S1");
        Place.OnSegment best = (Place.OnSegment) advice.best().orElseThrow();
        assertEquals("T1", best.segment().value());
        assertEquals(0.4, best.distanceMetres(), EXACT);
        assertEquals(1, advice.tooNear().size());
    }

    @Test
    void aSpliceThatIsFixedStays() {
        SpliceAdvice advice = advice(kept(fork(), 0.1, 0.05, List.of(new SpliceId("S1"))), "S1");
        assertEquals(Optional.empty(), advice.best());
        assertEquals(Optional.of("it is to stay where it is"), advice.stays());
    }

    @Test
    void splicesKeepTheirStagger() {
        Harness two = new HarnessSketch()
                .segment("T1", "B1", "B2", 4)
                .battery("BAT1", 12, 0.01)
                .load("L1", 1, 12)
                .splice("S1", 0)
                .splice("S2", 0)
                .at("BAT1", "B1")
                .at("L1", "B2")
                .along("S1", "T1", 1)
                .along("S2", "T1", 1.02)
                .wire("W1", "BAT1.+", "S1", 0.1)
                .wire("W2", "S1", "S2", 0.1)
                .wire("W3", "S2", "L1.+", 0.1)
                .harness();
        Harness sized = sized(sized(sized(two, "W1", 1), "W2", 2.5), "W3", 1);
        // the 2.5 mm2 wire between them is heaviest: S2 comes as near to S1 as 0.3 m
        SpliceAdvice advice = advice(kept(sized, 0.1, 0.3, List.of()), "S2");
        Place.OnSegment best = (Place.OnSegment) advice.best().orElseThrow();
        assertEquals(0.3, Math.abs(best.distanceMetres() - 1), EXACT);
        assertEquals(List.of("S1 (keep 300 mm)"), advice.tooNear());
    }

    @Test
    void onRandomTreesNoPlaceTakesLessCopper() {
        Random random = new Random(20);
        int rounds = Campaign.count(60, 2000);
        for (int round = 0; round < rounds; round++) {
            Harness harness = tree(random);
            Harness kept = kept(harness, 0.2, 0.05, List.of());
            SpliceAdvice advice = advice(kept, "S1");
            double least = Double.POSITIVE_INFINITY;
            for (BundleSegment segment : kept.segments().all()) {
                for (int k = 0; k <= 400; k++) {
                    least = Math.min(least, sampled(kept, segment, segment.lengthMetres() * k / 400, 0.2));
                }
            }
            if (advice.best().isPresent()) {
                assertTrue(advice.bestKg() <= least + 1e-4, advice + " against " + least);
            } else {
                assertEquals(Double.POSITIVE_INFINITY, least);
            }
        }
    }

    /** Copper with the splice at a place, worked out apart; infinite where it is too near to an end. */
    private static double sampled(Harness harness, BundleSegment segment, double metres, double clearance) {
        double kilograms = 0;
        for (Wire wire : harness.wires().all()) {
            WireEnd other = wire.to();
            double distance = Distances.from(harness, other).to(segment, metres).getAsDouble();
            if (distance < clearance) {
                return Double.POSITIVE_INFINITY;
            }
            kilograms += 8890 * wire.gauge().orElseThrow().nominalAreaMm2() * 1e-6 * distance;
        }
        return kilograms;
    }

    private static Harness tree(Random random) {
        HarnessSketch sketch = new HarnessSketch();
        int count = 3 + random.nextInt(8);
        for (int k = 1; k < count; k++) {
            sketch.segment("T" + k, "B" + random.nextInt(k), "B" + k, 0.1 + random.nextDouble());
        }
        sketch.splice("S1", 0).at("S1", "B0");
        double[] sizes = {0.5, 1, 1.5, 2.5, 6};
        int wires = 2 + random.nextInt(4);
        for (int k = 0; k < wires; k++) {
            sketch.load("L" + k, 1, 12).at("L" + k, "B" + random.nextInt(count));
            sketch.wire("W" + k, "S1", "L" + k + ".+", 0.1);
        }
        Harness harness = sketch.harness();
        for (int k = 0; k < wires; k++) {
            harness = sized(harness, "W" + k, sizes[random.nextInt(sizes.length)]);
        }
        return harness;
    }
}
