package org.ohmloom.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.ohmloom.BesideOthers;

/** Texts of a bundle beside a class, in English and in the made-up language. */
@BesideOthers
class MessageBundleTest {

    private static final MessageBundle SAMPLE = MessageBundle.beside(MessageBundleTest.class, "sample");

    @Test
    void strangeTextKeepsItsGapsAndIsFortyPerCentLonger() {
        String strange = PseudoLanguage.of("Draw a wire from {0}");
        assertTrue(strange.contains("{0}"), strange);
        assertTrue(strange.startsWith("[Ðŕåŵ å ŵîŕé ƒŕöɱ {0}"), strange);
        assertEquals((int) Math.ceil("Draw a wire from {0}".length() * 1.4), strange.length());
    }

    @Test
    void theBranchesOfACountAreStrangeToo() {
        String strange = PseudoLanguage.of("{0,choice,0#no wire|1#one wire|1<{0} wires} left");
        assertTrue(strange.startsWith("[{0,choice,0#ñö ŵîŕé|1#öñé ŵîŕé|1<{0} ŵîŕéš} ļéƒţ"), strange);
    }

    @Test
    void aTextInATextIsSaidInTheSameLanguageAndANameAsItWasTyped() {
        Text text = SAMPLE.text("wire", "W1 on deck", SAMPLE.text("short"));
        assertEquals("W1 on deck is too short", text.english());
        String strange = text.in(PseudoLanguage.LOCALE);
        assertTrue(strange.startsWith("[W1 on deck îš [ţöö šĥöŕţ"), strange);
    }

    @Test
    void aLanguageNobodyHasWrittenIsEnglishWhateverTheComputerSpeaks() {
        assertEquals("too short", SAMPLE.text("short").in(Locale.forLanguageTag("fi")));
    }

    @Test
    void aCountChoosesItsBranch() {
        assertEquals("2 wires of W", SAMPLE.get(Locale.ROOT, "count", 2, "W"));
        assertEquals("one wire of W", SAMPLE.get(Locale.ROOT, "count", 1, "W"));
    }

    @Test
    void textsAreEqualWhenTheySayTheSameFromTheSameKeys() {
        assertEquals(SAMPLE.text("wire", "W1", 2), SAMPLE.text("wire", "W1", 2));
        assertFalse(SAMPLE.text("wire", "W1", 2).equals(SAMPLE.text("wire", "W1", 3)));
        Text list = Text.joined(", ", List.of(Text.of("W1"), SAMPLE.text("short")));
        assertEquals(list, Text.joined(", ", List.of(Text.of("W1"), SAMPLE.text("short"))));
        assertEquals("W1, too short", list.english());
    }
}
