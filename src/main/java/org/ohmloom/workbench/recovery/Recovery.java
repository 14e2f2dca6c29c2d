package org.ohmloom.workbench.recovery;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import org.ohmloom.model.Harness;
import org.ohmloom.store.HarnessFileException;
import org.ohmloom.store.HarnessFiles;
import org.ohmloom.store.RecoveryFolder;
import org.ohmloom.store.RecoverySnapshot;
import org.ohmloom.workbench.desk.Document;
import org.ohmloom.workbench.words.Words;

/** Offers what a stopped program has left: only what differs from its file, and never over it. */
public final class Recovery {

    /** What to do with a snapshot. */
    public enum Answer {
        /** Open it as a copy that lives in no file. */
        RESTORE,
        /** The same, and show what differs from the file. */
        COMPARE,
        /** Forget it. */
        DISCARD,
        /** Ask again at the next start. */
        LATER
    }

    /** Asks a person. */
    @FunctionalInterface
    public interface Question {
        Answer ask(RecoverySnapshot snapshot, long sizeBytes);
    }

    private final RecoveryFolder folder;
    private final Executor worker;
    private final Executor eventThread;

    /**
     * Recovery from a folder.
     *
     * @param worker      reads and compares files
     * @param eventThread brings the question up
     */
    public Recovery(RecoveryFolder folder, Executor worker, Executor eventThread) {
        this.folder = folder;
        this.worker = worker;
        this.eventThread = eventThread;
    }

    /**
     * Looks for snapshots and asks about each until one is restored; what two windows kept of one harness is asked about once.
     *
     * @param open    puts a restored document on the desk
     * @param compare shows what differs from the saved state
     * @param failed  says in a sentence what did not work
     */
    public void offer(Question question, Consumer<Document> open, Runnable compare, Consumer<String> failed) {
        worker.execute(() -> {
            List<RecoverySnapshot> left = new ArrayList<>();
            for (RecoverySnapshot each : folder.left()) {
                if (folder.differs(each) && left.stream().noneMatch(later -> folder.isSame(later, each))) {
                    left.add(each);
                } else {
                    folder.forget(each.key());
                }
            }
            eventThread.execute(() -> ask(left, question, open, compare, failed));
        });
    }

    private void ask(
            List<RecoverySnapshot> left,
            Question question,
            Consumer<Document> open,
            Runnable compare,
            Consumer<String> failed) {
        for (RecoverySnapshot each : left) {
            Answer answer = question.ask(each, folder.sizeBytes(each));
            switch (answer) {
                case DISCARD -> folder.forget(each.key());
                case LATER -> {}
                case RESTORE, COMPARE -> {
                    worker.execute(() -> restore(each, open, answer == Answer.COMPARE ? compare : () -> {}, failed));
                    return;
                }
            }
        }
    }

    private void restore(RecoverySnapshot each, Consumer<Document> open, Runnable then, Consumer<String> failed) {
        try {
            Document copy = restored(each);
            eventThread.execute(() -> {
                open.accept(copy);
                worker.execute(() -> folder.setAside(each));
                then.run();
            });
        } catch (HarnessFileException unreadable) {
            eventThread.execute(() -> failed.accept(Words.said(unreadable)));
        }
    }

    /** A copy that lives in no file; what is in the file counts as saved, so that the difference can be seen and undone. */
    private Document restored(RecoverySnapshot snapshot) throws HarnessFileException {
        Words words = Words.of("recovery");
        Harness harness = folder.read(snapshot);
        return Document.unsaved(
                saved(snapshot).orElseGet(() -> Harness.empty(harness.titleBlock(), harness.rules())),
                words.get("copy", snapshot.name()),
                words.text("edit"),
                harness);
    }

    private static Optional<Harness> saved(RecoverySnapshot snapshot) {
        return snapshot.file().flatMap(file -> {
            try {
                return Optional.of(HarnessFiles.read(file));
            } catch (HarnessFileException gone) {
                return Optional.empty();
            }
        });
    }
}
