package org.ohmloom.workbench.channel;

import java.util.Locale;
import org.ohmloom.workbench.words.Words;

/** Whole numbers of a bus as a person types them: decimal, or hexadecimal after 0x. */
final class BusText {

    private BusText() {}

    /**
     * A whole number.
     *
     * @param what what it is, for the person
     * @throws IllegalArgumentException when it is none
     */
    static int whole(Words words, String typed, String what) {
        String text = typed.strip().toLowerCase(Locale.ROOT);
        try {
            return text.startsWith("0x") ? Integer.parseInt(text.substring(2), 16) : Integer.parseInt(text);
        } catch (NumberFormatException noNumber) {
            throw new IllegalArgumentException(words.get("bus.no-whole", what, typed), noNumber);
        }
    }

    /** An identifier as a data sheet writes it: three hexadecimal digits of 11 bits, eight of 29. */
    static String identifier(int identifier, int bits) {
        return String.format(Locale.ROOT, bits > 11 ? "0x%08X" : "0x%03X", identifier);
    }
}
