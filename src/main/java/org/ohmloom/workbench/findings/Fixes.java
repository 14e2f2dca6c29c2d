package org.ohmloom.workbench.findings;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ohmloom.edit.Compound;
import org.ohmloom.edit.Edit;
import org.ohmloom.model.Harness;
import org.ohmloom.review.Finding;
import org.ohmloom.review.RuleInfo;
import org.ohmloom.review.Rules;
import org.ohmloom.workbench.desk.Desk;
import org.ohmloom.workbench.desk.Results;
import org.ohmloom.workbench.words.Words;

/** What can be done about findings together: those of one rule that are not accepted. */
final class Fixes {

    private Fixes() {}

    /** Findings of the rule of the selected one, not accepted, with the selected one first. */
    static List<Finding> alike(Desk desk) {
        Optional<Finding> chosen = desk.selection().finding();
        List<Finding> all = new ArrayList<>(chosen.stream().toList());
        desk.findings().stream()
                .map(Results.Standing::finding)
                .filter(finding -> chosen.filter(each -> each.rule().equals(finding.rule()))
                        .isPresent())
                .filter(finding -> finding.isOpen() && !isSame(finding, chosen.get()))
                .forEach(all::add);
        return all;
    }

    static boolean isSame(Finding one, Finding other) {
        return one.rule().equals(other.rule()) && one.subjects().equals(other.subjects());
    }

    /** What a rule is called. */
    static String title(String rule) {
        return Rules.ALL.stream()
                .map(each -> each.info())
                .filter(info -> info.id().equals(rule))
                .map(RuleInfo::title)
                .findFirst()
                .orElse(rule);
    }

    /**
     * The fixes of all findings of the rule of the selected one as one step. A fix that no longer applies once others are made is
     * left out.
     */
    static Optional<Edit> ofAKind(Desk desk) {
        if (!desk.isCurrent()) {
            return Optional.empty();
        }
        List<Edit> edits = new ArrayList<>();
        Harness harness = desk.harness().orElseThrow();
        for (Finding finding : alike(desk)) {
            Optional<Edit> fix = finding.fix();
            if (fix.isPresent()) {
                try {
                    harness = fix.get().apply(harness);
                    edits.add(fix.get());
                } catch (IllegalArgumentException overtaken) {
                    // another fix of the same step has changed what this one is about
                    continue;
                }
            }
        }
        return edits.isEmpty()
                ? Optional.empty()
                : Optional.of(new Compound(
                        Words.of("findings")
                                .get(
                                        "fix-label",
                                        edits.size(),
                                        title(alike(desk).get(0).rule())),
                        edits));
    }
}
