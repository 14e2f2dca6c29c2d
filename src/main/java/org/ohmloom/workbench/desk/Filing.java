package org.ohmloom.workbench.desk;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import org.ohmloom.model.Harness;
import org.ohmloom.store.FileChangedException;
import org.ohmloom.store.HarnessFileException;
import org.ohmloom.store.HarnessFiles;
import org.ohmloom.workbench.settings.PreferenceStore;
import org.ohmloom.workbench.settings.Preferences;
import org.ohmloom.workbench.words.Moment;
import org.ohmloom.workbench.words.Words;

/**
 * Opens, saves and closes documents, asking what has to be asked. Files are read and written off the event thread; everything else
 * belongs to it. Who asks whether something is saved or may be left is answered on it, at once or when a save has ended.
 */
public final class Filing {
    private static final Words WORDS = Words.of("desk");

    /** What folders are remembered for. */
    static final String HARNESSES = "harness";

    private final Desk desk;
    private final Prompts prompts;
    private final PreferenceStore preferences;
    private final Executor reader;
    private final Executor eventThread;
    private final OpenDocuments documents;
    private final Saves saves;
    private final DiskWatch watch;
    private final List<Runnable> listeners = new ArrayList<>();
    private final Runnable hearSaves = this::tell;
    private Runnable compare = () -> {};
    private Optional<Asked> reading = Optional.empty();
    private boolean leaving;
    private boolean left;

    /**
     * Filing at a desk.
     *
     * @param services prompts, preferences, what reads files and what lies on the desks of other windows
     */
    public Filing(Desk desk, Services services) {
        this.desk = desk;
        this.prompts = services.prompts();
        this.preferences = services.preferences();
        this.reader = services.reader();
        this.eventThread = services.eventThread();
        this.documents = services.documents();
        this.saves = services.saves();
        this.watch = new DiskWatch(desk, services);
        documents.add(desk);
        saves.listen(hearSaves);
    }

    /** Whether the file of the document is still what it was. */
    public DiskWatch watch() {
        return watch;
    }

    /** Calls a listener when what is said of {@link #progress()} changes. */
    public void listen(Runnable listener) {
        listeners.add(listener);
    }

    /** What is being read or written for this desk, in words; empty when nothing is. */
    public Optional<String> progress() {
        Words words = Words.of("windows");
        return reading.map(asked -> words.get("reading", asked.name()))
                .or(() -> lying().filter(saves::isBusy).map(open -> words.get("saving", open.name())));
    }

    /** What lies on the desk, of a side copy its original. */
    private Optional<Document> lying() {
        return desk.document().map(open -> open.original().orElse(open));
    }

    private void tell() {
        listeners.forEach(Runnable::run);
    }

    /** Shows what differs from the file by this when a person asks for it. */
    public void compareBy(Runnable comparing) {
        compare = comparing;
    }

    /** Puts a document on the desk that lies on that of another window: both show the same one from then on. */
    public void share(Document open) {
        put(open, documents.resultsOf(open, desk), Words.of("windows").get("shared", open.name()));
    }

    /** Whether the document lies on the desk of another window too. */
    public boolean isElsewhere() {
        return documents.isElsewhere(desk);
    }

    /** Leaves the document as it is and counts the desk out: its window is gone. */
    public void leave() {
        left = true;
        saves.unlisten(hearSaves);
        documents.remove(desk);
        desk.close();
    }

    /** Asks which file to open and opens it. */
    public void open() {
        ifLeft(() -> prompts.fileToOpen(folder()).ifPresent(this::read));
    }

    /** Opens a file after asking about changes that are not saved. */
    public void open(Path file) {
        ifLeft(() -> read(file));
    }

    /** Opens an example after asking about changes that are not saved. */
    public void openExample(String name) {
        ifLeft(() -> load(name, () -> Examples.open(name), opened -> {}, () -> {}));
    }

    /** Runs a task once the document may be left; not at all when a person wants to stay. */
    public void ifLeft(Runnable task) {
        mayLeave(may -> {
            if (may) {
                task.run();
            }
        });
    }

    /** Puts a document that begins here on the desk; the caller has asked whether the one there may be left. */
    public void put(Document begun, String message) {
        put(begun, Results.NONE, message);
    }

    private void put(Document begun, Results known, String message) {
        reading = Optional.empty();
        desk.open(begun, known);
        desk.say(message);
        tell();
    }

    /** Saves; asks where when the document lives in no file yet. */
    public void save() {
        save(saved -> {});
    }

    /**
     * Saves; asks where when the document lives in no file yet.
     *
     * @param answer hears whether it is saved
     */
    public void save(Consumer<Boolean> answer) {
        if (!settleSideCopy() || desk.document().isEmpty()) {
            answer.accept(false);
            return;
        }
        Document document = desk.document().get();
        if (document.file().isPresent()) {
            write(document, Optional.empty(), answer);
        } else if (saves.isBusy(document)) {
            // It is on its way to its first file: where that is has been asked already.
            saves.afterwards(document, () -> saveAgain(document, answer));
        } else {
            saveAs(answer);
        }
    }

    private void saveAgain(Document document, Consumer<Boolean> answer) {
        if (document.file().isEmpty()) {
            answer.accept(false);
        } else if (document.session().isChanged()) {
            write(document, Optional.empty(), answer);
        } else {
            answer.accept(true);
        }
    }

    /** Asks where to save and saves there. */
    public void saveAs() {
        saveAs(saved -> {});
    }

    /**
     * Asks where to save and saves there.
     *
     * @param answer hears whether it is saved
     */
    public void saveAs(Consumer<Boolean> answer) {
        Optional<Document> document = settleSideCopy() ? desk.document() : Optional.empty();
        Optional<Path> target = document.flatMap(open -> prompts.fileToSave(folder(), open.name()));
        if (document.isPresent() && target.isPresent()) {
            write(document.get(), target.map(Filing::withEnding), answer);
        } else {
            answer.accept(false);
        }
    }

    /** Clears the desk after asking about changes that are not saved. */
    public void close() {
        close(closed -> {});
    }

    /**
     * Clears the desk after asking about changes that are not saved.
     *
     * @param answer hears whether it is clear
     */
    public void close(Consumer<Boolean> answer) {
        mayLeave(may -> {
            if (may) {
                desk.close();
            }
            answer.accept(may);
        });
    }

    /**
     * Asks whether the document may be left: it has no changes, they were saved, or they are to be discarded. A save under way is
     * waited for, and whether to wait longer is asked when it takes long; asked again meanwhile, the answer is no.
     *
     * @param answer hears it
     */
    public void mayLeave(Consumer<Boolean> answer) {
        if (leaving || !settleSideCopy()) {
            answer.accept(false);
            return;
        }
        Optional<Document> document = desk.document();
        if (document.filter(open -> !isElsewhere() && saves.isBusy(open)).isPresent()) {
            WaitingForSave waiting = waiting(document.get(), answer);
            saves.afterwards(
                    document.get(),
                    () -> waiting.ended(() -> {
                        leaving = false;
                        mayLeave(answer);
                    }));
        } else if (document.isEmpty() || !document.get().session().isChanged() || isElsewhere()) {
            answer.accept(true);
        } else {
            switch (prompts.unsavedChanges(document.get().name())) {
                case SAVE -> saveAndLeave(document.get(), answer);
                case DISCARD -> answer.accept(true);
                case CANCEL -> answer.accept(false);
            }
        }
    }

    private void saveAndLeave(Document document, Consumer<Boolean> answer) {
        WaitingForSave waiting = waiting(document, answer);
        save(saved -> waiting.ended(() -> {
            leaving = false;
            if (saved) {
                // It may have been edited while it was written.
                mayLeave(answer);
            } else {
                answer.accept(false);
            }
        }));
    }

    private WaitingForSave waiting(Document document, Consumer<Boolean> answer) {
        leaving = true;
        return new WaitingForSave(prompts, saves.afterAWhile(), () -> saves.isBusy(document), document.name(), may -> {
            leaving = false;
            answer.accept(may);
        });
    }

    /** Goes back to the original after asking what becomes of the side copy. Whether no side copy is on the desk now. */
    private boolean settleSideCopy() {
        Optional<Document> copy = desk.document().filter(open -> desk.isSideCopy());
        if (copy.isEmpty()) {
            return true;
        }
        if (!copy.get().session().isChanged()) {
            desk.dropSideCopy();
            return true;
        }
        return switch (prompts.sideCopy(copy.get())) {
            case KEEP -> {
                desk.keepSideCopy();
                yield true;
            }
            case DROP -> {
                desk.dropSideCopy();
                yield true;
            }
            case CANCEL -> false;
        };
    }

    private void read(Path file) {
        Path full = file.toAbsolutePath().normalize();
        Map<Path, Document> others = documents.byFile(desk);
        if (others.containsKey(full)) {
            share(others.get(full));
            remember(full);
            return;
        }
        load(
                Document.nameOf(full),
                () -> {
                    Optional<Document> known = OpenDocuments.under(full, others);
                    return known.isPresent() ? known.get() : Document.read(full);
                },
                opened -> remember(full),
                () -> preferences.change(before -> before.withoutRecent(full)));
    }

    /** Reads a document. */
    @FunctionalInterface
    private interface Reading {
        Document read() throws HarnessFileException;
    }

    /** Something to read that was asked for; of two by one name each is its own. */
    private record Asked(String name) {}

    /**
     * Reads a document and puts it on the desk. The window is used meanwhile: what is asked for last is opened, and what was edited
     * since is asked about before it makes room.
     */
    private void load(String name, Reading how, Consumer<Document> opened, Runnable refused) {
        Asked mine = new Asked(name);
        Optional<Harness> before = desk.harness();
        reading = Optional.of(mine);
        tell();
        reader.execute(() -> {
            try {
                Document document = how.read();
                eventThread.execute(() -> {
                    if (isWanted(mine)) {
                        Runnable open = () -> {
                            opened.accept(document);
                            if (documents.lies(document, desk)) {
                                share(document);
                            } else {
                                put(document, WORDS.get("filing.opened", document.name()));
                            }
                        };
                        if (before.orElse(null) == desk.harness().orElse(null)) {
                            open.run();
                        } else {
                            ifLeft(open);
                        }
                    }
                });
            } catch (HarnessFileException unreadable) {
                eventThread.execute(() -> {
                    if (isWanted(mine)) {
                        refused.run();
                        prompts.problem(WORDS.get("filing.the-file-was-not"), Words.said(unreadable));
                    }
                });
            }
        });
    }

    /** Whether what was read is still what was asked for last, in a window that is still there. */
    private boolean isWanted(Asked read) {
        if (left || reading.orElse(null) != read) {
            return false;
        }
        reading = Optional.empty();
        tell();
        return true;
    }

    private void write(Document document, Optional<Path> as, Consumer<Boolean> answer) {
        saves.save(document, as, outcome -> {
            if (outcome.saved()) {
                document.file().ifPresent(this::remember);
                desk.say(Words.of("windows").get("saved", document.name()));
                answer.accept(true);
            } else if (outcome.refused().isEmpty()) {
                answer.accept(false);
            } else if (outcome.refused().get() instanceof FileChangedException changed) {
                settle(document, changed, answer);
            } else {
                prompts.problem(
                        WORDS.get("filing.the-file-was-not-saved"),
                        Words.said(outcome.refused().get()));
                answer.accept(false);
            }
        });
    }

    private void settle(Document document, FileChangedException changed, Consumer<Boolean> answer) {
        String sentence = Words.of("disk")
                .get(
                        "save",
                        document.file().map(Path::toString).orElse(document.name()),
                        Moment.text(changed.found().modified()));
        switch (prompts.changedOnDisk(document.name(), sentence)) {
            case REPLACE -> {
                document.standAgainst(changed.found());
                write(document, Optional.empty(), answer);
            }
            case SAVE_UNDER_ANOTHER_NAME -> saveAs(answer);
            case READ_AGAIN -> {
                watch.readAgain();
                answer.accept(false);
            }
            case COMPARE -> {
                compare.run();
                answer.accept(false);
            }
            case CANCEL -> answer.accept(false);
        }
    }

    private void remember(Path file) {
        preferences.change(before -> {
            Preferences with = before.withRecent(file);
            Path folder = file.getParent();
            return folder == null ? with : with.withFolder(HARNESSES, folder);
        });
    }

    private Optional<Path> folder() {
        return Optional.ofNullable(preferences.now().folders().get(HARNESSES));
    }

    private static Path withEnding(Path file) {
        String name = String.valueOf(file.getFileName());
        return name.endsWith(HarnessFiles.ENDING) ? file : file.resolveSibling(name + HarnessFiles.ENDING);
    }
}
