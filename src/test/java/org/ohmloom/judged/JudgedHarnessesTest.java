package org.ohmloom.judged;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.ohmloom.analysis.Analyst;
import org.ohmloom.analysis.Cancel;
import org.ohmloom.analysis.ReturnTrial;
import org.ohmloom.graph.BranchId;
import org.ohmloom.model.Harness;
import org.ohmloom.review.Finding;
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
class JudgedHarnessesTest {

    private static final boolean FULL = "full".equals(System.getProperty("ohmloom.campaign"));
    private static final int CLEAN = FULL ? 300 : 20;
    private static final int FAULTY = FULL ? 300 : 8;
    private static final WireTables TABLES = WireTables.bundled();

    /** Sizes this close to a limit, as a share of it, are not counted. */
    private static final double DEAD_BAND = 0.01;

    /** Difference of two ways of solving one circuit, A. */
    private static final double SAME_AMPS = 1e-10;

    private static final Set<String> JUDGED = Set.of(
            "ground-offset",
            "unit-ground-offset",
            "sensor-error-over-limit",
            "sensor-return-shared",
            "ground-stud-crowded");

    @Test
    void harnessesWithNothingWrongGiveNoErrorAndNoWarning() {
        List<String> complaints = new ArrayList<>();
        for (int seed = 0; seed < CLEAN; seed++) {
            int number = seed;
            Harness harness = SoundHarness.of(seed);
            new PlainJudge(harness)
                    .shares()
                    .forEach((key, share) -> assertTrue(share < 1, () -> "harness " + number + ": " + key));
            Analyst.analyse(harness, TABLES, Cancel.NEVER).findings().stream()
                    .filter(finding -> finding.severity() != Severity.NOTE)
                    .forEach(finding -> complaints.add("harness " + number + ": " + finding.message()));
        }
        assertEquals(List.of(), complaints);
    }

    @Test
    void everyFaultOverItsLimitIsFoundWithItsSubjectAndNoneUnderIt() {
        Map<FaultKind, Tally> table = new EnumMap<>(FaultKind.class);
        List<String> wrong = new ArrayList<>();
        for (int seed = 0; seed < FAULTY; seed++) {
            Harness sound = SoundHarness.of(seed);
            ReturnTrial base = ReturnTrial.of(sound, TABLES, Cancel.NEVER);
            for (FaultKind kind : FaultKind.values()) {
                Tally tally = table.computeIfAbsent(kind, each -> new Tally());
                int number = seed;
                new Faults(sound, 1000L * seed + kind.ordinal())
                        .of(kind)
                        .ifPresentOrElse(fault -> tally.count(fault, base, number, wrong), tally::without);
            }
        }
        List<FaultRow> rows = new ArrayList<>();
        table.forEach((kind, tally) -> rows.add(tally.row(kind)));
        String text = FaultTable.text(FAULTY, rows);
        System.out.println(text);
        assertEquals(List.of(), wrong);
        rows.forEach(row -> assertTrue(row.over() > 0 || !FULL, row::toString));
        if (FULL) {
            FaultTable.keep(text);
        }
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

    /** Counts of one kind of fault. */
    private static final class Tally {
        private int over;
        private int under;
        private int inBand;
        private int without;
        private int misses;
        private int falseAlarms;

        void without() {
            without++;
        }

        void count(Fault fault, ReturnTrial base, int seed, List<String> wrong) {
            String where = "harness " + seed + ", " + fault.kind() + " of size " + fault.size() + " at "
                    + fault.subject() + ": ";
            List<Finding> findings = base.changed(fault.harness(), Cancel.NEVER).findings().stream()
                    .filter(finding -> finding.severity() != Severity.NOTE)
                    .toList();
            double aimed = fault.size();
            if (fault.rule().equals("ground-loop")) {
                loop(fault, findings, where, wrong);
            }
            Map<String, Double> shares = new PlainJudge(fault.harness()).shares();
            aimed = shares.getOrDefault(fault.key(), aimed);
            if (isNear(fault.rule(), aimed)) {
                inBand++;
            } else if (aimed > 1) {
                over++;
            } else {
                under++;
            }
            shares.forEach((key, share) -> compare(key, share, findings, where, wrong));
        }

        private static boolean has(List<Finding> findings, String rule, String subject) {
            return findings.stream()
                    .anyMatch(
                            each -> each.rule().equals(rule) && each.subjects().contains(subject));
        }

        /** Whether a size is too near to its limit to be counted; a count of terminals never is. */
        private static boolean isNear(String rule, double share) {
            return !rule.equals("ground-stud-crowded") && Math.abs(share - 1) <= DEAD_BAND;
        }

        private void compare(String key, double share, List<Finding> findings, String where, List<String> wrong) {
            String rule = key.substring(0, key.indexOf(' '));
            String subject = key.substring(key.indexOf(' ') + 1);
            // what a load does to a sensor is told once: by its error, where that is over its limit
            boolean found = has(findings, rule, subject)
                    || share > 1
                            && rule.equals("sensor-return-shared")
                            && has(findings, "sensor-error-over-limit", subject);
            if (!JUDGED.contains(rule) || isNear(rule, share) || found == share > 1) {
                return;
            }
            if (found) {
                falseAlarms++;
            } else {
                misses++;
            }
            wrong.add(where + key + " is " + share + " of its limit and is " + (found ? "found" : "not found"));
        }

        /** A warning of a loop through the added path exactly when too much load current flows there, and no other. */
        private void loop(Fault fault, List<Finding> findings, String where, List<String> wrong) {
            List<Finding> loops = findings.stream()
                    .filter(each -> each.rule().equals("ground-loop"))
                    .toList();
            boolean found = loops.stream().anyMatch(each -> each.subjects().contains(fault.subject()));
            if (fault.size() > 1 + DEAD_BAND && !found) {
                misses++;
                wrong.add(where + "the loop is not found");
            }
            if (loops.size() > (fault.size() > 1 - DEAD_BAND ? 1 : 0)) {
                falseAlarms++;
                wrong.add(where + loops.stream().map(Finding::message).toList());
            }
        }

        FaultRow row(FaultKind kind) {
            return new FaultRow(kind, over, under, inBand, without, misses, falseAlarms);
        }
    }
}
