package org.ohmloom.analysis.revision;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.review.Finding;
import org.ohmloom.words.Text;

/**
 * Everything that differs between two revisions of a harness.
 * <p>Elements are told apart by identity, findings by rule and subjects. A computed number is listed when it differs by
 * {@link #LEAST_FRACTION} of its size or more, and by more than 0.5 mm, 1 mA, 1 mV or 0.1 K.
 *
 * @param before   the old revision
 * @param after    the new revision
 * @param elements what became of each element, in file order
 * @param results  computed numbers that differ: wires, then loads, then protective devices
 * @param findings findings that came, went or stand otherwise: the new ones first
 */
public record RevisionComparison(
        Analysis before,
        Analysis after,
        List<ElementChange> elements,
        List<ResultChange> results,
        List<FindingChange> findings) {

    /** Share of its size by which a computed number must differ to be listed; our choice. */
    public static final double LEAST_FRACTION = 0.01;

    public RevisionComparison {
        elements = List.copyOf(elements);
        results = List.copyOf(results);
        findings = List.copyOf(findings);
    }

    /** Holds two analysed revisions side by side. */
    public static RevisionComparison of(Analysis before, Analysis after) {
        return new RevisionComparison(
                before,
                after,
                ElementChanges.between(before.harness(), after.harness()),
                ResultChanges.between(before, after),
                findings(before.findings(), after.findings()));
    }

    /** Whether both say the same. */
    public boolean isSame() {
        return elements.isEmpty() && results.isEmpty() && findings.isEmpty();
    }

    /** Sums over the whole harness that differ: metres and copper to be made, mass, largest drop. */
    public List<ResultChange> totals() {
        return ResultChanges.totals(before, after);
    }

    /** Count of elements that became so. */
    public long count(Change change) {
        return elements.stream().filter(each -> each.change() == change).count();
    }

    private static List<FindingChange> findings(List<Finding> before, List<Finding> after) {
        Map<String, Finding> old = byKey(before);
        Map<String, Finding> now = byKey(after);
        List<FindingChange> changes = new ArrayList<>();
        now.forEach((key, finding) -> {
            Finding was = old.get(key);
            if (was == null) {
                changes.add(new FindingChange(finding, Change.ADDED, Text.NONE));
            }
        });
        old.forEach((key, finding) -> {
            if (!now.containsKey(key)) {
                changes.add(new FindingChange(finding, Change.REMOVED, standing(finding)));
            }
        });
        now.forEach((key, finding) -> {
            Finding was = old.get(key);
            if (was != null && !standing(was).equals(standing(finding))) {
                changes.add(new FindingChange(finding, Change.CHANGED, standing(was)));
            }
        });
        return changes;
    }

    private static Map<String, Finding> byKey(List<Finding> findings) {
        Map<String, Finding> byKey = new LinkedHashMap<>();
        for (Finding finding : findings) {
            String key = finding.rule() + finding.subjects();
            int nth = 1;
            while (byKey.containsKey(key + nth)) {
                nth++;
            }
            byKey.put(key + nth, finding);
        }
        return byKey;
    }

    /** How a finding stands: "warning", "warning, accepted". */
    public static Text standing(Finding finding) {
        Text severity = RevisionWords.text(finding.severity().name().toLowerCase(Locale.ROOT));
        return finding.isOpen() ? severity : RevisionWords.WORDS.text("accepted", severity);
    }
}
