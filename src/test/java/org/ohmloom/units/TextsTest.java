package org.ohmloom.units;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/** What a message quotes of what was typed. */
class TextsTest {

    @Test
    void aTextOfFortyCharactersIsQuotedWholeAndALongerOneIsCut() {
        String forty = "0123456789".repeat(4);
        assertEquals("'" + forty + "'", Texts.quoted(forty));
        assertEquals("'" + forty + "...'", Texts.quoted(forty + "x"));
    }

    @Test
    void aQuoteStaysOnOneLine() {
        assertEquals("'1 m'", Texts.quoted("1\r\n\tm"));
    }

    @Test
    void aCharacterOutsideTheCommonPlaneCountsOnceAndIsNeverCutInTwo() {
        String wires = "\uD83D\uDD0C".repeat(41);
        assertEquals("'" + "\uD83D\uDD0C".repeat(40) + "...'", Texts.quoted(wires));
    }
}
