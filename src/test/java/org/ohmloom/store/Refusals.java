package org.ohmloom.store;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.nio.file.Path;

/** Reads texts that must be refused. */
final class Refusals {
    static final Path FILE = Path.of("fan.harness.json");

    private Refusals() {}

    static HarnessFileException of(String text) {
        HarnessFileException refused = assertThrows(HarnessFileException.class, () -> HarnessText.read(text, FILE));
        assertFalse(refused.getMessage().contains("\n"), "one line");
        return refused;
    }

    /** What is said when one piece of the small example is another. */
    static String with(String piece, String other) {
        return of(SmallExample.with(piece, other)).getMessage();
    }
}
