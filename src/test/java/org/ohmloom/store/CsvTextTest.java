package org.ohmloom.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.ohmloom.BesideOthers;

/** Comma-separated text by RFC 4180 that no spreadsheet runs. */
@BesideOthers
class CsvTextTest {

    private static String cell(Object value) {
        String text = new CsvText("head").row(value).text();
        return text.substring("head\r\n".length(), text.length() - "\r\n".length());
    }

    @Test
    void linesEndInCarriageReturnAndLineFeedAndQuotesStandOnlyWhereNeeded() {
        String text = new CsvText("wire", "length m", "remark")
                .row("W1", 1.25, "plain")
                .row("W2", 12.0, "a, b")
                .row("W3", 0.0005, "12\" long\nsecond line")
                .text();
        assertEquals(
                "wire,length m,remark\r\n"
                        + "W1,1.25,plain\r\n"
                        + "W2,12,\"a, b\"\r\n"
                        + "W3,0.0005,\"12\"\" long\nsecond line\"\r\n",
                text);
    }

    @Test
    void aTextASpreadsheetWouldRunGetsAnApostrophe() {
        assertEquals("'=1+1", cell("=1+1"));
        assertEquals("'@SUM(A1)", cell("@SUM(A1)"));
        assertEquals("'+cmd|' /C calc'!A0", cell("+cmd|' /C calc'!A0"));
        assertEquals("'-2+3", cell("-2+3"));
        assertEquals("'\t=1", cell("\t=1"));
        assertEquals("'\uFF1D1+1", cell("\uFF1D1+1"));
    }

    @Test
    void aNumberAndALoneSignStayAsTheyAre() {
        assertEquals("-12.5", cell("-12.5"));
        assertEquals("+3", cell("+3"));
        assertEquals("-1e-3", cell("-1e-3"));
        assertEquals("-40", cell(-40.0));
        assertEquals("+", cell("+"));
        assertEquals("-", cell("-"));
        assertEquals("RD-BK", cell("RD-BK"));
    }

    @Test
    void whatIsNotThereIsAnEmptyCell() {
        String text = new CsvText("a", "b", "c", "d")
                .row(Optional.empty(), OptionalDouble.empty(), Double.NaN, Optional.of("x"))
                .text();
        assertEquals("a,b,c,d\r\n\"\",,,x\r\n", text);
    }

    @Test
    void aRowHasAsManyCellsAsThereAreHeads() {
        assertThrows(IllegalArgumentException.class, () -> new CsvText("a", "b").row("only one"));
        assertThrows(IllegalArgumentException.class, CsvText::new);
    }
}
