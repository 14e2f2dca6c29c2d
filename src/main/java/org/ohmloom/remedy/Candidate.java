package org.ohmloom.remedy;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.ohmloom.edit.Compound;
import org.ohmloom.edit.Edit;
import org.ohmloom.model.Harness;

/**
 * A change that may help and has not been tried, or several of them together.
 *
 * @param kind  which of the usual remedies it is
 * @param steps the changes, in the order they are made
 */
record Candidate(RemedyKind kind, List<Edit> steps) {

    Candidate {
        steps = List.copyOf(steps);
    }

    /** One change. */
    Candidate(RemedyKind kind, Edit edit) {
        this(kind, List.of(edit));
    }

    /** The change as one edit, which is undone at once. */
    Edit edit() {
        return steps.size() == 1 ? steps.get(0) : new Compound(label(), steps);
    }

    private String label() {
        List<String> labels = new ArrayList<>();
        steps.forEach(step -> labels.add(
                labels.isEmpty()
                        ? step.label()
                        : step.label().substring(0, 1).toLowerCase(Locale.ROOT)
                                + step.label().substring(1)));
        return String.join("; ", labels);
    }

    /** This and then another. */
    Candidate with(Candidate other) {
        List<Edit> both = new ArrayList<>(steps);
        other.steps.stream().filter(step -> !both.contains(step)).forEach(both::add);
        return new Candidate(RemedyKind.COMBINED, both);
    }

    /** The changed harness; empty when a step cannot be made after those before it, or changes nothing then. */
    Optional<Harness> on(Harness harness) {
        Harness changed = harness;
        for (Edit step : steps) {
            Harness next = made(step, changed);
            if (next == changed) {
                return Optional.empty();
            }
            changed = next;
        }
        return Optional.of(changed);
    }

    /** The harness after a step; the same where the step is about something that an earlier one took out. */
    private static Harness made(Edit step, Harness before) {
        try {
            return step.apply(before);
        } catch (IllegalArgumentException notPossible) {
            return before;
        }
    }
}
