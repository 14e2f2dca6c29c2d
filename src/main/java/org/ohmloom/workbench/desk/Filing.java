package org.ohmloom.workbench.desk;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import org.ohmloom.store.FileChangedException;
import org.ohmloom.store.HarnessFileException;
import org.ohmloom.store.HarnessFiles;
import org.ohmloom.workbench.settings.PreferenceStore;
import org.ohmloom.workbench.settings.Preferences;
import org.ohmloom.workbench.words.Words;

/**
 * Opens, saves and closes documents, asking what has to be asked. Files are read off the event thread; everything else
 * belongs to it.
 */
public final class Filing {

    /** What folders are remembered for. */
    static final String HARNESSES = "harness";

    private final Desk desk;
    private final Prompts prompts;
    private final PreferenceStore preferences;
    private final Executor reader;
    private final Executor eventThread;
    private final OpenDocuments documents;
    private final DiskWatch watch;
    private Runnable compare = () -> {};

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
        this.watch = new DiskWatch(desk, prompts, reader, eventThread);
        documents.add(desk);
    }

    /** Whether the file of the document is still what it was. */
    public DiskWatch watch() {
        return watch;
    }

    /** Shows what differs from the file by this when a person asks for it. */
    public void compareBy(Runnable comparing) {
        compare = comparing;
    }

    /** Puts a document on the desk that lies on that of another window: both show the same one from then on. */
    public void share(Document open) {
        put(open, Words.of("windows").get("shared", open.name()));
    }

    /** Whether the document lies on the desk of another window too. */
    public boolean isElsewhere() {
        return documents.isElsewhere(desk);
    }

    /** Leaves the document as it is and counts the desk out: its window is gone. */
    public void leave() {
        documents.remove(desk);
        desk.close();
    }

    /** Asks which file to open and opens it. */
    public void open() {
        if (mayLeave()) {
            prompts.fileToOpen(folder()).ifPresent(this::read);
        }
    }

    /** Opens a file after asking about changes that are not saved. */
    public void open(Path file) {
        if (mayLeave()) {
            read(file);
        }
    }

    /** Opens an example after asking about changes that are not saved. */
    public void openExample(String name) {
        if (mayLeave()) {
            load(name, () -> Examples.open(name), opened -> {}, () -> {});
        }
    }

    /** Puts a document that begins here on the desk; the caller has asked whether the one there may be left. */
    public void put(Document begun, String message) {
        desk.open(begun);
        desk.say(message);
    }

    /** Saves; asks where when the document lives in no file yet. Whether it is saved now. */
    public boolean save() {
        Optional<Document> document = desk.document();
        if (document.isEmpty()) {
            return false;
        }
        if (desk.isSideCopy()) {
            return settleSideCopy() && save();
        }
        if (document.get().file().isEmpty()) {
            return saveAs();
        }
        return write(document.get(), document.get()::save);
    }

    /** Asks where to save and saves there. Whether it is saved now. */
    public boolean saveAs() {
        if (!settleSideCopy()) {
            return false;
        }
        Optional<Document> document = desk.document();
        Optional<Path> target = document.flatMap(open -> prompts.fileToSave(folder(), open.name()));
        if (document.isEmpty() || target.isEmpty()) {
            return false;
        }
        Path file = withEnding(target.get());
        return write(document.get(), () -> document.get().saveAs(file));
    }

    /** Clears the desk after asking about changes that are not saved. Whether it is clear now. */
    public boolean close() {
        if (!mayLeave()) {
            return false;
        }
        desk.close();
        return true;
    }

    /** Whether the document may be left: it has no changes, they were saved, or they are to be discarded. */
    public boolean mayLeave() {
        if (!settleSideCopy()) {
            return false;
        }
        Optional<Document> document = desk.document();
        if (document.isEmpty() || !document.get().session().isChanged() || isElsewhere()) {
            return true;
        }
        return switch (prompts.unsavedChanges(document.get().name())) {
            case SAVE -> save();
            case DISCARD -> true;
            case CANCEL -> false;
        };
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
        Optional<Document> elsewhere = documents.of(full, desk);
        if (elsewhere.isPresent()) {
            share(elsewhere.get());
            remember(full);
            return;
        }
        load(
                Document.nameOf(full),
                () -> Document.read(full),
                opened -> remember(full),
                () -> preferences.change(before -> before.withoutRecent(full)));
    }

    /** Reads a document. */
    @FunctionalInterface
    private interface Reading {
        Document read() throws HarnessFileException;
    }

    /** Writes a document. */
    @FunctionalInterface
    private interface Writing {
        void write() throws HarnessFileException;
    }

    private void load(String name, Reading reading, Consumer<Document> opened, Runnable refused) {
        desk.say(Words.of("windows").get("reading", name));
        reader.execute(() -> {
            try {
                Document document = reading.read();
                eventThread.execute(() -> {
                    opened.accept(document);
                    desk.open(document);
                    desk.say("Opened " + document.name());
                });
            } catch (HarnessFileException unreadable) {
                eventThread.execute(() -> {
                    desk.say("");
                    refused.run();
                    prompts.problem("The file was not opened", unreadable.getMessage());
                });
            }
        });
    }

    private boolean write(Document document, Writing writing) {
        try {
            writing.write();
        } catch (FileChangedException changed) {
            return switch (prompts.changedOnDisk(document.name(), changed.getMessage())) {
                case REPLACE -> {
                    document.standAgainst(changed.found());
                    yield write(document, document::save);
                }
                case SAVE_UNDER_ANOTHER_NAME -> saveAs();
                case READ_AGAIN -> {
                    watch.readAgain();
                    yield false;
                }
                case COMPARE -> {
                    compare.run();
                    yield false;
                }
                case CANCEL -> false;
            };
        } catch (HarnessFileException refused) {
            prompts.problem("The file was not saved", refused.getMessage());
            return false;
        }
        document.file().ifPresent(this::remember);
        desk.say("Saved " + document.name());
        return true;
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
