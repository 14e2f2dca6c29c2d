package org.ohmloom.remedy;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.ohmloom.edit.Compound;
import org.ohmloom.edit.Edit;
import org.ohmloom.edit.PutElements;
import org.ohmloom.model.ElementId;
import org.ohmloom.model.Harness;
import org.ohmloom.words.Text;

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

    private Text label() {
        List<Text> labels = new ArrayList<>();
        steps.forEach(step ->
                labels.add(labels.isEmpty() ? step.label() : step.label().goingOn()));
        return Text.joined("; ", labels);
    }

    /** This and then another, which was thought of for the harness this makes. */
    Candidate then(Candidate other) {
        List<Edit> all = new ArrayList<>(steps);
        all.addAll(other.steps);
        return new Candidate(RemedyKind.COMBINED, all);
    }

    /**
     * This and another that was thought of for the same harness. What both do is done once: two returns that go to one pin share
     * the splice made there. Empty when both would make something of one name that is not the same.
     */
    Optional<Candidate> with(Candidate other) {
        Set<Edit> done = new HashSet<>(single(steps));
        List<Edit> rest =
                other.steps.stream().flatMap(step -> left(step, done).stream()).toList();
        Set<ElementId> both = put(single(rest));
        both.retainAll(put(done));
        return both.isEmpty() ? Optional.of(then(new Candidate(other.kind, rest))) : Optional.empty();
    }

    /** What is left of a step to do; empty when all of it is done. */
    private static Optional<Edit> left(Edit step, Set<Edit> done) {
        if (step instanceof Compound compound) {
            List<Edit> edits = compound.edits().stream()
                    .flatMap(edit -> left(edit, done).stream())
                    .toList();
            return edits.equals(compound.edits())
                    ? Optional.of(step)
                    : edits.isEmpty() ? Optional.empty() : Optional.of(new Compound(compound.label(), edits));
        }
        return done.contains(step) ? Optional.empty() : Optional.of(step);
    }

    /** The steps with those in the place of a compound that it is made of. */
    private static List<Edit> single(List<Edit> steps) {
        return steps.stream()
                .flatMap(
                        step -> step instanceof Compound compound ? single(compound.edits()).stream() : Stream.of(step))
                .toList();
    }

    /** What steps add, or put in the place of what there is. */
    private static Set<ElementId> put(Collection<Edit> steps) {
        Set<ElementId> ids = new HashSet<>();
        steps.forEach(step -> {
            if (step instanceof PutElements added) {
                added.elements().forEach(element -> ids.add(element.id()));
            }
        });
        return ids;
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
