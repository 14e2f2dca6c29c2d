package org.ohmloom.workbench.desk;

import java.nio.file.Path;
import java.util.Optional;
import org.ohmloom.edit.Edit;
import org.ohmloom.edit.Session;
import org.ohmloom.model.Harness;
import org.ohmloom.store.FileStamp;
import org.ohmloom.store.HarnessFileException;
import org.ohmloom.store.HarnessFiles;
import org.ohmloom.store.StoredHarness;

/** A harness being worked on, with the file it lives in and what that file was when last read or written. */
public final class Document {

    private final Session session;
    private final String givenName;
    private Optional<FileStamp> stamp;

    private Document(Session session, String givenName, Optional<FileStamp> stamp) {
        this.session = session;
        this.givenName = givenName;
        this.stamp = stamp;
    }

    /**
     * Reads a file.
     *
     * @throws HarnessFileException when it cannot be read; one line says why
     */
    public static Document read(Path file) throws HarnessFileException {
        StoredHarness stored = HarnessFiles.readStored(file);
        return new Document(
                new Session(stored.harness(), Optional.of(file)), nameOf(file), Optional.of(stored.stamp()));
    }

    /** A harness that lives in no file yet. */
    public static Document unsaved(Harness harness, String name) {
        return new Document(new Session(harness, Optional.empty()), name, Optional.empty());
    }

    /**
     * A harness that lives in no file yet and was made of another in one step, which can be undone and is not saved.
     *
     * @param saved what it was before
     * @param step  what the step is called
     */
    public static Document unsaved(Harness saved, String name, String step, Harness made) {
        Document document = unsaved(saved, name);
        document.session().apply(new Whole(step, made));
        return document;
    }

    private record Whole(String label, Harness made) implements Edit {
        @Override
        public Harness apply(Harness before) {
            return made;
        }
    }

    public Session session() {
        return session;
    }

    public Harness harness() {
        return session.current();
    }

    public Optional<Path> file() {
        return session.file();
    }

    /** What people call it: the name of its file. */
    public String name() {
        return file().map(Document::nameOf).orElse(givenName);
    }

    /**
     * Saves it where it lives.
     *
     * @throws HarnessFileException when it cannot be saved or was changed on disk meanwhile; nothing is lost then
     */
    public void save() throws HarnessFileException {
        Path file = file().orElseThrow(() -> new IllegalStateException("it lives in no file yet"));
        write(file, stamp);
    }

    /**
     * Saves it in another file, which it lives in from then on.
     *
     * @throws HarnessFileException when it cannot be saved; nothing is lost then
     */
    void saveAs(Path file) throws HarnessFileException {
        write(file, Optional.empty());
    }

    private void write(Path file, Optional<FileStamp> expected) throws HarnessFileException {
        Harness written = session.current();
        stamp = Optional.of(HarnessFiles.write(file, written, expected));
        session.savedAs(written, file);
    }

    /** The name of a file without folder and ending. */
    public static String nameOf(Path file) {
        String name = String.valueOf(file.getFileName());
        return name.endsWith(HarnessFiles.ENDING)
                ? name.substring(0, name.length() - HarnessFiles.ENDING.length())
                : name;
    }
}
