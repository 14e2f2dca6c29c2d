package org.ohmloom.store;

import java.nio.file.Path;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;

/** Thrown when a file was changed on disk by somebody else since it was read; it is left as it is. */
public final class FileChangedException extends HarnessFileException {
    private static final long serialVersionUID = 1L;

    private final transient FileStamp found;

    FileChangedException(Path path, FileStamp found) {
        super(
                path,
                "the file was changed on disk at %s since it was read and was not overwritten; read it again or save under another name",
                DateTimeFormatter.ISO_INSTANT.format(
                        found.modified().atOffset(ZoneOffset.UTC).truncatedTo(ChronoUnit.SECONDS)));
        this.found = found;
    }

    /** What is on disk now. */
    public FileStamp found() {
        return found;
    }
}
