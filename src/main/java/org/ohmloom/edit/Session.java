package org.ohmloom.edit;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import org.ohmloom.model.Harness;
import org.ohmloom.words.Text;

/**
 * A harness being worked on: the only mutable object below the workbench. Not for use by several threads; listeners are
 * called on the caller's thread.
 */
public final class Session {

    private final List<Listener> listeners = new CopyOnWriteArrayList<>();
    private History history;
    private Harness saved;
    private Optional<Path> file;

    /** Hears of every change of the harness or of its file. */
    @FunctionalInterface
    public interface Listener {
        /** Called after each change; {@code before == after} when only the file or the saved state changed. */
        void changed(Harness before, Harness after);
    }

    /** A session on a harness as it was read from a file, or a new one without a file. */
    public Session(Harness harness, Optional<Path> file) {
        this.history = History.from(harness);
        this.saved = harness;
        this.file = file;
    }

    /** The harness as it is now. */
    public Harness current() {
        return history.current();
    }

    /** The file it was read from or saved to. */
    public Optional<Path> file() {
        return file;
    }

    /** The harness as it was read or saved last. */
    public Harness saved() {
        return saved;
    }

    /** Whether it differs from what is saved; undoing back to the saved state makes it unchanged again. */
    public boolean isChanged() {
        return current() != saved;
    }

    /** Applies an edit as one step. */
    public void apply(Edit edit) {
        move(history.after(edit, true));
    }

    /** Takes back the last step, if there is one. */
    public void undo() {
        move(history.undone());
    }

    /** Brings back the last undone step, if there is one. */
    public void redo() {
        move(history.redone());
    }

    /** Label of the step {@link #undo()} would take back. */
    public Optional<Text> undoLabel() {
        return history.undoLabel();
    }

    /** Label of the step {@link #redo()} would bring back. */
    public Optional<Text> redoLabel() {
        return history.redoLabel();
    }

    /** Labels of all steps, first to last, those undone as well. */
    public List<Text> steps() {
        return history.labels();
    }

    /** How many of the oldest steps are no longer kept, so that the list of them has a bound. */
    public int stepsDropped() {
        return history.dropped();
    }

    /** How many of the steps are done. */
    public int stepsDone() {
        return history.done();
    }

    /** Undoes or redoes until so many steps are done, 0 to their count. */
    public void goTo(int count) {
        move(history.at(count));
    }

    /** Notes that a harness of this session was written to a file. */
    public void savedAs(Harness written, Path to) {
        saved = written;
        file = Optional.of(to);
        tell(current());
    }

    /** Notes that what was saved is gone: the harness counts as changed until it is saved again, whatever is undone. */
    public void savedIsGone() {
        saved = Harness.empty(saved.titleBlock(), saved.rules());
        tell(current());
    }

    /** Adds a listener. */
    public void listen(Listener listener) {
        listeners.add(listener);
    }

    /** Takes a listener away again. */
    public void unlisten(Listener listener) {
        listeners.remove(listener);
    }

    private void move(History changed) {
        if (changed == history) {
            return;
        }
        Harness before = current();
        history = changed;
        tell(before);
    }

    private void tell(Harness before) {
        listeners.forEach(listener -> listener.changed(before, current()));
    }
}
