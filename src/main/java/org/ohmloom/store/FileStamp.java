package org.ohmloom.store;

import java.nio.file.attribute.FileTime;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Instant;
import java.util.HexFormat;

/**
 * What a file was when it was read or written, so that a later change by somebody else is noticed.
 *
 * @param sizeBytes count of bytes
 * @param modified  when the file system says it was changed last
 * @param sha256    SHA-256 of its bytes, 64 hexadecimal digits; alone decides whether the content is the same
 */
public record FileStamp(long sizeBytes, Instant modified, String sha256) {

    static FileStamp of(byte[] content, FileTime modified) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(content);
            return new FileStamp(
                    content.length, modified.toInstant(), HexFormat.of().formatHex(digest));
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("every Java has SHA-256", impossible);
        }
    }

    /** Whether the content is the same; a file only touched is not changed. */
    public boolean sameContent(FileStamp other) {
        return sizeBytes == other.sizeBytes && sha256.equals(other.sha256);
    }
}
