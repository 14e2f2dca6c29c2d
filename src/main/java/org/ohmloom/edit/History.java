package org.ohmloom.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.ohmloom.model.Harness;
import org.ohmloom.words.Text;

/**
 * Harnesses as they were after each step, with a cursor. Undo goes back one snapshot; a new step after undo drops what
 * was undone. Immutable: each operation gives another history.
 */
public final class History {

    private final List<Step> steps;
    private final int cursor;
    private final Harness start;

    /** One recorded step. */
    private record Step(Text label, @Nullable Object mergeKey, Harness after) {}

    private History(Harness start, List<Step> steps, int cursor) {
        this.start = start;
        this.steps = List.copyOf(steps);
        this.cursor = cursor;
    }

    /** A history that starts at the harness. */
    public static History from(Harness start) {
        return new History(start, List.of(), 0);
    }

    /** The harness at the cursor. */
    public Harness current() {
        return harnessAt(cursor);
    }

    /**
     * Applies an edit at the cursor; the same history when it changes nothing.
     *
     * @param merge whether the edit may join the last step when both have the same merge key
     */
    public History after(Edit edit, boolean merge) {
        Harness before = current();
        Harness after = edit.apply(before);
        if (after == before) {
            return this;
        }
        List<Step> kept = new ArrayList<>(steps.subList(0, cursor));
        Step step = new Step(edit.label(), edit.mergeKey(), after);
        if (merge
                && cursor > 0
                && step.mergeKey() != null
                && step.mergeKey().equals(kept.get(cursor - 1).mergeKey())) {
            kept.set(cursor - 1, step);
        } else {
            kept.add(step);
        }
        return new History(start, kept, kept.size());
    }

    /** Label of the step undo would take back. */
    public Optional<Text> undoLabel() {
        return cursor == 0
                ? Optional.empty()
                : Optional.of(steps.get(cursor - 1).label());
    }

    /** Label of the step redo would bring back. */
    public Optional<Text> redoLabel() {
        return cursor == steps.size()
                ? Optional.empty()
                : Optional.of(steps.get(cursor).label());
    }

    /** One step back, or the same history at its start. */
    public History undone() {
        return cursor == 0 ? this : new History(start, steps, cursor - 1);
    }

    /** One step forward, or the same history at its end. */
    public History redone() {
        return cursor == steps.size() ? this : new History(start, steps, cursor + 1);
    }

    /** Labels of all steps, first to last, those undone as well. */
    public List<Text> labels() {
        return steps.stream().map(Step::label).toList();
    }

    /** How many of the steps are done, 0 to their count. */
    public int done() {
        return cursor;
    }

    /**
     * The history with so many steps done.
     *
     * @param count 0 to the count of steps
     */
    public History at(int count) {
        if (count < 0 || count > steps.size()) {
            throw new IllegalArgumentException("there are " + steps.size() + " steps, not " + count);
        }
        return count == cursor ? this : new History(start, steps, count);
    }

    private Harness harnessAt(int index) {
        return index == 0 ? start : steps.get(index - 1).after();
    }
}
