package org.ohmloom.review;

import static org.ohmloom.units.Require.notBlank;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ohmloom.edit.Edit;
import org.ohmloom.model.Waiver;
import org.ohmloom.units.Quantity;
import org.ohmloom.units.ShownUnits;

/**
 * One breach of a rule.
 *
 * @param rule      id of the rule
 * @param severity  how serious it is
 * @param message   what is wrong, with its numbers, at most 160 characters
 * @param subjects  ids of the elements at fault, sorted
 * @param highlight ids of the elements to show, may be a whole path
 * @param source    document, clause and edition
 * @param values    the numbers by name
 * @param fix       an edit that removes it, if there is an obvious one
 * @param waiver    the waiver that accepts it, if any
 */
public record Finding(
        String rule,
        Severity severity,
        String message,
        List<String> subjects,
        List<String> highlight,
        String source,
        Map<String, Quantity> values,
        Optional<Edit> fix,
        Optional<Waiver> waiver) {

    public Finding {
        notBlank(message, "message of finding " + rule);
        subjects = List.copyOf(subjects);
        highlight = List.copyOf(highlight);
        values = Collections.unmodifiableMap(new LinkedHashMap<>(values));
    }

    /** What is wrong, with its numbers in these units. */
    public String message(ShownUnits units) {
        return units.text(message, values.values());
    }

    /** Whether it still asks for attention. */
    public boolean isOpen() {
        return waiver.isEmpty();
    }

    /** This finding accepted. */
    public Finding waivedBy(Waiver accepted) {
        return new Finding(rule, severity, message, subjects, highlight, source, values, fix, Optional.of(accepted));
    }
}
