package org.ohmloom.pack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.ohmloom.BesideOthers;
import org.ohmloom.draw.Paper;

/** Options as people type them, and safe names of files. */
@BesideOthers
class PackOptionsTest {

    @Test
    void documentsAreWrittenInTheOrderOfThePackHoweverTheyAreTyped() throws PackException {
        PackOptions options = PackOptions.ALL.withDocuments("wire-list, drawing");
        assertEquals(List.of(PackDocument.DRAWING, PackDocument.WIRE_LIST), List.copyOf(options.documents()));
    }

    @Test
    void anUnknownDocumentIsRefusedWithThoseThereAre() {
        PackException refused =
                assertThrows(PackException.class, () -> PackOptions.ALL.withDocuments("drawing,cutlist"));
        assertEquals(
                "'cutlist' is no document of the pack; choose from cover, drawing, wiring-diagram, form-board, pin-tables,"
                        + " bill-of-materials, wire-list, bundles, build-order, test-sheet, labels, channel-sheet,"
                        + " calibration-sheet, bus-sheet, installation-sheet,"
                        + " calculation",
                refused.getMessage());
    }

    @Test
    void paperIsReadInEitherCase() throws PackException {
        assertEquals(Paper.A2, PackOptions.ALL.withPaper(" a2").paper());
        assertEquals(Paper.ANSI_B, PackOptions.ALL.withPaper("ansi b").paper());
        assertEquals(Paper.ANSI_D, PackOptions.ALL.withPaper("ANSI-D").paper());
        PackException refused = assertThrows(PackException.class, () -> PackOptions.ALL.withPaper("B4"));
        assertEquals(
                "'B4' is no paper of the pack; choose from A4, A3, A2, A1, A0, ANSI A, ANSI B, ANSI C, ANSI D, ANSI E",
                refused.getMessage());
    }

    @Test
    void aBoardIsReadInMillimetresAndNonsenseIsRefused() throws PackException {
        assertEquals(2440, PackOptions.ALL.withBoard("2440x1220").board().size().widthMm());
        assertEquals(
                1500,
                PackOptions.ALL.withBoard("3000 mm x 1500 mm").board().size().heightMm());
        for (String wrong : new String[] {"large", "10x10", "2440", "2440x-1", "1e9x1e9"}) {
            PackException refused = assertThrows(PackException.class, () -> PackOptions.ALL.withBoard(wrong));
            assertEquals(
                    "'" + wrong
                            + "' is no size of a board; write width and height in mm, each 300 to 50000, as in 2440x1220",
                    refused.getMessage());
        }
    }

    @ParameterizedTest
    @CsvSource({
        "EX-D-0100, EX-D-0100-wire-list.pdf",
        "../../etc/x y, etc-x-y-wire-list.pdf",
        "C:\\a?b*, C-a-b-wire-list.pdf",
        "Ω, harness-wire-list.pdf",
        ".., harness-wire-list.pdf"
    })
    void fileNamesAreSafeWhateverTheNumber(String number, String expected) {
        assertEquals(expected, new FileNames(number).pdf(PackDocument.WIRE_LIST));
    }
}
