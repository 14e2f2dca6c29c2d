package org.ohmloom.review;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.ohmloom.edit.Edit;
import org.ohmloom.model.Waiver;
import org.ohmloom.units.Quantity;
import org.ohmloom.units.ShownUnits;
import org.ohmloom.words.Text;

/**
 * One breach of a rule.
 *
 * @param rule      id of the rule
 * @param severity  how serious it is
 * @param sentence  what is wrong, with its numbers, in any language at most 160 characters
 * @param subjects  ids of the elements at fault, sorted
 * @param highlight ids of the elements to show, may be a whole path
 * @param citation  document, clause and edition
 * @param values    the numbers by name
 * @param fix       an edit that removes it, if there is an obvious one
 * @param waiver    the waiver that accepts it, if any
 */
public record Finding(
        String rule,
        Severity severity,
        Text sentence,
        List<String> subjects,
        List<String> highlight,
        Text citation,
        Map<String, Quantity> values,
        Optional<Edit> fix,
        Optional<Waiver> waiver) {

    public Finding {
        subjects = List.copyOf(subjects);
        highlight = List.copyOf(highlight);
        values = Collections.unmodifiableMap(new LinkedHashMap<>(values));
    }

    /** What is wrong, in English and in the units the harness is written in. */
    public String message() {
        return sentence.english();
    }

    /** What is wrong, with its numbers in these units. */
    public String message(ShownUnits units, Locale language) {
        return units.text(sentence.in(language), values.values());
    }

    /** Document, clause and edition, in English. */
    public String source() {
        return citation.english();
    }

    /** Whether it still asks for attention. */
    public boolean isOpen() {
        return waiver.isEmpty();
    }

    /** This finding accepted. */
    public Finding waivedBy(Waiver accepted) {
        return new Finding(rule, severity, sentence, subjects, highlight, citation, values, fix, Optional.of(accepted));
    }
}
