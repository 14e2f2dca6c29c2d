package org.ohmloom.judged;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.ohmloom.analysis.Cancel;
import org.ohmloom.analysis.ReturnTrial;
import org.ohmloom.review.Finding;
import org.ohmloom.review.Severity;

/** Counts of one kind of fault, and the comparison of findings with the judge. */
final class Tally {

    /** Sizes this close to a limit, as a share of it, are not counted. */
    private static final double DEAD_BAND = 0.01;

    /** In every so many-th harness every return and fuse is opened, in the others the one the fault is aimed at. */
    private static final int ALL_OPENED_EVERY = 5;

    private static final Set<String> JUDGED = Set.of(
            "ground-offset",
            "unit-ground-offset",
            "unit-offset-survival",
            "bus-common-mode",
            "sensor-error-over-limit",
            "sensor-return-shared",
            "coupling-over-limit",
            "lost-return-overloads",
            "ground-stud-crowded");

    /** What is told once: a rule is silent where the other one names the same subject. */
    private static final Map<String, String> TOLD_BY =
            Map.of("sensor-return-shared", "sensor-error-over-limit", "unit-offset-survival", "bus-common-mode");

    private int over;
    private int under;
    private int inBand;
    private int without;
    private int misses;
    private int falseAlarms;
    private final List<String> wrong = new ArrayList<>();

    List<String> wrong() {
        return wrong;
    }

    void add(Tally other) {
        over += other.over;
        under += other.under;
        inBand += other.inBand;
        without += other.without;
        misses += other.misses;
        falseAlarms += other.falseAlarms;
    }

    void without() {
        without++;
    }

    void count(Fault fault, ReturnTrial base, int seed) {
        String where =
                "harness " + seed + ", " + fault.kind() + " of size " + fault.size() + " at " + fault.subject() + ": ";
        List<Finding> findings = base.changed(fault.harness(), Cancel.NEVER).findings().stream()
                .filter(finding -> finding.severity() != Severity.NOTE)
                .toList();
        double aimed = fault.size();
        if (fault.rule().equals("ground-loop")) {
            loop(fault, findings, where);
        }
        Map<String, Double> shares = new PlainJudge(fault.harness()).shares();
        if (fault.rule().equals("lost-return-overloads")) {
            PlainLoss loss = new PlainLoss(fault.harness());
            // everything opened in turn is much work: in some harnesses
            shares.putAll(seed % ALL_OPENED_EVERY == 0 ? loss.shares() : loss.shares(List.of(fault.subject())));
        }
        aimed = shares.getOrDefault(fault.key(), aimed);
        if (isNear(fault.rule(), aimed)) {
            inBand++;
        } else if (aimed > 1) {
            over++;
        } else {
            under++;
        }
        shares.forEach((key, share) -> compare(key, share, findings, where));
    }

    private static boolean has(List<Finding> findings, String rule, String subject) {
        return findings.stream()
                .anyMatch(each -> each.rule().equals(rule) && each.subjects().contains(subject));
    }

    /** Whether a size is too near to its limit to be counted; a count of terminals never is. */
    private static boolean isNear(String rule, double share) {
        return !rule.equals("ground-stud-crowded") && Math.abs(share - 1) <= DEAD_BAND;
    }

    private void compare(String key, double share, List<Finding> findings, String where) {
        String rule = key.substring(0, key.indexOf(' '));
        String subject = key.substring(key.indexOf(' ') + 1);
        boolean found =
                has(findings, rule, subject) || share > 1 && has(findings, TOLD_BY.getOrDefault(rule, rule), subject);
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
    private void loop(Fault fault, List<Finding> findings, String where) {
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
