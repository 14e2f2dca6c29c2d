package org.ohmloom.manual;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.ohmloom.BesideOthers;
import org.ohmloom.words.PseudoLanguage;

/** A page is read in the folder of the language asked for, in English where it is not there. */
@BesideOthers
class LanguageFoldersTest {

    @Test
    void theNearestFolderComesFirstAndEnglishLast() {
        assertEquals(
                List.of("de-AT/lists/wires", "de/lists/wires", "lists/wires"),
                LanguageFolders.places(Locale.forLanguageTag("de-AT"), "lists/wires")
                        .toList());
        assertEquals(
                List.of("de/README", "README"),
                LanguageFolders.places(Locale.GERMAN, "README").toList());
        assertEquals(
                List.of("README"), LanguageFolders.places(Locale.ROOT, "README").toList());
    }

    /** The tests have one page in the made-up language, {@code en-XA/first-steps}. */
    @Test
    void aManualInALanguageHasItsPagesAndTheRestInEnglish() {
        Manual strange = Manual.bundled(PseudoLanguage.LOCALE);
        Manual english = Manual.bundled();
        assertEquals("Ƒîŕšţ šţéþš", strange.find("first-steps").orElseThrow().title());
        assertEquals("First steps", english.find("first-steps").orElseThrow().title());
        assertEquals(english.find("views/currents"), strange.find("views/currents"));
        assertEquals(english.pages().size(), strange.pages().size());
        assertTrue(strange.deadLinks().isEmpty());
    }
}
