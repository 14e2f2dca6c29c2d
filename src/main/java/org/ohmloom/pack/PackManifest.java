package org.ohmloom.pack;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import org.ohmloom.model.Harness;
import org.ohmloom.store.CsvText;
import org.ohmloom.store.HarnessText;

/**
 * The list of a pack's files with their checksums, and that of the harness they were made from, so that anyone can tell
 * whether a file belongs to the pack. Checksums are SHA-256 (FIPS 180-4).
 */
final class PackManifest {
    static final String ID = "manifest";

    private final CsvText csv = new CsvText("File", "Bytes", "SHA-256", "Revision");
    private final String revision;

    /** A list that begins with the harness itself, as it is when saved. */
    PackManifest(Harness harness) {
        this.revision = harness.titleBlock().currentRevision();
        add("harness as saved", HarnessText.write(harness).getBytes(StandardCharsets.UTF_8));
    }

    void add(String name, byte[] content) {
        csv.row(name, content.length, checksum(content), revision);
    }

    String text() {
        return csv.text();
    }

    private static String checksum(byte[] content) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(content));
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("every Java platform has SHA-256", impossible);
        }
    }
}
