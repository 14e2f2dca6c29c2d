package org.ohmloom.workbench.desk;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.ohmloom.edit.Edit;
import org.ohmloom.edit.Session;
import org.ohmloom.model.Harness;
import org.ohmloom.store.FileStamp;
import org.ohmloom.store.HarnessFileException;
import org.ohmloom.store.HarnessFiles;
import org.ohmloom.store.StoredHarness;
import org.ohmloom.words.Text;
import org.ohmloom.workbench.words.Words;

/** A harness being worked on, with the file it lives in and what that file was when last read or written. */
public final class Document {

    private final Session session;
    private final String givenName;
    private final Optional<Document> original;
    private Optional<FileStamp> stamp;

    private Document(Session session, String givenName, Optional<FileStamp> stamp, Optional<Document> original) {
        this.session = session;
        this.givenName = givenName;
        this.stamp = stamp;
        this.original = original;
    }

    /**
     * Reads a file.
     *
     * @throws HarnessFileException when it cannot be read; one line says why
     */
    public static Document read(Path file) throws HarnessFileException {
        StoredHarness stored = HarnessFiles.readStored(file);
        return new Document(
                new Session(stored.harness(), Optional.of(file)),
                nameOf(file),
                Optional.of(stored.stamp()),
                Optional.empty());
    }

    /** A harness that lives in no file yet. */
    public static Document unsaved(Harness harness, String name) {
        return new Document(new Session(harness, Optional.empty()), name, Optional.empty(), Optional.empty());
    }

    /**
     * A harness that lives in no file yet and was made of another in one step, which can be undone and is not saved.
     *
     * @param saved what it was before
     * @param step  what the step is called
     */
    public static Document unsaved(Harness saved, String name, Text step, Harness made) {
        Document document = unsaved(saved, name);
        document.session().apply(new Whole(step, made));
        return document;
    }

    /**
     * A copy to try changes on. It lives in no file, has changes of its own that can be undone, and leaves this document
     * alone until {@link #keepInOriginal} is asked for.
     */
    public Document sideCopy() {
        return new Document(
                new Session(harness(), Optional.empty()),
                Words.of("side-copy").get("name", name()),
                Optional.empty(),
                Optional.of(this));
    }

    /** The document this is a side copy of; empty for any other. */
    public Optional<Document> original() {
        return original;
    }

    /** Whether this is a side copy and the original still says what it said when the copy was made. */
    public boolean canBeKept() {
        return original.filter(from -> from.harness() == session.saved()).isPresent();
    }

    /**
     * Puts what this side copy says into its original as one step that can be undone, named after what was done here.
     *
     * @throws IllegalStateException when it is no side copy, or the original has changed since
     */
    void keepInOriginal() {
        if (!canBeKept()) {
            throw new IllegalStateException("there is no original as it was when the copy was made");
        }
        if (session.isChanged()) {
            List<Text> done = session.steps().subList(0, session.stepsDone());
            Words words = Words.of("side-copy");
            Text label = done.size() == 1
                    ? words.text("kept.one", done.get(0))
                    : words.text("kept.more", done.get(0), String.valueOf(done.size() - 1));
            original.orElseThrow().session().apply(new Whole(label, harness()));
        }
    }

    /** The file beside which tables of the builder's own may lie: its own, or that of the original of a side copy. */
    public Optional<Path> tablesBeside() {
        return original.map(Document::tablesBeside).orElse(file());
    }

    private record Whole(Text label, Harness made) implements Edit {
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
     * What is to be written to a file.
     *
     * @param harness  the harness as it was when saving was asked for
     * @param file     the file
     * @param expected what the file has to be; empty where nothing is compared
     */
    record Writing(Harness harness, Path file, Optional<FileStamp> expected) {

        /**
         * Writes it. Safe on any thread.
         *
         * @throws HarnessFileException when it cannot be written or the file was changed meanwhile; nothing is lost then
         */
        FileStamp write() throws HarnessFileException {
            return HarnessFiles.write(file, harness, expected);
        }
    }

    /**
     * This document as it is now, to be written where it lives or to another file.
     *
     * @throws IllegalStateException when it lives in no file and none is named
     */
    Writing writing(Optional<Path> as) {
        return as.map(other -> new Writing(harness(), other, Optional.empty()))
                .orElseGet(() -> new Writing(
                        harness(),
                        file().orElseThrow(() -> new IllegalStateException("it lives in no file yet")),
                        stamp));
    }

    /** It was written, and lives in that file from now on; what was edited meanwhile is not saved. */
    void written(Writing writing, FileStamp now) {
        stamp = Optional.of(now);
        session.savedAs(writing.harness(), writing.file());
    }

    /** What its file was when it was read or written last; empty when it lives in none. */
    Optional<FileStamp> stamp() {
        return stamp;
    }

    /** Takes over what is on disk as one step that can be undone, and counts as saved. */
    void takeFromDisk(StoredHarness stored) {
        session.apply(new Whole(Words.of("disk").text("step"), stored.harness()));
        stamp = Optional.of(stored.stamp());
        session.savedAs(stored.harness(), file().orElseThrow());
    }

    /** Counts as changed against what is on disk; saving replaces just that. */
    void standAgainst(FileStamp onDisk) {
        stamp = Optional.of(onDisk);
        session.savedIsGone();
    }

    /** The name of a file without folder and ending. */
    public static String nameOf(Path file) {
        String name = String.valueOf(file.getFileName());
        return name.endsWith(HarnessFiles.ENDING)
                ? name.substring(0, name.length() - HarnessFiles.ENDING.length())
                : name;
    }
}
