package org.ohmloom.review;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.ohmloom.edit.Edit;
import org.ohmloom.model.NaturalOrder;
import org.ohmloom.units.Formats;
import org.ohmloom.units.Quantity;
import org.ohmloom.units.Unit;

/**
 * Puts a finding together: a {@link Sentence} with the numbers and words that go there, and what it is about.
 */
final class FindingDraft {

    private final RuleInfo info;
    private final String template;
    private final Map<String, String> words = new LinkedHashMap<>();
    private final Map<String, Quantity> values = new LinkedHashMap<>();
    private final List<String> subjects = new ArrayList<>();
    private final List<String> highlight = new ArrayList<>();
    private Severity severity;
    private String source;
    private @Nullable Edit fix;

    /** Starts a finding of a rule with a sentence such as {@code "{wire} carries {current}, more than {limit}."}. */
    FindingDraft(RuleInfo info, String template) {
        this.info = info;
        this.template = template;
        this.severity = info.severity();
        this.source = info.source();
    }

    /** Fills a place with words. */
    FindingDraft word(String name, Object text) {
        words.put(name, text.toString());
        return this;
    }

    /** Fills a place with a number in its canonical unit and keeps the number. */
    FindingDraft value(String name, double canonical, Unit unit) {
        values.put(name, Quantity.of(canonical, unit));
        return this;
    }

    /**
     * Fills two places with a number and the limit it is beyond, and keeps both. Where the digits shown do not tell them
     * apart, the share by which the number is beyond follows it.
     */
    FindingDraft beyond(String name, double canonical, String limitName, double limit, Unit unit) {
        value(name, canonical, unit);
        value(limitName, limit, unit);
        String shown = Formats.quantity(canonical, unit.dimension());
        if (limit != 0 && shown.equals(Formats.quantity(limit, unit.dimension()))) {
            word(name, shown + " (" + Formats.percent(canonical / limit - 1) + " over)");
        }
        return this;
    }

    FindingDraft amps(String name, double amps) {
        return value(name, amps, Unit.AMP);
    }

    FindingDraft volts(String name, double volts) {
        return value(name, volts, Unit.VOLT);
    }

    /** What is at fault; shown and highlighted. */
    FindingDraft subject(Object id) {
        subjects.add(id.toString());
        return this;
    }

    FindingDraft subjects(Collection<?> ids) {
        ids.forEach(this::subject);
        return this;
    }

    /** What to show besides the subjects. */
    FindingDraft highlight(Collection<?> ids) {
        ids.forEach(id -> highlight.add(id.toString()));
        return this;
    }

    FindingDraft severity(Severity changed) {
        severity = changed;
        return this;
    }

    FindingDraft source(String changed) {
        source = changed;
        return this;
    }

    FindingDraft fix(Optional<? extends Edit> edit) {
        edit.ifPresent(found -> fix = found);
        return this;
    }

    Finding build() {
        List<String> sorted =
                subjects.stream().distinct().sorted(NaturalOrder.INSTANCE).toList();
        List<String> shown = new ArrayList<>(sorted);
        highlight.stream().filter(id -> !shown.contains(id)).distinct().forEach(shown::add);
        return new Finding(
                info.id(),
                severity,
                sentence(),
                sorted,
                shown,
                source,
                values,
                Optional.ofNullable(fix),
                Optional.empty());
    }

    private String sentence() {
        Map<String, String> texts = new LinkedHashMap<>(words);
        values.forEach((name, quantity) -> texts.putIfAbsent(
                name, Formats.quantity(quantity.canonical(), quantity.unit().dimension())));
        return Sentence.of(template, texts);
    }
}
