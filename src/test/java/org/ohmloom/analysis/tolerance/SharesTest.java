package org.ohmloom.analysis.tolerance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.apache.commons.math3.stat.interval.ClopperPearsonInterval;
import org.apache.commons.math3.stat.regression.OLSMultipleLinearRegression;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.ohmloom.BesideOthers;

/**
 * Shares of a product against the closed formula, shares of the whole study against a regression by Apache Commons Math, and
 * chances and quantiles against the same library.
 */
@BesideOthers
class SharesTest {

    private static final int RUNS = 500;
    private static final double WARMTH = 2e-4;

    /** Drop = I R (1 + x) (1 + y): its variance is that of x, that of y, and their product. */
    @Test
    void aFeedWithTwoSpreadsHasTheSharesOfAProduct() {
        ToleranceResult result =
                OneFeed.run(OneFeed.with(OneFeed.HALF_AN_AMP), RUNS, "load=-60..60", "conductor=-40..40,normal");
        Outcome drop = OneFeed.outcome(result, Measure.LOAD_DROP, "H1");
        double load = 0.6 * 0.6 / 3;
        double conductor = 0.2 * 0.2;
        double whole = load + conductor + load * conductor;
        Shares shares = drop.shares().orElseThrow();
        for (Share share : shares.all()) {
            double expected = (share.kind() == SpreadKind.LOAD ? load : conductor) / whole;
            assertEquals(
                    expected,
                    share.fraction(),
                    4 * share.errorFraction(),
                    share.kind().key());
            assertTrue(share.errorFraction() < 0.03, "standard error " + share.errorFraction());
        }
        assertEquals(load * conductor / whole, 1 - shares.explainedFraction(), 0.02, "what both do together");
        assertEquals(
                shares.explainedFraction(),
                shares.all().stream().mapToDouble(Share::fraction).sum(),
                1e-12);
        assertEquals(Math.sqrt(whole) * drop.nominalValue(), drop.deviationValue(), 0.03 * drop.deviationValue());
    }

    /** Squared standardised regression coefficients of the same draws. */
    @Test
    void theyAgreeWithARegressionOverTheDraws() {
        ToleranceResult result = OneFeed.run(
                OneFeed.with(OneFeed.HALF_AN_AMP), RUNS, "load=-10..10", "conductor=-10..0", "length:W1=0..10");
        Outcome drop = OneFeed.outcome(result, Measure.LOAD_DROP, "H1");
        double[][] draws = new double[RUNS][3];
        double[] drops = new double[RUNS];
        for (int input = 0; input < 3; input++) {
            SpreadInput each = result.inputs().get(input);
            double[] shares = LatinSquare.shares(1, each.key(), RUNS);
            for (int run = 0; run < RUNS; run++) {
                draws[run][input] = each.spread().at(shares[run]);
            }
        }
        int length = index(result, SpreadKind.LENGTH);
        int load = index(result, SpreadKind.LOAD);
        int conductor = index(result, SpreadKind.CONDUCTOR);
        for (int run = 0; run < RUNS; run++) {
            drops[run] = drop.nominalValue()
                    * (1 + draws[run][load])
                    * (1 + draws[run][conductor])
                    * (1 + draws[run][length] / 2);
        }
        assertEquals(Sample.mean(drops), drop.meanValue(), WARMTH * drop.meanValue(), "the solver and the formula");
        OLSMultipleLinearRegression fit = new OLSMultipleLinearRegression();
        fit.newSampleData(drops, draws);
        double[] slopes = fit.estimateRegressionParameters();
        for (int input = 0; input < 3; input++) {
            double[] column = new double[RUNS];
            for (int run = 0; run < RUNS; run++) {
                column[run] = draws[run][input];
            }
            double standardised =
                    slopes[1 + input] * slopes[1 + input] * Sample.variance(column) / Sample.variance(drops);
            SpreadKind kind = result.inputs().get(input).kind();
            double share = drop.shares().orElseThrow().all().stream()
                    .filter(each -> each.kind() == kind)
                    .findFirst()
                    .orElseThrow()
                    .fraction();
            assertEquals(standardised, share, 0.05, kind.key() + ": chance correlation of 500 draws is 1 / 22");
        }
        assertTrue(fit.calculateRSquared() > 0.99);
        assertTrue(drop.shares().orElseThrow().explainedFraction() > 0.99);
    }

    private static int index(ToleranceResult result, SpreadKind kind) {
        return result.inputs().stream().map(SpreadInput::kind).toList().indexOf(kind);
    }

    @ParameterizedTest
    @CsvSource({"1, 200", "10, 200", "199, 200", "3, 20", "500, 20000"})
    void theBoundOfAChanceIsThatOfClopperAndPearson(int beyond, int runs) {
        double twoSided = 1 - 2 * (1 - Chance.CONFIDENCE);
        assertEquals(
                new ClopperPearsonInterval()
                        .createInterval(runs, beyond, twoSided)
                        .getUpperBound(),
                Chance.of(beyond, runs).upToFraction(),
                1e-9);
    }

    /** None in n: (1 - p)^n = 0.05. */
    @Test
    void noneAndAllBeyondHaveClosedFormulas() {
        assertEquals(1 - Math.pow(0.05, 1 / 200.0), Chance.of(0, 200).upToFraction(), 1e-12);
        assertEquals(1, Chance.of(20, 20).upToFraction());
    }

    @ParameterizedTest
    @CsvSource({"0.5", "0.05", "0.95", "0.001", "0.0000001", "0.9999"})
    void theNormalQuantileIsThatOfTheLibrary(double share) {
        assertEquals(new NormalDistribution().inverseCumulativeProbability(share), NormalQuantile.of(share), 1e-8);
    }

    @Test
    void everySliceOfALatinSquareIsHitOnce() {
        double[] shares = LatinSquare.shares(3, "load:H1", 50);
        boolean[] hit = new boolean[50];
        for (double share : shares) {
            hit[(int) (50 * share)] = true;
        }
        for (boolean each : hit) {
            assertTrue(each);
        }
        assertTrue(Arrays.stream(shares, 0, 25).max().orElseThrow() > 0.5, "in random order");
    }
}
