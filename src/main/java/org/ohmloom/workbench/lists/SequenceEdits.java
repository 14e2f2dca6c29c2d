package org.ohmloom.workbench.lists;

import java.util.List;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.ohmloom.edit.ChangeElements;
import org.ohmloom.edit.Edit;
import org.ohmloom.edit.PutElements;
import org.ohmloom.model.Harness;
import org.ohmloom.model.SequenceId;
import org.ohmloom.model.StateId;
import org.ohmloom.model.StateSequence;
import org.ohmloom.model.StateSequence.Step;
import org.ohmloom.units.Unit;
import org.ohmloom.workbench.words.TypedNumbers;
import org.ohmloom.workbench.words.Words;

/** What is typed about operating states one after another, as edits, and the same as text. */
public final class SequenceEdits {
    private static final Words WORDS = Words.of("lists");

    private static final double HOUR = 3600;
    private static final double MINUTE = 60;
    private static final Pattern STEP = Pattern.compile("(.*\\S)\\s+([0-9][0-9.,]*\\s*[A-Za-z]+)");

    private SequenceEdits() {}

    /** "engine-off 8 h, cranking 5 s". */
    static String steps(StateSequence sequence) {
        return sequence.steps().stream()
                .map(step -> step.state() + " " + duration(step.durationSeconds()))
                .collect(Collectors.joining(", "));
    }

    /** "8 h", "90 min", "5 s". */
    public static String duration(double seconds) {
        return seconds % HOUR == 0
                ? TypedNumbers.exact(seconds / HOUR) + " h"
                : seconds % MINUTE == 0
                        ? TypedNumbers.exact(seconds / MINUTE) + " min"
                        : TypedNumbers.exact(seconds) + " s";
    }

    /** Sets the states and how long each lasts. */
    static Edit steps(Harness harness, List<StateSequence> sequences, String typed) {
        List<Step> steps = List.of(typed.strip().split("\\s*(;|,\\s|\\bthen\\b)\\s*")).stream()
                .map(each -> step(harness, each.strip()))
                .toList();
        return all(
                sequences,
                WORDS.get("sequence.steps-2"),
                was -> new StateSequence(was.id(), was.name(), steps, was.untilVolts()));
    }

    private static Step step(Harness harness, String typed) {
        Matcher parts = STEP.matcher(typed);
        if (!parts.matches()) {
            throw new IllegalArgumentException(WORDS.get("sequence.is-no-step-a", typed));
        }
        StateId state = harness.states().ids().stream()
                .filter(id -> id.value().equalsIgnoreCase(parts.group(1)))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(WORDS.get(
                        "sequence.there-is-no-state",
                        parts.group(1),
                        harness.states().ids().stream().map(StateId::value).collect(Collectors.joining(", ")))));
        return new Step(
                state, TypedNumbers.needed(parts.group(2), Unit.SECOND, WORDS.get("sequence.how-long-a-state")));
    }

    /** Sets the battery voltage asked about; nothing asks about none. */
    static Edit until(List<StateSequence> sequences, String typed) {
        OptionalDouble volts = TypedNumbers.optional(typed, Unit.VOLT);
        return all(
                sequences,
                WORDS.get("sequence.voltage"),
                was -> new StateSequence(was.id(), was.name(), was.steps(), volts));
    }

    static Edit name(List<StateSequence> sequences, String typed) {
        return all(
                sequences,
                WORDS.get("sequence.name-2"),
                was -> new StateSequence(was.id(), typed.strip(), was.steps(), was.untilVolts()));
    }

    /** A new sequence: an hour in a state. */
    static PutElements create(Harness harness, StateId state) {
        int number = 1;
        while (harness.element("SQ" + number).isPresent()) {
            number++;
        }
        StateSequence sequence = new StateSequence(
                new SequenceId("SQ" + number),
                WORDS.get("sequence.sequence", number),
                List.of(new Step(state, HOUR)),
                OptionalDouble.empty());
        return PutElements.one(WORDS.text("sequence.add-sequence", sequence.id()), sequence);
    }

    private interface Change {
        StateSequence of(StateSequence was);
    }

    private static Edit all(List<StateSequence> sequences, String what, Change change) {
        List<Edit> edits = sequences.stream()
                .map(each ->
                        (Edit) ChangeElements.tried(WORDS.text("sequence.set-of", what, each.id()), each, change::of))
                .toList();
        return TypedNumbers.together(WORDS.text("sequence.set-of-sequences", what, sequences.size()), edits);
    }
}
