package org.ohmloom.judged;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.ohmloom.BesideOthers;
import org.ohmloom.Campaign;
import org.ohmloom.analysis.Analyst;
import org.ohmloom.analysis.Cancel;
import org.ohmloom.analysis.ReturnTrial;
import org.ohmloom.graph.BranchId;
import org.ohmloom.model.Harness;
import org.ohmloom.review.Severity;
import org.ohmloom.solve.IslandStatus;
import org.ohmloom.tables.WireTables;

/**
 * A test that cannot mark itself: generated harnesses with nothing wrong give no error and no warning, and of faults put in at
 * random, of half to twice their limit, each that is over it by a plain dense solution is found with the right subject and none
 * that is under it.
 *
 * <p>The generator and the judge know the harness and the limits of the manual, and none of the code under test. Every rule on
 * returns is compared at every subject, whatever the fault was aimed at.
 */
@BesideOthers
class JudgedHarnessesTest {

    private static final int CLEAN = Campaign.FULL ? 300 : 2;
    private static final int FAULTY = Campaign.FULL ? 300 : 4;

    /** In a sample each harness has some kinds of fault only; all kinds come up. */
    private static final int STRIDE = Campaign.FULL ? 1 : 4;

    private static final WireTables TABLES = WireTables.bundled();

    /** Difference of two ways of solving one circuit, A. */
    private static final double SAME_AMPS = 1e-10;

    @Test
    void harnessesWithNothingWrongGiveNoErrorAndNoWarning() {
        List<String> complaints = new ArrayList<>();
        Campaign.each(CLEAN, JudgedHarnessesTest::complaints).forEach(complaints::addAll);
        assertEquals(List.of(), complaints);
    }

    private static List<String> complaints(int seed) {
        Harness harness = SoundHarness.of(seed);
        new PlainJudge(harness)
                .shares()
                .forEach((key, share) -> assertTrue(
                        share < 1 || key.startsWith("ground-stud-crowded") && share == 1,
                        () -> "harness " + seed + ": " + key));
        return Analyst.analyse(harness, TABLES, Cancel.NEVER).findings().stream()
                .filter(finding -> finding.severity() != Severity.NOTE)
                .map(finding -> "harness " + seed + ": " + finding.message())
                .toList();
    }

    @Test
    void everyFaultOverItsLimitIsFoundWithItsSubjectAndNoneUnderIt() {
        Map<FaultKind, Tally> table = new EnumMap<>(FaultKind.class);
        List<String> wrong = new ArrayList<>();
        List<Map<FaultKind, Tally>> byHarness = Campaign.each(FAULTY, JudgedHarnessesTest::faultsOf);
        byHarness.forEach(tallies -> tallies.forEach((kind, tally) -> {
            table.computeIfAbsent(kind, each -> new Tally()).add(tally);
            wrong.addAll(tally.wrong());
        }));
        List<FaultRow> rows = new ArrayList<>();
        table.forEach((kind, tally) -> rows.add(tally.row(kind)));
        String text = FaultTable.text(FAULTY, rows);
        System.out.println(text);
        assertEquals(List.of(), wrong);
        rows.forEach(row -> assertTrue(row.over() > 0 || !Campaign.FULL, row::toString));
        if (Campaign.FULL) {
            FaultTable.keep(text);
        }
    }

    /** One fault of each kind in the harness of a number. */
    private static Map<FaultKind, Tally> faultsOf(int seed) {
        Map<FaultKind, Tally> tallies = new EnumMap<>(FaultKind.class);
        Harness sound = SoundHarness.of(seed);
        ReturnTrial base = ReturnTrial.of(sound, TABLES, Cancel.NEVER);
        for (FaultKind kind : FaultKind.values()) {
            if ((seed + kind.ordinal()) % STRIDE == 0) {
                Tally tally = tallies.computeIfAbsent(kind, each -> new Tally());
                new Faults(sound, 1000L * seed + kind.ordinal())
                        .of(kind)
                        .ifPresentOrElse(fault -> tally.count(fault, base, seed), tally::without);
            }
        }
        return tallies;
    }

    @Test
    void aCircuitWhoseSearchOnceWentToAndFroIsSolvedAsPlainly() {
        // a thermistor's pull-up, a reference supply and a loop through a sensor's return: the last digits of the
        // balance led away
        Harness sound = SoundHarness.of(56);
        Fault fault = new Faults(sound, 56_000 + FaultKind.SECOND_PATH.ordinal())
                .of(FaultKind.SECOND_PATH)
                .orElseThrow();
        ReturnTrial trial = ReturnTrial.of(fault.harness(), TABLES, Cancel.NEVER);
        trial.evidence().solutions().forEach((state, solution) -> {
            assertEquals(IslandStatus.SOLVED, solution.status(), state::toString);
            PlainState plain =
                    new PlainState(fault.harness(), fault.harness().states().get(state));
            double ohms = Harnesses.wire(fault.harness(), "WY").measuredOhms().orElseThrow();
            String ground = Harnesses.wire(fault.harness(), "WY").to().text();
            assertEquals(
                    plain.mean("SPX.WY", ground) / ohms,
                    solution.flow(new BranchId("WY")).orElseThrow().amps(),
                    SAME_AMPS);
        });
    }
}
