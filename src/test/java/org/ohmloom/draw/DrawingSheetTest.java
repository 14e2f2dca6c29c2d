package org.ohmloom.draw;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.ohmloom.BesideOthers;
import org.ohmloom.model.Harness;

/** The printed drawing of the shipped examples: all of it there, inside the frame, legible, nothing on top of anything. */
@BesideOthers
class DrawingSheetTest {

    private static final double SMALLEST_MM = 1.8;
    private static final double ROUNDING_MM = 1e-6;

    private static List<Scene> sheets(Harness harness, Paper paper) {
        return new DrawingSheet(Drawn.FONTS).sheets(harness, Optional.empty(), paper);
    }

    @ParameterizedTest
    @CsvSource({
        "teaching, A4",
        "teaching, A3",
        "teaching, ANSI_A",
        "star-ground, ANSI_B",
        "workboat, ANSI_D",
        "star-ground, A4",
        "star-ground, A3",
        "star-ground, A2",
        "faults, A3",
        "workboat, A3",
        "workboat, A1",
        "rescue-pickup, A3",
        "rescue-pickup, A2",
        "rescue-pickup, A1"
    })
    void everySheetIsLegibleAndNothingLiesOnAnything(String name, Paper paper) {
        Harness harness = ExamplesDrawTest.example(name);
        List<Scene> sheets = sheets(harness, paper);
        Set<String> shown = new TreeSet<>();
        for (int k = 0; k < sheets.size(); k++) {
            Scene sheet = sheets.get(k);
            String place = name + " " + paper + " sheet " + (k + 1) + " of " + sheets.size();
            Drawn.keep("sheet-" + name + "-" + paper + "-" + (k + 1), sheet, DrawStyle.PRINT, 5);
            assertEquals(paper.widthMm(), sheet.widthMm(), place);
            assertEquals(List.of(), Overlaps.texts(sheet), place);
            assertEquals(List.of(), Overlaps.textsOnLines(sheet), place);
            assertEquals(List.of(), outsideFrame(sheet, paper), place);
            sheet.items().stream()
                    .filter(item -> item.mark() instanceof Text)
                    .map(item -> (Text) item.mark())
                    .forEach(text ->
                            assertTrue(text.heightMm() >= SMALLEST_MM - ROUNDING_MM, place + ": " + text.dump()));
            shown.addAll(sheet.elements());
        }
        Set<String> missing = new TreeSet<>();
        harness.connectors().ids().forEach(id -> missing.add(id.value()));
        harness.components().ids().forEach(id -> missing.add(id.value()));
        harness.segments().ids().forEach(id -> missing.add(id.value()));
        missing.removeAll(shown);
        assertEquals(Set.of(), missing);
    }

    @Test
    void everySheetCarriesTitleNumberScaleNoteViewAndCautions() {
        Harness harness = ExamplesDrawTest.example("star-ground");
        List<Scene> sheets = sheets(harness, Paper.A3);
        for (int k = 0; k < sheets.size(); k++) {
            String words = words(sheets.get(k));
            assertTrue(words.contains(harness.titleBlock().number()), words);
            assertTrue(words.contains((k + 1) + " of " + sheets.size()), words);
            assertTrue(words.contains("Not to scale; lengths in mm."), words);
            assertTrue(words.contains("wire side"), words);
            assertTrue(words.contains("Cautions"), words);
        }
    }

    /** Everything but the frame's own strip lies inside the drawing space. */
    private static List<String> outsideFrame(Scene sheet, Paper paper) {
        Extent frame = paper.drawingSpace().grown(SheetPen.WIDE_MM);
        Extent strip = paper.drawingSpace().grown(5 + SheetPen.WIDE_MM);
        return sheet.items().stream()
                .filter(item -> !strip.contains(item.mark().bounds())
                        || (item.element().isPresent()
                                && !frame.contains(item.mark().bounds())))
                .map(item -> item.mark().dump())
                .toList();
    }

    private static String words(Scene sheet) {
        StringBuilder words = new StringBuilder();
        sheet.items().stream()
                .filter(item -> item.mark() instanceof Text)
                .forEach(item -> words.append(((Text) item.mark()).text()).append('\n'));
        return words.toString();
    }
}
