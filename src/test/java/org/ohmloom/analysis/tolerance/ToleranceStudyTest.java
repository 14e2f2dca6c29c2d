package org.ohmloom.analysis.tolerance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.ForkJoinPool;
import org.junit.jupiter.api.Test;
import org.ohmloom.AnalysedExamples;
import org.ohmloom.BesideOthers;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.analysis.Cancel;
import org.ohmloom.solve.LoadVolts;
import org.ohmloom.tables.WireTables;

/** The study on one feed, where every number is a closed formula, and on an example. */
@BesideOthers
class ToleranceStudyTest {

    /** What 0.5 A warms the wires by, and the temperatures that are solved to 0.01 K, leave open: a share. */
    private static final double WARMTH = 2e-4;

    /** One slice of 400 in percentiles of a Latin hypercube. */
    private static final double SLICE = 0.0006;

    private static final double EVEN = Math.sqrt(3);

    private static Outcome drop(ToleranceResult result) {
        return OneFeed.outcome(result, Measure.LOAD_DROP, "H1");
    }

    @Test
    void theNominalValueIsThatOfTheAnalysis() {
        Analysis analysis = OneFeed.with(OneFeed.HALF_AN_AMP);
        Outcome drop = drop(OneFeed.run(analysis, 20, "load=-10..10"));
        LoadVolts load = analysis.solution(drop.watch().state())
                .orElseThrow()
                .loads()
                .get(drop.watch().subject());
        assertEquals(load.onDropVolts(), drop.nominalValue(), WARMTH * load.onDropVolts());
        assertEquals(0.6, drop.watch().limit().getAsDouble(), 1e-12, "5 % of 12 V");
    }

    @Test
    void anEvenSpreadOfTheLoadSpreadsTheDropEvenly() {
        Outcome drop = drop(OneFeed.run(OneFeed.with(OneFeed.HALF_AN_AMP), 400, "load=-10..10"));
        double nominal = drop.nominalValue();
        assertEquals(nominal, drop.meanValue(), nominal * WARMTH);
        assertEquals(0.1 * nominal / EVEN, drop.deviationValue(), nominal * WARMTH);
        assertEquals(0.91 * nominal, drop.lowValue(), nominal * (WARMTH + SLICE));
        assertEquals(1.09 * nominal, drop.highValue(), nominal * (WARMTH + SLICE));
        assertTrue(
                drop.leastValue() >= 0.9 * nominal * (1 - WARMTH) && drop.mostValue() <= 1.1 * nominal * (1 + WARMTH));
        assertEquals(1, drop.shares().orElseThrow().explainedFraction(), 1e-12);
        assertEquals(0, drop.chance().orElseThrow().beyondCount());
    }

    @Test
    void aNormalSpreadHasThePercentilesOfTheNormalDistribution() {
        Outcome drop = drop(OneFeed.run(OneFeed.with(OneFeed.HALF_AN_AMP), 400, "load=-20..20,normal"));
        double nominal = drop.nominalValue();
        double rank = nominal * 0.1 * 0.01;
        assertEquals(nominal * (1 - 0.1 * 1.644854), drop.lowValue(), rank, "5 % of a normal distribution lie below");
        assertEquals(nominal * (1 + 0.1 * 1.644854), drop.highValue(), rank);
        assertEquals(0.1 * nominal, drop.deviationValue(), rank);
    }

    @Test
    void inWarmerAirTheCopperOfTheFeedResistsMore() {
        Outcome drop = drop(OneFeed.run(OneFeed.with(OneFeed.HALF_AN_AMP), 400, "ambient=-20..20"));
        double nominal = drop.nominalValue();
        assertEquals(nominal * 20 / 254.5 / EVEN, drop.deviationValue(), nominal * WARMTH, "(234.5 + T) / 254.5");
        Outcome warm = OneFeed.outcome(
                OneFeed.run(OneFeed.with(OneFeed.HALF_AN_AMP), 400, "ambient=-20..20"), Measure.WIRE_CELSIUS, "W1");
        assertEquals(20 / EVEN, warm.deviationValue(), 0.02);
    }

    @Test
    void aConductorThatResistsMoreIsHeatedMoreByTheSameCurrent() {
        Analysis analysis = OneFeed.with("{\"kind\": \"constant-current\", \"ratedAmps\": 15, \"ratedVolts\": 12}");
        Outcome wire = OneFeed.outcome(OneFeed.run(analysis, 20, "conductor=10..10"), Measure.WIRE_CELSIUS, "W1");
        double rise = wire.nominalValue() - 20;
        assertTrue(rise > 10, "15 A on 1.5 mm2 warm it by " + rise);
        assertEquals(1.1, (wire.meanValue() - 20) / rise, 0.03, "a tenth more heat, and a little more cooling with it");
        assertEquals(Optional.empty(), wire.shares(), "all harnesses are alike");
    }

    @Test
    void everyWireHasItsOwnLengthButOneReelIsAlike() {
        Analysis analysis = OneFeed.with(OneFeed.HALF_AN_AMP);
        Outcome each = drop(OneFeed.run(analysis, 400, "length=-10..10"));
        Outcome reel = drop(OneFeed.run(analysis, 400, "conductor=-10..10"));
        double nominal = each.nominalValue();
        assertEquals(0.1 / EVEN, reel.deviationValue() / nominal, WARMTH);
        assertEquals(0.1 / EVEN / Math.sqrt(2), each.deviationValue() / nominal, 0.002, "two wires by themselves");
        Outcome named = drop(OneFeed.run(analysis, 400, "length:W1=-10..10"));
        assertEquals(0.1 / EVEN / 2, named.deviationValue() / nominal, WARMTH, "one of two");
    }

    @Test
    void whatWasMeasuredDoesNotSpread() {
        ToleranceResult result = OneFeed.run(
                OneFeed.with(OneFeed.HALF_AN_AMP, 0.05), 20, "conductor=-10..0", "length=0..10", "load=-1..1");
        assertEquals(List.of(SpreadKind.LOAD), result.kinds());
    }

    @Test
    void conductorsAndLengthsSpreadByTheirTablesWhereNobodySaysMore() {
        Spreads usual = Spreads.of(WireTables.bundled());
        ToleranceResult result = ToleranceStudy.of(
                OneFeed.with(OneFeed.HALF_AN_AMP),
                new TolerancePlan(20, 1, usual, Optional.empty(), Optional.empty()),
                Cancel.NEVER,
                done -> {});
        Spread reel = result.inputs().stream()
                .filter(input -> input.kind() == SpreadKind.CONDUCTOR)
                .findFirst()
                .orElseThrow()
                .spread();
        assertEquals(100 * (1000 / 58.0 / 1.5 / 12.7 - 1), reel.lowUnits(), 1e-9, "ISO 6722-1: 12.7 mohm/m at most");
        assertEquals(0, reel.highUnits());
        Spread length = result.inputs().stream()
                .filter(input -> input.kind() == SpreadKind.LENGTH)
                .findFirst()
                .orElseThrow()
                .spread();
        assertEquals(100 * 0.15 / 4, length.highUnits(), 1e-9, "IPC/WHMA-A-620B Table 11-1: 150 mm up to 7.5 m");
    }

    /** 17.5 W through 2 ohm from 12 V: more than 144 V2 / (4 x 2 ohm) = 18 W cannot be had. */
    @Test
    void harnessesThatCannotBeSolvedAreCountedAndCountAsBeyondTheLimit() {
        Analysis analysis = OneFeed.with("{\"kind\": \"constant-power\", \"ratedWatts\": 17.5, \"ratedVolts\": 12}", 1);
        ToleranceResult result = OneFeed.run(analysis, 200, "load=-10..10");
        Outcome drop = drop(result);
        double expected = 200 * (0.1 - (18 / 17.5 - 1)) / 0.2;
        assertEquals(expected, drop.unsolvedCount(), 1.0);
        assertEquals(drop.unsolvedCount(), result.unsolvedCount());
        assertEquals(200, drop.chance().orElseThrow().beyondCount(), "all others lose some 5 V");
        assertTrue(Double.isFinite(drop.meanValue()) && Double.isFinite(drop.mostValue()));
    }

    @Test
    void withoutStateOrSpreadThereIsNothing() {
        assertEquals(
                List.of(), OneFeed.run(OneFeed.withoutState(), 20, "load=-1..1").outcomes());
        ToleranceResult still = OneFeed.run(OneFeed.with(OneFeed.HALF_AN_AMP), 20);
        assertEquals(List.of(), still.inputs());
        assertEquals(List.of(), still.outcomes());
    }

    @Test
    void theSameSeedGivesTheSameToTheLastBitOnAnyCountOfThreads() throws Exception {
        Analysis analysis = AnalysedExamples.of("teaching");
        TolerancePlan plan =
                new TolerancePlan(20, 7, Spreads.of(analysis.evidence().tables()), Optional.empty(), Optional.empty());
        ToleranceResult one = on(1, analysis, plan);
        assertEquals(one, on(3, analysis, plan));
        assertFalse(one.outcomes().isEmpty());
        ToleranceResult other = on(3, analysis, new TolerancePlan(20, 8, plan.spreads(), plan.state(), plan.load()));
        assertNotEquals(one.outcomes(), other.outcomes());
    }

    private static ToleranceResult on(int threads, Analysis analysis, TolerancePlan plan) throws Exception {
        ForkJoinPool pool = new ForkJoinPool(threads);
        try {
            return pool.submit(() -> ToleranceStudy.of(analysis, plan, Cancel.NEVER, done -> {}))
                    .get();
        } finally {
            pool.shutdown();
        }
    }
}
