package org.ohmloom.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Register;
import org.ohmloom.words.Text;

/**
 * Harnesses as they were after each step, with a cursor. Undo goes back one snapshot; a new step after undo drops what
 * was undone. Immutable: each operation gives another history.
 *
 * <p>Snapshots share every register of elements that a step left alone. Of {@value #MOST_STEPS} steps, or of steps that have registers
 * of {@value #MOST_ELEMENTS} elements of their own, the oldest are dropped: what is kept stays within some 100 MB whatever the harness
 * and however long one edits. {@value #LEAST_STEPS} steps are kept in any case.
 */
public final class History {

    static final int MOST_STEPS = 10_000;
    static final int MOST_ELEMENTS = 2_000_000;
    static final int LEAST_STEPS = 50;

    private final List<Step> steps;
    private final int cursor;
    private final Harness start;
    private final int dropped;

    /**
     * One recorded step.
     *
     * @param own elements of the registers that its snapshot does not share with the one before
     */
    private record Step(Text label, @Nullable Object mergeKey, Harness after, int own) {}

    private History(Harness start, List<Step> steps, int cursor, int dropped) {
        this.start = start;
        this.steps = List.copyOf(steps);
        this.cursor = cursor;
        this.dropped = dropped;
    }

    /** A history that starts at the harness. */
    public static History from(Harness start) {
        return new History(start, List.of(), 0, 0);
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
        Object mergeKey = edit.mergeKey();
        boolean joins = merge
                && cursor > 0
                && mergeKey != null
                && mergeKey.equals(kept.get(cursor - 1).mergeKey());
        if (joins) {
            kept.remove(cursor - 1);
        }
        kept.add(new Step(edit.label(), mergeKey, after, own(harnessAt(kept.size()), after)));
        int over = over(kept);
        Harness oldest = over == 0 ? start : kept.get(over - 1).after();
        return new History(oldest, kept.subList(over, kept.size()), kept.size() - over, dropped + over);
    }

    private static int own(Harness before, Harness after) {
        List<? extends Register<?, ?>> old = before.registers();
        List<? extends Register<?, ?>> now = after.registers();
        return IntStream.range(0, now.size())
                .filter(k -> now.get(k) != old.get(k))
                .map(k -> now.get(k).size())
                .sum();
    }

    /** How many of the oldest steps are too many. */
    private static int over(List<Step> steps) {
        int over = Math.max(0, steps.size() - MOST_STEPS);
        long elements = steps.stream().skip(over).mapToLong(Step::own).sum();
        while (elements > MOST_ELEMENTS && steps.size() - over > LEAST_STEPS) {
            elements -= steps.get(over).own();
            over++;
        }
        return over;
    }

    /** How many of the oldest steps are no longer kept. */
    public int dropped() {
        return dropped;
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
        return cursor == 0 ? this : new History(start, steps, cursor - 1, dropped);
    }

    /** One step forward, or the same history at its end. */
    public History redone() {
        return cursor == steps.size() ? this : new History(start, steps, cursor + 1, dropped);
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
        return count == cursor ? this : new History(start, steps, count, dropped);
    }

    private Harness harnessAt(int index) {
        return index == 0 ? start : steps.get(index - 1).after();
    }
}
