package org.ohmloom.workbench.findings;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.ohmloom.edit.Compound;
import org.ohmloom.edit.Edit;
import org.ohmloom.model.Harness;
import org.ohmloom.review.Finding;
import org.ohmloom.workbench.desk.Desk;
import org.ohmloom.workbench.desk.Results;
import org.ohmloom.workbench.words.TradeWords;
import org.ohmloom.workbench.words.Words;

/** What can be done about findings together: those of one rule that are not accepted. */
final class Fixes {

    private Fixes() {}

    /** Findings of the rule of the selected one, not accepted, with the selected one first. */
    static List<Finding> alike(Desk desk) {
        List<Finding> all = new ArrayList<>();
        desk.selection().finding().ifPresent(chosen -> {
            all.add(chosen);
            desk.findings().stream()
                    .map(Results.Standing::finding)
                    .filter(finding -> finding.rule().equals(chosen.rule()))
                    .filter(finding -> finding.isOpen() && !isSame(finding, chosen))
                    .forEach(all::add);
        });
        return all;
    }

    /** Whether they are about the same: one of results and its like in later ones. */
    static boolean isSame(Finding one, Finding other) {
        return one.rule().equals(other.rule()) && one.subjects().equals(other.subjects());
    }

    /** Whether {@link #ofAKind} has any; the first fix that applies to the harness as it is tells. */
    static boolean anyOfAKind(Desk desk) {
        return desk.isCurrent()
                && fixes(alike(desk))
                        .anyMatch(fix -> made(fix, desk.harness().orElseThrow()).isPresent());
    }

    /**
     * The fixes of all findings of the rule of the selected one as one step. A fix that no longer applies once others are made is
     * left out.
     */
    static Optional<Edit> ofAKind(Desk desk) {
        if (!desk.isCurrent()) {
            return Optional.empty();
        }
        List<Finding> alike = alike(desk);
        List<Edit> edits = new ArrayList<>();
        Harness harness = desk.harness().orElseThrow();
        for (Edit fix : fixes(alike).toList()) {
            Optional<Harness> fixed = made(fix, harness);
            if (fixed.isPresent()) {
                harness = fixed.get();
                edits.add(fix);
            }
        }
        return edits.isEmpty()
                ? Optional.empty()
                : Optional.of(new Compound(
                        Words.of("findings")
                                .text(
                                        "fix-label",
                                        edits.size(),
                                        TradeWords.rule(alike.get(0).rule())),
                        edits));
    }

    private static Stream<Edit> fixes(List<Finding> findings) {
        return findings.stream().flatMap(finding -> finding.fix().stream());
    }

    /** The harness with a fix; empty when another one has changed what it is about. */
    private static Optional<Harness> made(Edit fix, Harness harness) {
        try {
            return Optional.of(fix.apply(harness));
        } catch (IllegalArgumentException overtaken) {
            return Optional.empty();
        }
    }
}
