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
import org.ohmloom.words.Text;

/**
 * Puts a finding together: a {@link Sentence} with the numbers and words that go there, and what it is about.
 */
final class FindingDraft {

    private final RuleInfo info;
    private final String name;
    private final Map<String, String> parts = new LinkedHashMap<>();
    private final Map<String, Text> words = new LinkedHashMap<>();
    private final Map<String, Quantity> values = new LinkedHashMap<>();
    private final List<String> subjects = new ArrayList<>();
    private final List<String> highlight = new ArrayList<>();
    private Severity severity;
    private Text source;
    private @Nullable Edit fix;

    /**
     * Starts a finding of a rule with one of its sentences, such as {@code {wire} carries {current}, more than {limit}.}
     *
     * @param info the rule
     * @param name of the sentence in the bundle, behind the id of the rule
     */
    FindingDraft(RuleInfo info, String name) {
        this.info = info;
        this.name = name;
        this.severity = info.severity();
        this.source = info.source();
    }

    /** Fills a place with words: a text in any language, or an id or a name as it is. */
    FindingDraft word(String name, Object text) {
        words.put(name, Text.of(text));
        return this;
    }

    /** Fills a place with a phrase of the rule. */
    FindingDraft phrase(String name, String phrase, Object... values) {
        return word(name, info.text(phrase, values));
    }

    /** Puts a part with places of its own into the sentence, or leaves it out. */
    FindingDraft part(String place, boolean there, String part) {
        parts.put(place, there ? info.key(part) : "");
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
            phrase(name, "over", shown, Formats.percent(canonical / limit - 1));
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

    /** Another source than the rule's: a citation, or a text in any language. */
    FindingDraft source(Object changed) {
        source = Text.of(changed);
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

    private Text sentence() {
        Map<String, Text> texts = new LinkedHashMap<>(words);
        values.forEach((place, quantity) -> texts.putIfAbsent(
                place,
                Text.of(Formats.quantity(quantity.canonical(), quantity.unit().dimension()))));
        return new FindingText(info.key(name), parts, texts);
    }
}
