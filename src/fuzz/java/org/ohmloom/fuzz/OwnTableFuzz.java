package org.ohmloom.fuzz;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.ohmloom.tables.TableFormatException;
import org.ohmloom.tables.WireTables;

/** A builder's own table file: refused in one line, or read beside those that come with the program. */
public final class OwnTableFuzz {

    private static final Path FOLDER = folder();

    private OwnTableFuzz() {}

    private static Path folder() {
        try {
            return Files.createTempDirectory("own-tables");
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    /** One try. */
    public static void fuzzerTestOneInput(byte[] data) throws IOException {
        Files.write(FOLDER.resolve("own.csv"), data);
        try {
            WireTables.load(FOLDER);
        } catch (TableFormatException refused) {
            OneLine.check(refused.getMessage());
        }
    }
}
