package org.ohmloom.draw;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.ohmloom.BesideOthers;

/** Sizes, drawing spaces and grid references of sheets, each against its standard. */
@BesideOthers
class PaperTest {

    private static final double ROUNDING_MM = 1e-9;

    /** Trimmed sizes and drawing spaces of ISO 5457; fields of A0 and A4 as published, those of the others from memory. */
    @ParameterizedTest
    @CsvSource({
        "A0, 1189, 841, 1159, 821, 24, 16",
        "A1, 841, 594, 811, 574, 16, 12",
        "A2, 594, 420, 564, 400, 12, 8",
        "A3, 420, 297, 390, 277, 8, 6",
        "A4, 210, 297, 180, 277, 4, 6"
    })
    void sizesOfIso5457(
            Paper paper, double wide, double high, double spaceWide, double spaceHigh, int across, int down) {
        assertEquals(wide, paper.widthMm(), ROUNDING_MM);
        assertEquals(high, paper.heightMm(), ROUNDING_MM);
        assertEquals(spaceWide, paper.drawingSpace().widthMm(), ROUNDING_MM);
        assertEquals(spaceHigh, paper.drawingSpace().heightMm(), ROUNDING_MM);
        assertEquals(across, paper.zonesAcross());
        assertEquals(down, paper.zonesDown());
        assertEquals(Paper.A4, paper.office());
    }

    /** Sizes of ASME Y14.1 in inches; borders and zones from memory. A zone is a sheet of size A folded: 4.25 or 5.5 inch. */
    @ParameterizedTest
    @CsvSource({
        "ANSI_A, 11, 8.5, 10.5, 7.74, 0, 0",
        "ANSI_B, 17, 11, 15.76, 10.24, 4, 2",
        "ANSI_C, 22, 17, 21, 15.5, 4, 4",
        "ANSI_D, 34, 22, 32, 21, 8, 4",
        "ANSI_E, 44, 34, 43, 32, 8, 8"
    })
    void sizesOfAsmeY141(
            Paper paper, double wide, double high, double spaceWide, double spaceHigh, int across, int down) {
        assertEquals(wide * 25.4, paper.widthMm(), ROUNDING_MM);
        assertEquals(high * 25.4, paper.heightMm(), ROUNDING_MM);
        assertEquals(spaceWide * 25.4, paper.drawingSpace().widthMm(), ROUNDING_MM);
        assertEquals(spaceHigh * 25.4, paper.drawingSpace().heightMm(), ROUNDING_MM);
        assertEquals(across, paper.zonesAcross());
        assertEquals(down, paper.zonesDown());
        assertEquals(Paper.ANSI_A, paper.office());
    }

    @Test
    void zonesOfAnIsoSheetRunToTheRightAndDownAndThoseOfAnAsmeSheetToTheLeftAndUp() {
        assertEquals(List.of("1", "8", "A", "F"), corners(Paper.A3));
        assertEquals(List.of("4", "1", "B", "A"), corners(Paper.ANSI_B));
    }

    /** Names of the fields at the left, right, upper and lower end. */
    private static List<String> corners(Paper paper) {
        SheetPen pen = new SheetPen(new Lettering(Drawn.FONTS));
        SheetFrame.draw(pen, paper);
        List<Text> labels = pen.items().stream()
                .map(Item::mark)
                .filter(mark -> mark instanceof Text text && text.anchor() == Anchor.MIDDLE)
                .map(mark -> (Text) mark)
                .toList();
        int across = paper.zonesAcross();
        List<Text> above = labels.subList(0, across);
        List<Text> right = labels.subList(across, across + paper.zonesDown());
        assertEquals(
                true,
                IntStream.range(1, across)
                        .allMatch(k ->
                                above.get(k - 1).at().xMm() < above.get(k).at().xMm()));
        assertEquals(
                true,
                IntStream.range(1, right.size())
                        .allMatch(k ->
                                right.get(k - 1).at().yMm() < right.get(k).at().yMm()));
        return List.of(
                above.get(0).text(),
                above.get(across - 1).text(),
                right.get(0).text(),
                right.get(right.size() - 1).text());
    }
}
