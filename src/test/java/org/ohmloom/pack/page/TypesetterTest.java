package org.ohmloom.pack.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.ohmloom.BesideOthers;
import org.ohmloom.draw.SceneFonts;
import org.ohmloom.draw.Weight;

/** Texts are measured as the painter sets them, and wrapped without losing a letter. */
@BesideOthers
class TypesetterTest {
    private static final double MICROMETRE = 1e-3;

    private final SceneFonts fonts = SceneFonts.load();
    private final Typesetter typesetter = new Typesetter(fonts);

    @Test
    void lettersAddUpToTheWidthOfTheText() {
        for (String text : List.of("AV To, W12 fi 14 AWG", "2.5 mm², 67.3 °C", "EX-D-0100/B_1", "größte Länge")) {
            for (Weight weight : Weight.values()) {
                assertEquals(fonts.widthMm(text, weight, 2), typesetter.widthMm(text, weight, 2), MICROMETRE, text);
            }
        }
    }

    @Test
    void aTextIsBrokenAtSpacesFirst() {
        double room = typesetter.widthMm("left front", Weight.REGULAR, 2) + MICROMETRE;
        assertEquals(
                List.of("Battery", "ground,", "left front", "frame"),
                typesetter.lines("Battery ground, left front frame", Weight.REGULAR, 2, room));
    }

    @Test
    void aWordTooLongForTheRoomIsBrokenAfterASignAndNeverCut() {
        double room = typesetter.widthMm("EX-HOUSING-", Weight.REGULAR, 2) + MICROMETRE;
        assertEquals(
                List.of("EX-HOUSING-", "TWELVEWAY"), typesetter.lines("EX-HOUSING-TWELVEWAY", Weight.REGULAR, 2, room));
    }

    @Test
    void aWordWithoutSignsIsBrokenWhereTheRoomEnds() {
        List<String> lines = typesetter.lines("W".repeat(50), Weight.BOLD, 2, 20);
        assertEquals("W".repeat(50), String.join("", lines));
        lines.forEach(line -> assertTrue(typesetter.widthMm(line, Weight.BOLD, 2) <= 20 + MICROMETRE));
    }

    @Test
    void evenNoRoomLosesNothing() {
        assertEquals(
                "ab cd",
                String.join("", typesetter.lines("ab cd", Weight.REGULAR, 2, 0.1))
                        .replaceAll("(?<=b)", " "));
    }
}
