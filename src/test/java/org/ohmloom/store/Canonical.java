package org.ohmloom.store;

import java.nio.file.Path;

/** Run by hand: reads harness files written by a person and writes them back in the canonical layout. */
final class Canonical {
    private Canonical() {}

    public static void main(String[] files) throws HarnessFileException {
        for (String file : files) {
            HarnessFiles.write(Path.of(file), HarnessFiles.read(Path.of(file)));
        }
    }
}
