package org.ohmloom.store;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.Optional;
import org.ohmloom.model.Harness;
import org.ohmloom.words.Refusals;

/** Reads and saves harness files, {@code *.harness.json}. */
public final class HarnessFiles {

    /** The ending of harness files. */
    public static final String ENDING = ".harness.json";

    /** The largest file that is read, bytes; 20,000 wires need about 6 million. */
    public static final int LARGEST_BYTES = 32 * 1024 * 1024;

    private static final char BYTE_ORDER_MARK = '\uFEFF';

    private HarnessFiles() {}

    /**
     * Reads a file.
     *
     * @throws HarnessFileException when it is not there, cannot be read or is not a harness; one line says why
     */
    public static Harness read(Path path) throws HarnessFileException {
        return readStored(path).harness();
    }

    /**
     * Reads a file, with the stamp that saving it again takes.
     *
     * @throws HarnessFileException when it is not there, cannot be read or is not a harness; one line says why
     */
    public static StoredHarness readStored(Path path) throws HarnessFileException {
        byte[] content;
        FileTime modified;
        try {
            if (Files.isDirectory(path)) {
                throw new HarnessFileException(path, "this is a folder; a harness file is needed");
            }
            modified = Files.getLastModifiedTime(path);
            try (InputStream in = Files.newInputStream(path)) {
                content = in.readNBytes(LARGEST_BYTES + 1);
            }
        } catch (IOException failed) {
            throw new HarnessFileException(path, DiskProblem.reading(failed));
        }
        if (content.length > LARGEST_BYTES) {
            throw new HarnessFileException(
                    path, "the file is larger than %s MB; no harness needs that", LARGEST_BYTES / 1024 / 1024);
        }
        return new StoredHarness(read(content, path), FileStamp.of(content, modified));
    }

    /**
     * What a file is now, whether it is a harness or not; empty when it is not there or cannot be read. It is read only where its
     * size or its time is another than before, so that looking often costs little; saving compares what is in it.
     *
     * @param before what it was
     */
    public static Optional<FileStamp> stamp(Path path, FileStamp before) {
        try {
            FileTime modified = Files.getLastModifiedTime(path);
            if (modified.toInstant().equals(before.modified()) && Files.size(path) == before.sizeBytes()) {
                return Optional.of(before);
            }
            long sizeBytes = Files.size(path);
            return Optional.of(
                    sizeBytes > LARGEST_BYTES
                            ? new FileStamp(sizeBytes, modified.toInstant(), "larger than any harness")
                            : FileStamp.of(Files.readAllBytes(path), modified));
        } catch (IOException gone) {
            return Optional.empty();
        }
    }

    /** Reads the bytes of a file. */
    static Harness read(byte[] content, Path path) throws HarnessFileException {
        return HarnessText.read(text(content, path), path);
    }

    /**
     * Saves a harness; what is on disk is replaced as a whole or not at all, and the file it replaces stays beside it as
     * {@code NAME.bak}.
     *
     * @return what is on disk now
     * @throws HarnessFileException when it cannot be saved; what was on disk is then still there
     */
    public static FileStamp write(Path path, Harness harness) throws HarnessFileException {
        return write(path, harness, Optional.empty());
    }

    /**
     * Saves a harness as {@link #write(Path, Harness)} does, unless somebody else changed the file meanwhile.
     *
     * @param expected what the file was when it was read or last written; when empty nothing is compared
     * @return what is on disk now
     * @throws FileChangedException when there is a file and its content is not the expected one
     * @throws HarnessFileException when it cannot be saved; what was on disk is then still there
     */
    public static FileStamp write(Path path, Harness harness, Optional<FileStamp> expected)
            throws HarnessFileException {
        byte[] content = HarnessText.write(harness).getBytes(StandardCharsets.UTF_8);
        return new AtomicSave(new Disk()).save(path, content, expected);
    }

    private static String text(byte[] content, Path path) throws HarnessFileException {
        ByteBuffer bytes = ByteBuffer.wrap(content);
        try {
            String text = StandardCharsets.UTF_8
                    .newDecoder()
                    .onMalformedInput(CodingErrorAction.REPORT)
                    .onUnmappableCharacter(CodingErrorAction.REPORT)
                    .decode(bytes)
                    .toString();
            return !text.isEmpty() && text.charAt(0) == BYTE_ORDER_MARK ? text.substring(1) : text;
        } catch (CharacterCodingException broken) {
            long line = 1;
            for (int k = 0; k < bytes.position(); k++) {
                line += content[k] == '\n' ? 1 : 0;
            }
            throw new HarnessFileException(
                    path, String.valueOf(line), ":" + line, Refusals.text("not UTF-8 text; save the file in UTF-8"));
        }
    }
}
