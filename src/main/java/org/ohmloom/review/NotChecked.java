package org.ohmloom.review;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import org.ohmloom.graph.Assumption;
import org.ohmloom.heat.WireRating;
import org.ohmloom.model.ContactPart;
import org.ohmloom.model.Harness;

/**
 * Says what could not be judged because something is not entered, and what was assumed instead. Never silence.
 */
final class NotChecked implements Rule {

    private static final RuleInfo INFO = new RuleInfo(
            "not-checked",
            "Not judged because something is not entered",
            Severity.NOTE,
            "common practice, no source",
            "What is not entered is not computed; a harness without findings is only as good as what was entered.",
            "Enter what is missing.");

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public void review(Evidence evidence, Consumer<Finding> report) {
        Harness harness = evidence.harness();
        if (harness.states().isEmpty()) {
            report.accept(new FindingDraft(INFO, "Not checked: no operating state is entered, so nothing is computed.")
                    .severity(Severity.WARNING)
                    .build());
        }
        if (harness.components().all().stream()
                .noneMatch(component -> component.device().isSource())) {
            report.accept(new FindingDraft(INFO, "Not checked: there is no source, so nothing flows.")
                    .severity(Severity.WARNING)
                    .build());
        }
        List<Object> withoutLength = new ArrayList<>();
        List<Object> withoutSize = new ArrayList<>();
        List<Object> withoutAmpacity = new ArrayList<>();
        for (WireRating rating : evidence.ratings().values()) {
            if (rating.lengthMetres().isEmpty() && rating.wire().measuredOhms().isEmpty()) {
                withoutLength.add(rating.wire().id());
            }
            if (rating.provisional()) {
                withoutSize.add(rating.wire().id());
            }
            if (rating.ampacity().isEmpty()) {
                withoutAmpacity.add(rating.wire().id());
            }
        }
        tell(report, withoutLength, Severity.WARNING, "Voltage drop not checked: no length entered and no route for");
        tell(
                report,
                withoutSize,
                Severity.NOTE,
                "No conductor size entered, computed with the smallest that serves, for");
        tell(
                report,
                withoutAmpacity,
                Severity.WARNING,
                "Ampacity not checked: the table has no row for the size or insulation of");
        tell(
                report,
                harness.contacts().all().stream()
                        .filter(contact -> contact.limits().isEmpty())
                        .map(ContactPart::id)
                        .map(Object.class::cast)
                        .toList(),
                Severity.NOTE,
                "Contact current not checked: no limit entered for contact");
        assumptions(evidence).forEach((text, about) -> tell(report, about, Severity.NOTE, text + ":"));
    }

    private static Map<String, List<Object>> assumptions(Evidence evidence) {
        Map<String, List<Object>> byText = new LinkedHashMap<>();
        evidence.drawn().assumptions().forEach(assumption -> byText.computeIfAbsent(
                        sentence(assumption), key -> new ArrayList<>())
                .add(assumption.element()));
        return byText;
    }

    private static String sentence(Assumption assumption) {
        String text = assumption.text().endsWith(".")
                ? assumption.text().substring(0, assumption.text().length() - 1)
                : assumption.text();
        return "Assumed: " + text + " (" + assumption.source() + ")";
    }

    private static void tell(Consumer<Finding> report, List<?> about, Severity severity, String start) {
        if (about.isEmpty()) {
            return;
        }
        report.accept(new FindingDraft(INFO, "{start} {about}.")
                .word("start", start)
                .word("about", listed(about))
                .severity(severity)
                .subjects(about)
                .build());
    }

    private static String listed(List<?> about) {
        int shown = 6;
        List<String> names = about.stream().limit(shown).map(Object::toString).toList();
        String text = String.join(", ", names);
        return about.size() > shown ? text + " and " + (about.size() - shown) + " more" : text;
    }
}
