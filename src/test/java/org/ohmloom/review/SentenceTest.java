package org.ohmloom.review;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.ohmloom.BesideOthers;
import org.ohmloom.model.Harness;

/** Messages stay one line of at most 160 characters, whatever people call things. */
@BesideOthers
class SentenceTest {

    @Test
    void placesAreFilledOnceEvenWhenATextLooksLikeAPlace() {
        assertEquals("{b} and $1.", Sentence.of("{a} and {b}.", Map.of("a", "{b}", "b", "$1")));
    }

    @Test
    void aPlaceWithoutATextIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> Sentence.of("{a} and {b}.", Map.of("a", "x")));
    }

    @Test
    void theLongestTextIsCutUntilTheSentenceFits() {
        String sentence = Sentence.of("{a} is near {b}.", Map.of("a", "x".repeat(300), "b", "short name"));
        assertEquals(Sentence.MOST_CHARACTERS, sentence.length());
        assertTrue(sentence.endsWith("x… is near short name."), sentence);
    }

    @Test
    void lineBreaksBecomeSpaces() {
        assertEquals("one two.", Sentence.of("{a}.", Map.of("a", "one\r\n\ttwo")));
    }

    @Test
    void aListShowsAsManyAsFit() {
        assertEquals("W1, W2", Listing.of(List.of("W1", "W2"), 10).english());
        assertEquals(
                "W1, W2 and 2 more",
                Listing.of(List.of("W1", "W2", "W3", "W4-on-the-left"), 18).english());
        assertEquals("W1 and 2 more", Listing.of(List.of("W1", "W2", "W3"), 3).english());
    }

    @Test
    void aNameOfAnyLengthWithBracesAndLineBreaksGivesAProperMessage() {
        Harness harness = Altered.of(
                Examined.breaking("load-not-fed"),
                "\"name\": \"Lamp\"",
                "\"name\": \"A {load} \\n" + "of a very long name ".repeat(20) + "\"",
                "\"name\": \"On\"",
                "\"name\": \"{volts}" + " in the rain".repeat(20) + "\"");
        List<Finding> findings = Examined.findings(harness);
        assertEquals(1, findings.size());
        String message = findings.get(0).message();
        assertTrue(message.length() <= Sentence.MOST_CHARACTERS, message);
        assertTrue(message.startsWith("A {load} of a very long"), message);
        assertTrue(message.endsWith("but gets 0 V of its 12 V."), message);
    }

    /** 15.003 A against 15 A: both show as 15 A with three digits; 15.003/15 - 1 = 0.02 %. */
    @Test
    void aNumberThatLooksLikeItsLimitSaysByHowMuchItIsOver() {
        Harness harness = Altered.of(
                Examined.breaking("conductor-over-ampacity"), "\"ratedAmps\": 15.15", "\"ratedAmps\": 15.003");
        assertEquals(
                "W2 (18 AWG) carries 15 A (0.02 % over) in 'On'; at 30 °C it may carry 15 A.",
                Examined.findings(harness).get(0).message());
    }
}
