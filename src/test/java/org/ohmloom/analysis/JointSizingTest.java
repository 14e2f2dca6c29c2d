package org.ohmloom.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.ohmloom.BesideOthers;
import org.ohmloom.model.Harness;
import org.ohmloom.model.SizingRules;
import org.ohmloom.model.SizingRules.StockSize;
import org.ohmloom.model.WireId;
import org.ohmloom.size.ConductorChoice;
import org.ohmloom.size.Governor;
import org.ohmloom.size.JointChoice;
import org.ohmloom.size.JointChoice.Outcome;
import org.ohmloom.size.LoadBudget;
import org.ohmloom.tables.WireTables;
import org.ohmloom.units.Gauge;

/** Sizes chosen together through the whole analysis, on feeds small enough to think through. */
@BesideOthers
class JointSizingTest {
    private static final double SAME = 1e-9;

    private static Analysis analysed(Harness harness) {
        return Analyst.analyse(harness, WireTables.bundled(), Cancel.NEVER);
    }

    private static JointChoice joint(Harness harness) {
        return analysed(harness).evidence().joint();
    }

    private static double areaMm2(JointChoice choice, String wire) {
        return choice.sizes().get(new WireId(wire)).nominalAreaMm2();
    }

    /** A trunk of 3 m to a splice, a far load over 4 m and a near one over 1 m; returns of 1 m. */
    private static OpenFeeds trunkAndTwo(SizingRules sizing) {
        return new OpenFeeds(sizing)
                .splice("S1")
                .load("FAR", 4, 0.5)
                .load("NEAR", 12, 0.5)
                .wire("TRUNK", "B.+", "S1", 3)
                .wire("W-FAR", "S1", "FAR.+", 4)
                .wire("W-NEAR", "S1", "NEAR.+", 1)
                .wire("R-FAR", "FAR.-", "B.-", 1)
                .wire("R-NEAR", "NEAR.-", "B.-", 1);
    }

    @Test
    void aSharedBudgetIsSpentWhereItSavesMostAndTheAnalysisVerifiesIt() {
        Analysis analysis = analysed(trunkAndTwo(SizingRules.NONE).harness());
        JointChoice choice = analysis.evidence().joint();
        assertTrue(choice.outcome() != Outcome.NOTHING_OPEN);
        assertTrue(choice.afterKg() <= choice.beforeKg() * (1 + SAME), "never worse than wire by wire");
        assertTrue(choice.lowerBound() <= choice.after() * (1 + SAME));
        assertTrue(choice.continuousBound() <= choice.lowerBound() * (1 + SAME));
        assertTrue(choice.isProvenLeast(), "five wires are solved to the end");
        assertEquals(analysis.totals().copperKg(), choice.afterKg(), SAME);
        for (LoadBudget budget : choice.budgets()) {
            assertTrue(budget.isKept(), budget.id());
            double solved = analysis.evidence()
                    .solutions()
                    .get(budget.state())
                    .loads()
                    .get(budget.load())
                    .onDropVolts();
            assertEquals(solved, budget.spentVolts(), SAME, "the spends add up to the solved drop");
        }
    }

    @Test
    void theWireSaysWhichLoadAsksAndWhatEachSegmentSpends() {
        Analysis analysis = analysed(trunkAndTwo(SizingRules.NONE).harness());
        ConductorChoice trunk = analysis.conductors().get(new WireId("TRUNK"));
        assertEquals(Governor.JOINT_DROP, trunk.governing().governor());
        assertEquals(trunk.gauge(), trunk.governing().smallest());
        String reason = trunk.governing().reason();
        assertTrue(reason.contains("may lose 500 mV (state run)"), reason);
        assertTrue(reason.contains("in this wire") && reason.contains("too much"), reason);
        assertTrue(analysis.log().text().contains("Drop budget of FAR in run"));
    }

    @Test
    void theSizedHarnessHasTheSizesChosenTogether() {
        Analysis start = analysed(trunkAndTwo(SizingRules.NONE).harness());
        SizedHarness sized = SizedHarness.of(start, Cancel.NEVER);
        start.evidence()
                .joint()
                .sizes()
                .forEach((wire, gauge) -> assertEquals(
                        Optional.of(gauge),
                        sized.analysis().harness().wires().get(wire).gauge(),
                        wire.value()));
        assertEquals(
                start.evidence().joint().afterKg(), sized.analysis().totals().copperKg(), SAME);
        assertEquals(Outcome.NOTHING_OPEN, sized.analysis().evidence().joint().outcome());
        assertEquals(start.evidence().joint(), sized.joint());
    }

    @Test
    void onlySizesInStockAreChosen() {
        JointChoice choice = joint(trunkAndTwo(OpenFeeds.stock(1, 2.5, 6)).harness());
        choice.sizes()
                .forEach((wire, gauge) ->
                        assertTrue(List.of(1.0, 2.5, 6.0).contains(gauge.nominalAreaMm2()), wire + " " + gauge));
        assertTrue(choice.afterKg()
                >= joint(trunkAndTwo(SizingRules.NONE).harness()).afterKg() * (1 - SAME));
    }

    @Test
    void whereTheStockHasPricesTheCostIsMadeLeast() {
        // 4 mm2 is cheaper than anything else
        List<StockSize> stock = List.of(
                new StockSize(Gauge.metric(1), OptionalDouble.of(1.2)),
                new StockSize(Gauge.metric(2.5), OptionalDouble.of(2.0)),
                new StockSize(Gauge.metric(4), OptionalDouble.of(0.9)),
                new StockSize(Gauge.metric(6), OptionalDouble.of(4.0)));
        JointChoice choice = joint(trunkAndTwo(OpenFeeds.rules(stock, false)).harness());
        assertTrue(choice.isPrice());
        choice.sizes().forEach((wire, gauge) -> assertEquals(Gauge.metric(4), gauge, wire.value()));
        // 3 + 4 + 1 + 1 + 1 m at 0.9
        assertEquals(9.0, choice.after(), SAME);
        assertTrue(choice.isProvenLeast());
    }

    @Test
    void aLockedWireAndOneInTheVehicleStayAndTheOthersMakeUpForThem() {
        OpenFeeds feeds = new OpenFeeds(SizingRules.NONE)
                .splice("S1")
                .load("L", 10, 0.5)
                .wire("LOCKED", "B.+", "S1", 2, Optional.of(Gauge.metric(1.5)), Optional.empty(), false, true)
                .wire("OPEN", "S1", "L.+", 1)
                .wire("OLD", "L.-", "B.-", 1, Optional.of(Gauge.metric(2.5)), Optional.empty(), true, false);
        // 10 A over 2 m of 12.7 and 1 m of 7.6 mohm/m lose 0.33 V and more when warm
        Analysis analysis = analysed(feeds.harness());
        JointChoice choice = analysis.evidence().joint();
        assertEquals(List.of(new WireId("OPEN")), List.copyOf(choice.sizes().keySet()));
        assertTrue(choice.budgets().get(0).isKept());
        SizedHarness sized = SizedHarness.anew(analysis, Cancel.NEVER);
        assertEquals(
                Optional.of(Gauge.metric(1.5)),
                sized.analysis().harness().wires().get(new WireId("LOCKED")).gauge());
        assertEquals(
                Optional.of(Gauge.metric(2.5)),
                sized.analysis().harness().wires().get(new WireId("OLD")).gauge());
    }

    @Test
    void allWiresOfACircuitGetOneSizeWhereTheRulesAskForIt() {
        JointChoice choice = joint(new OpenFeeds(OpenFeeds.rules(List.of(), true))
                .splice("S1")
                .load("L1", 2, 0.3)
                .load("L2", 9, 0.3)
                .wire("A1", "B.+", "S1", 2, Optional.empty(), Optional.of("A"), false, false)
                .wire("A2", "S1", "L1.+", 2, Optional.empty(), Optional.of("A"), false, false)
                .wire("A3", "S1", "L2.+", 3, Optional.empty(), Optional.of("A"), false, false)
                .wire("B1", "L1.-", "B.-", 1)
                .wire("B2", "L2.-", "B.-", 1)
                .harness());
        assertEquals(areaMm2(choice, "A1"), areaMm2(choice, "A2"));
        assertEquals(areaMm2(choice, "A1"), areaMm2(choice, "A3"));
        assertTrue(areaMm2(choice, "B1") < areaMm2(choice, "A1"), "a wire of no circuit is chosen by itself");
        assertTrue(choice.budgets().stream().allMatch(LoadBudget::isKept));
    }

    @Test
    void aBudgetThatCannotBeKeptIsNamedAndTheOthersAreKept() {
        JointChoice choice = joint(new OpenFeeds(OpenFeeds.stock(1, 2.5))
                .load("L1", 30, 0.1)
                .load("L2", 3, 0.3)
                .wire("W1", "B.+", "L1.+", 4)
                .wire("R1", "L1.-", "B.-", 4)
                .wire("W2", "B.+", "L2.+", 4)
                .wire("R2", "L2.-", "B.-", 4)
                .harness());
        assertEquals(List.of("L1 in run"), choice.unmet());
        assertFalse(choice.budgets().get(0).isKept());
        assertTrue(choice.budgets().get(1).isKept());
        assertTrue(choice.sentence().contains("No choice keeps the drop budget of L1 in run"), choice.sentence());
    }

    @Test
    void aWireWithASizeGrowsOnlyWhereALoadCannotKeepItsBudgetOtherwise() {
        OpenFeeds feeds = new OpenFeeds(SizingRules.NONE)
                .splice("S1")
                .load("L", 10, 0.4)
                .wire("THIN", "B.+", "S1", 3, Optional.of(Gauge.metric(1)), Optional.empty(), false, false)
                .wire("OTHER", "S1", "L.+", 1, Optional.of(Gauge.metric(2.5)), Optional.empty(), false, false)
                .wire("BACK", "L.-", "B.-", 1, Optional.of(Gauge.metric(2.5)), Optional.empty(), false, false);
        // 10 A x 3 m x 18.5 mohm/m alone is 0.555 V
        Analysis analysis = analysed(feeds.harness());
        JointChoice choice = analysis.evidence().joint();
        assertTrue(choice.afterKg() <= choice.beforeKg() * (1 + SAME));
        assertTrue(areaMm2(choice, "THIN") > 1);
        SizedHarness sized = SizedHarness.of(analysis, Cancel.NEVER);
        assertTrue(sized.analysis().evidence().joint().budgets().get(0).isKept());
        assertEquals(choice.afterKg(), sized.analysis().totals().copperKg(), SAME);
        assertTrue(choice.allOpenBoundKg().orElseThrow() <= choice.afterKg());
        assertEquals(
                OptionalDouble.empty(),
                joint(trunkAndTwo(SizingRules.NONE).harness()).allOpenBoundKg());
    }
}
