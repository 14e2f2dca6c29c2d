package org.ohmloom.review;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

/** What the message of every finding must be. */
final class MessageChecks {

    private MessageChecks() {}

    static void check(Finding finding) {
        String message = finding.message();
        assertTrue(message.length() <= Sentence.MOST_CHARACTERS, () -> message.length() + " characters: " + message);
        assertTrue(message.endsWith("."), message);
        assertFalse(message.endsWith(".."), message);
        assertFalse(message.matches(".*[\\n\\r\\t].*"), message);
        assertFalse(message.matches(".*\\{[a-z]+}.*"), message);
        assertFalse(message.contains("  ") || message.contains(" ,") || message.contains("()"), message);
    }
}
