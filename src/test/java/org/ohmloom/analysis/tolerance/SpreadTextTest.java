package org.ohmloom.analysis.tolerance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.ohmloom.BesideOthers;
import org.ohmloom.tables.WireTables;

/** Spreads as a person writes them, and where their values lie. */
@BesideOthers
class SpreadTextTest {

    private static final Spreads USUAL = Spreads.of(WireTables.bundled());

    @Test
    void aSpreadOfOneElementComesBeforeThatOfItsKind() {
        Spreads spreads = USUAL.with("load=-5..15").with("load:H1=0..20,peaked");
        assertEquals(
                "-5 to 15 %, even",
                spreads.of(SpreadKind.LOAD, "H2").orElseThrow().words());
        assertEquals(
                "0 to 20 %, peaked",
                spreads.of(SpreadKind.LOAD, "H1").orElseThrow().words());
        assertTrue(
                USUAL.with("ambient=none").of(SpreadKind.AMBIENT).orElseThrow().isNone());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "load|is no spread",
                "load=5|is no spread",
                "load=1..x|is no spread",
                "colour=1..2|write one of conductor, length, joint, load, source, ambient",
                "load=5..1|low to a high end",
                "load=-100..0|within -90 to 900 %",
                "ambient=-300..0|within -100 to 100 K",
                "ambient:Z1=0..1|write ambient without Z1",
                "load=0..1,round|write one of even, peaked, normal",
            })
    void whatIsWrongIsSaidInOneLine(String text, String sentence) {
        String message = assertThrows(IllegalArgumentException.class, () -> USUAL.with(text))
                .getMessage();
        assertTrue(message.contains(sentence) && !message.contains("\n"), message);
    }

    /** A triangle from -30 to 100 with its corner at 0: 30/130 of all lie below the corner; the mean is 70/3. */
    @Test
    void aPeakedSpreadIsATriangleWithItsCornerAsEntered() {
        Spread spread = USUAL.with("joint=-30..100,peaked").of(SpreadKind.JOINT).orElseThrow();
        assertEquals(0, spread.at(30 / 130.0), 1e-12);
        assertEquals(0.7 / 3, spread.mean(), 1e-12);
        assertEquals(-0.3, spread.at(0), 1e-12);
        assertEquals(1, spread.at(1), 1e-12);
        assertEquals(1 - Math.sqrt(0.5 * 1.3 * 1), spread.at(0.5), 1e-12, "half of the area");
        assertEquals(
                0.1,
                USUAL.with("joint=10..10,peaked")
                        .of(SpreadKind.JOINT)
                        .orElseThrow()
                        .at(0.5),
                1e-12);
    }
}
