package org.ohmloom.fuzz;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.ohmloom.model.Harness;
import org.ohmloom.store.HarnessFileException;
import org.ohmloom.store.HarnessText;

/** Text of a harness file: refused in one line, or read; what was read is written, and read and written again to the same text. */
public final class HarnessFileFuzz {

    private static final Path FILE = Path.of("fuzz.harness.json");

    private HarnessFileFuzz() {}

    /** One try. */
    public static void fuzzerTestOneInput(byte[] data) throws HarnessFileException {
        Harness harness;
        try {
            harness = HarnessText.read(new String(data, StandardCharsets.UTF_8), FILE);
        } catch (HarnessFileException refused) {
            OneLine.check(refused.getMessage());
            return;
        }
        String text = HarnessText.write(harness);
        if (!text.equals(HarnessText.write(HarnessText.read(text, FILE)))) {
            throw new AssertionError("another text after reading what was written");
        }
    }
}
