package org.ohmloom.workbench.desk;

import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.ohmloom.store.FileStamp;
import org.ohmloom.store.HarnessFileException;
import org.ohmloom.workbench.words.Words;

/**
 * Writes documents to their files for all windows, off the event thread. Of one document one save is under way at a time: another
 * asked for meanwhile waits for it and then writes what there is by then, so that the later one is on disk in the end. What is
 * being written is a snapshot; the document may be edited meanwhile, and counts as saved only once its file is whole. Belongs to
 * the event thread; only the writing is done elsewhere.
 */
public final class Saves {
    private static final Words WORDS = Words.of("desk");

    private static final Logger LOG = Logger.getLogger(Saves.class.getName());

    private final Executor writer;
    private final Executor eventThread;
    private final Executor afterAWhile;
    private final Map<Document, Deque<Asked>> queues = new HashMap<>();
    private final Map<Document, List<Runnable>> afterwards = new HashMap<>();
    private final List<Runnable> listeners = new ArrayList<>();

    /**
     * A save that was asked for.
     *
     * @param as      the file it goes to; empty for the one the document lives in
     * @param outcome takes what came of it
     */
    private record Asked(Optional<Path> as, Consumer<Outcome> outcome) {}

    /**
     * What came of a save.
     *
     * @param saved   whether the file has what the document said when it was written
     * @param refused why not; empty also where an earlier save was refused that has said so
     */
    record Outcome(boolean saved, Optional<HarnessFileException> refused) {}

    /**
     * Nothing to save yet.
     *
     * @param writer      runs the writing; a disk that never answers must not hold up what goes to another
     * @param eventThread brings the outcome back
     * @param afterAWhile runs a task on the event thread once a person has waited long for a save
     */
    public Saves(Executor writer, Executor eventThread, Executor afterAWhile) {
        this.writer = writer;
        this.eventThread = eventThread;
        this.afterAWhile = afterAWhile;
    }

    /** Runs a task on the event thread once a person has waited long for a save. */
    Executor afterAWhile() {
        return afterAWhile;
    }

    /** Calls a listener when a document begins or ceases to be saved. */
    void listen(Runnable listener) {
        listeners.add(listener);
    }

    /** Takes a listener away again. */
    void unlisten(Runnable listener) {
        listeners.remove(listener);
    }

    /** Whether a save of the document is under way. */
    public boolean isBusy(Document document) {
        return queues.containsKey(document);
    }

    /** Runs a task once no save of the document is under way: at once when none is. */
    public void afterwards(Document document, Runnable task) {
        if (isBusy(document)) {
            afterwards.computeIfAbsent(document, any -> new ArrayList<>()).add(task);
        } else {
            task.run();
        }
    }

    /**
     * Saves a document.
     *
     * @param as the file to save to; empty for the one it lives in
     */
    void save(Document document, Optional<Path> as, Consumer<Outcome> outcome) {
        boolean idle = !isBusy(document);
        queues.computeIfAbsent(document, any -> new ArrayDeque<>()).add(new Asked(as, outcome));
        if (idle) {
            begin(document);
            tell();
        }
    }

    private void begin(Document document) {
        Document.Writing writing =
                document.writing(queues.get(document).element().as());
        writer.execute(() -> {
            try {
                FileStamp now = writing.write();
                eventThread.execute(() -> written(document, writing, now));
            } catch (HarnessFileException refused) {
                eventThread.execute(() -> refused(document, refused));
            } catch (RuntimeException | OutOfMemoryError | StackOverflowError failed) {
                LOG.log(Level.WARNING, "a save failed", failed);
                HarnessFileException refused =
                        new HarnessFileException(writing.file(), WORDS.text("saves.not-saved", failed));
                eventThread.execute(() -> refused(document, refused));
            }
        });
    }

    private void written(Document document, Document.Writing writing, FileStamp now) {
        document.written(writing, now);
        Deque<Asked> queue = queues.get(document);
        Asked done = queue.remove();
        List<Asked> saved = new ArrayList<>(List.of(done));
        // What waits for what is on disk by now needs no writing more.
        while (!queue.isEmpty()
                && queue.element().as().isEmpty()
                && !document.session().isChanged()) {
            saved.add(queue.remove());
        }
        if (queue.isEmpty()) {
            queues.remove(document);
            tell();
        } else {
            begin(document);
        }
        saved.forEach(each -> each.outcome().accept(new Outcome(true, Optional.empty())));
        settle(document);
    }

    /** One refusal ends what waits behind it too: what was wrong with the disk is said once. */
    private void refused(Document document, HarnessFileException why) {
        Deque<Asked> queue = queues.remove(document);
        tell();
        Asked first = queue.remove();
        queue.forEach(each -> each.outcome().accept(new Outcome(false, Optional.empty())));
        first.outcome().accept(new Outcome(false, Optional.of(why)));
        settle(document);
    }

    private void settle(Document document) {
        if (!isBusy(document)) {
            List<Runnable> tasks = afterwards.remove(document);
            if (tasks != null) {
                tasks.forEach(Runnable::run);
            }
        }
    }

    private void tell() {
        List.copyOf(listeners).forEach(Runnable::run);
    }
}
