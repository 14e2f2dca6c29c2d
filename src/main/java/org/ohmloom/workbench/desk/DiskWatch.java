package org.ohmloom.workbench.desk;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import org.ohmloom.store.FileStamp;
import org.ohmloom.store.HarnessFileException;
import org.ohmloom.store.HarnessFiles;
import org.ohmloom.store.StoredHarness;
import org.ohmloom.workbench.words.Words;

/**
 * Whether the file of the document on a desk is still what it was when it was read or written. Looked at when it is asked
 * to, off the event thread; everything else belongs to it.
 */
public final class DiskWatch {
    private static final Words WORDS = Words.of("desk");

    /** How the file stands. */
    public enum Standing {
        /** As it was, or nobody has looked yet, or the document lives in no file. */
        SAME,
        /** Somebody else wrote to it. */
        CHANGED,
        /** It is not there any more. */
        GONE
    }

    private final Desk desk;
    private final Prompts prompts;
    private final Executor reader;
    private final Executor eventThread;
    private final Saves saves;
    private final List<Runnable> listeners = new ArrayList<>();
    private Standing standing = Standing.SAME;
    private Optional<Found> latest = Optional.empty();
    private Optional<Found> accepted = Optional.empty();
    private Optional<Document> looking = Optional.empty();

    /**
     * What was found.
     *
     * @param document the document
     * @param expected what its file was
     * @param now      what it is; empty when it is gone
     */
    private record Found(Document document, FileStamp expected, Optional<FileStamp> now) {}

    /**
     * A watch.
     *
     * @param services prompts, what reads files and what writes them
     */
    DiskWatch(Desk desk, Services services) {
        this.desk = desk;
        this.prompts = services.prompts();
        this.reader = services.reader();
        this.eventThread = services.eventThread();
        this.saves = services.saves();
        desk.listen(topic -> {
            if (topic == Topic.DOCUMENT) {
                settle();
            }
        });
    }

    /** Calls a listener when the standing changes. */
    public void listen(Runnable listener) {
        listeners.add(listener);
    }

    public Standing standing() {
        return standing;
    }

    /**
     * Looks at the file; listeners hear of it when it stands otherwise. A side copy lives in no file, and while it is being saved
     * it is no wonder that the file changes. A look under way, maybe at a folder out of reach, is enough.
     */
    public void look() {
        Optional<Path> file = desk.document()
                .filter(open -> !saves.isBusy(open) && !looking.equals(Optional.of(open)))
                .flatMap(Document::file);
        Optional<FileStamp> expected = desk.document().flatMap(Document::stamp);
        if (file.isPresent() && expected.isPresent()) {
            Document open = desk.document().orElseThrow();
            looking = Optional.of(open);
            reader.execute(() -> {
                Found found = new Found(open, expected.get(), HarnessFiles.stamp(file.get(), expected.get()));
                eventThread.execute(() -> {
                    looking = looking.filter(each -> each != open);
                    if (!saves.isBusy(open)) {
                        latest = Optional.of(found);
                        settle();
                    }
                });
            });
        }
    }

    /** Reads the file again as one step that can be undone; what was edited meanwhile is behind that step. */
    public void readAgain() {
        desk.document().ifPresent(open -> open.file()
                .ifPresent(file -> saves.afterwards(open, () -> reader.execute(() -> readAgain(open, file)))));
    }

    private void readAgain(Document open, Path file) {
        try {
            StoredHarness stored = HarnessFiles.readStored(file);
            eventThread.execute(() -> {
                if (desk.document().equals(Optional.of(open))) {
                    open.takeFromDisk(stored);
                }
            });
        } catch (HarnessFileException unreadable) {
            eventThread.execute(
                    () -> prompts.problem(WORDS.get("disk-watch.the-file-was-not"), Words.said(unreadable)));
        }
    }

    /** Keeps what is in the window: it counts as changed, and saving it replaces what is on disk now. */
    public void keepMine() {
        if (standing != Standing.SAME) {
            Found found = latest.orElseThrow();
            accepted = latest;
            found.document().standAgainst(found.now().orElse(found.expected()));
        }
    }

    private void settle() {
        Optional<Found> holds = latest.filter(found -> desk.document().equals(Optional.of(found.document())))
                .filter(found -> found.document().stamp().equals(Optional.of(found.expected())))
                .filter(found -> !accepted.equals(Optional.of(found)));
        Standing now = holds.map(DiskWatch::standing).orElse(Standing.SAME);
        if (now != standing) {
            standing = now;
            listeners.forEach(Runnable::run);
        }
    }

    private static Standing standing(Found found) {
        return found.now()
                .map(stamp -> stamp.sameContent(found.expected()) ? Standing.SAME : Standing.CHANGED)
                .orElse(Standing.GONE);
    }
}
