package org.ohmloom.draw;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.ohmloom.AnalysedExamples;
import org.ohmloom.BesideOthers;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.model.BreakoutId;
import org.ohmloom.model.BundleSegment;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Note;
import org.ohmloom.model.TitleBlock;
import org.ohmloom.review.Cautions;

/** What a shop must find on a drawing: fields, notes, datums, dimensions, match lines, marks. */
@BesideOthers
class DrawingContentTest {

    private static final double EXACT = 1e-9;

    private static List<Scene> sheets(Harness harness, Paper paper) {
        return new DrawingSheet(Drawn.FONTS).sheets(harness, Optional.empty(), paper);
    }

    private static List<String> texts(Scene scene) {
        return scene.items().stream()
                .map(Item::mark)
                .filter(mark -> mark instanceof Text)
                .map(mark -> ((Text) mark).text())
                .toList();
    }

    private static String words(Scene scene) {
        return String.join(" ", texts(scene));
    }

    @Test
    void everySheetHasEveryMandatoryFieldOfIso7200AndWhatIsFilledIn() throws IOException {
        Harness harness = ExamplesDrawTest.example("workboat");
        TitleBlock block = harness.titleBlock();
        List<String> captions =
                Files.readAllLines(Path.of("src/test/resources/references/drawings/title-block-fields.csv")).stream()
                        .filter(line -> !line.startsWith("#") && !line.startsWith("field,"))
                        .map(line -> line.split(",")[1])
                        .toList();
        assertEquals(8, captions.size());
        List<Scene> sheets = sheets(harness, Paper.A3);
        for (int k = 0; k < sheets.size(); k++) {
            List<String> texts = texts(sheets.get(k));
            assertTrue(texts.containsAll(captions), texts.toString());
            assertTrue(
                    texts.containsAll(List.of(
                            block.owner().orElseThrow(),
                            block.number(),
                            block.date().orElseThrow(),
                            block.title(),
                            block.approver().orElseThrow(),
                            block.creator().orElseThrow(),
                            (k + 1) + " of " + sheets.size())),
                    texts.toString());
            assertTrue(texts.contains("not to scale, none"), texts.toString());
            assertTrue(texts.contains("note " + GeneralNotes.TOLERANCE_NOTE + ", sheet 1"), texts.toString());
        }
    }

    @Test
    void cautionsStandInFullOnTheFirstSheetAndEveryOtherLeadsThere() {
        List<Scene> sheets = sheets(ExamplesDrawTest.example("workboat"), Paper.A3);
        for (String caution : Cautions.everything().stream()
                .map(org.ohmloom.words.Text::english)
                .toList()) {
            assertTrue(words(sheets.get(0)).contains(caution), caution);
        }
        for (Scene later : sheets.subList(1, sheets.size())) {
            assertTrue(words(later).contains("Cautions, notes and key of marks: sheet 1"));
            assertFalse(words(later).contains(Cautions.ALL.get(0).english()));
        }
    }

    @Test
    void theRowsOfTheToleranceTableStandInTheNotes() {
        // IPC/WHMA-A-620B, Table 11-1: to 0.3 m +25 mm, to 1.5 m +50 mm, to 3 m +100 mm, to 7.5 m +150 mm, then +5 %
        Analysis analysis = AnalysedExamples.of("teaching");
        String rows = GeneralNotes.rows(analysis.evidence().tables().fabrication());
        assertTrue(
                rows.startsWith(
                        "up to 300 +25, up to 1500 +50, up to 3000 +100 (from memory), up to 7500 +150, beyond +5"),
                rows);
    }

    @Test
    void theBreakoutsOfATrunkAreMeasuredFromItsDatum() {
        // SG6 500 from B7 to B1, where the battery is; SG1 1000, SG2 1000, SG4 1500 on from there: 1000, 2000, 3500
        Harness harness = ExamplesDrawTest.example("teaching");
        Datums datums = datums(harness);
        assertEquals("D1", datums.at(new BreakoutId("B1")));
        assertMeasured(datums, "B2", "D1", "B1", 1.0);
        assertMeasured(datums, "B3", "D1", "B1", 2.0);
        assertMeasured(datums, "B5", "D1", "B1", 3.5);
        assertMeasured(datums, "B4", "", "B3", 1.0);
        assertMeasured(datums, "B6", "", "B3", 0.5);
        assertMeasured(datums, "B7", "", "B1", 0.5);
        assertTrue(words(sheets(harness, Paper.A3).get(0)).contains("3500 from D1"));
    }

    private static Datums datums(Harness harness) {
        Ties ties = new Ties(harness);
        Stations stations =
                new Stations(harness, ties, new CardMaker(harness, new Lettering(Drawn.FONTS), NoteFlags.NONE));
        return new Datums(stations.breakouts(), ties, stations.batteries());
    }

    private static void assertMeasured(Datums datums, String breakout, String datum, String from, double metres) {
        Datums.Measured measured = datums.of(new BreakoutId(breakout)).orElseThrow();
        assertEquals(datum, measured.datum(), breakout);
        assertEquals(new BreakoutId(from), measured.from(), breakout);
        assertEquals(metres, measured.metres(), EXACT, breakout);
    }

    @ParameterizedTest
    @ValueSource(strings = {"rescue-pickup", "workboat", "star-ground"})
    void everyBreakoutReachedBySegmentsIsMeasuredFromAnotherOverExactlyThoseSegments(String name) {
        Harness harness = ExamplesDrawTest.example(name);
        for (Datums.Measured each : datums(harness).all()) {
            double sum = each.along().stream()
                    .mapToDouble(id -> harness.segments()
                            .get(new org.ohmloom.model.SegmentId(id))
                            .lengthMetres())
                    .sum();
            assertEquals(sum, each.metres(), EXACT, each.toString());
        }
    }

    @ParameterizedTest
    @EnumSource(
            value = Paper.class,
            names = {"A4", "A3", "ANSI_B"})
    void bothSidesOfAMatchLineCarryOneLetterTheWholeLengthAndThePlaceOfTheOther(Paper paper) {
        Harness harness = ExamplesDrawTest.example("workboat");
        List<Scene> sheets = sheets(harness, paper);
        TreeMap<String, List<String>> sides = new TreeMap<>();
        for (int k = 0; k < sheets.size(); k++) {
            for (Item item : sheets.get(k).items()) {
                if (item.mark() instanceof Text text && text.text().startsWith("Match line ")) {
                    String place = placeOf(sheets.get(k), item);
                    String here = "sheet " + (k + 1) + ", zone " + GridReference.of(paper, text.at());
                    sides.computeIfAbsent(text.text() + " " + item.element().orElseThrow(), key -> new ArrayList<>())
                            .add(here + " > " + place);
                    BundleSegment cut = harness.segments()
                            .get(new org.ohmloom.model.SegmentId(item.element().orElseThrow()));
                    String length = cut.id() + " " + Words.millimetres(cut.lengthMetres()) + " mm";
                    assertTrue(texts(sheets.get(k)).contains(length), length);
                }
            }
        }
        assertFalse(sides.isEmpty());
        sides.forEach((cut, two) -> {
            assertEquals(2, two.size(), cut);
            String sheet = two.get(0).replaceAll(",.*", "");
            assertTrue(two.get(1).contains("> " + sheet + ","), two.toString());
            assertTrue(two.get(0).contains("> " + two.get(1).replaceAll(",.*", "") + ","), two.toString());
        });
    }

    private static String placeOf(Scene sheet, Item match) {
        Pattern place = Pattern.compile("sheet\u00a0(\\d+), zone\u00a0([A-Z]\\d+)");
        for (Item item : sheet.itemsOf(match.element().orElseThrow())) {
            if (item.mark() instanceof Text text) {
                Matcher matcher = place.matcher(text.text());
                if (matcher.matches()) {
                    return "sheet " + matcher.group(1) + ", zone " + matcher.group(2);
                }
            }
        }
        throw new AssertionError("no place at " + match);
    }

    @Test
    void aGridReferenceNamesTheFieldThatTheFrameShows() {
        // A3: fields of 50 mm from the middle at 210 and 148.5 mm; 8 across, 6 down
        assertEquals("A1", GridReference.of(Paper.A3, new Point(25, 15)));
        assertEquals("C4", GridReference.of(Paper.A3, new Point(209, 148)));
        assertEquals("D5", GridReference.of(Paper.A3, new Point(211, 149)));
        assertEquals("F8", GridReference.of(Paper.A3, new Point(409, 286)));
        // ANSI B: 4 across and 2 down, counted from the lower right corner
        assertEquals("A1", GridReference.of(Paper.ANSI_B, new Point(410, 265)));
        assertEquals("B4", GridReference.of(Paper.ANSI_B, new Point(20, 15)));
        assertEquals("", GridReference.of(Paper.ANSI_A, new Point(100, 100)));
    }

    @Test
    void everyNoteOnAnElementIsFlaggedAndListed() {
        Harness harness = ExamplesDrawTest.example("teaching");
        List<String> all = new ArrayList<>();
        sheets(harness, Paper.A3).forEach(sheet -> all.add(words(sheet)));
        String words = String.join(" ", all);
        int number = 0;
        for (Note note : harness.notes().all()) {
            if (note.about().isPresent()) {
                String flag = "N" + ++number;
                assertTrue(new TreeSet<>(List.of(words.split(" "))).contains(flag), flag);
                assertTrue(words.contains(note.text().strip().replaceAll("\\s+", " ")), note.text());
            }
        }
        assertEquals(3, number);
    }

    @Test
    void supportsAndTiesLieInTheirOrderAlongTheRunAndInTheTable() {
        // SG3 of the teaching harness is 1 m, no support further than 0.61 m: two, at 250 and 750 mm
        Analysis analysis = AnalysedExamples.of("teaching");
        List<Scene> sheets = new DrawingSheet(Drawn.FONTS).sheets(analysis.harness(), analysis, Paper.A3);
        List<Item> marks = sheets.get(0).itemsOf("SG3").stream()
                .filter(item -> item.description().orElse("").startsWith("support on SG3"))
                .toList();
        assertEquals(
                List.of("support on SG3, 250 mm from B3", "support on SG3, 750 mm from B3"),
                marks.stream().map(item -> item.description().orElse("")).toList());
        assertTrue(marks.get(0).mark().bounds().rightMm()
                < marks.get(1).mark().bounds().leftMm());
        assertTrue(sheets.stream().anyMatch(sheet -> texts(sheet).contains("250, 750")));
        for (Scene sheet : sheets) {
            assertEquals(List.of(), Overlaps.texts(sheet));
            assertEquals(List.of(), Overlaps.textsOnLines(sheet));
        }
    }

    @Test
    void manyPlacesAtEvenDistancesAreToldByTheirStep() {
        assertEquals("50, 150, 350", DimensionTables.places(List.of(0.05, 0.15, 0.35)));
        assertEquals("50 to 650, every 200 (4)", DimensionTables.places(List.of(0.05, 0.25, 0.45, 0.65)));
        assertEquals("50, 250, 450, 700", DimensionTables.places(List.of(0.05, 0.25, 0.45, 0.7)));
    }

    @Test
    void aSpliceAlongASegmentIsDimensionedFromWhereItsSegmentBeginsAsOnEveryOtherDocument() {
        Harness harness = ExamplesDrawTest.example("rescue-pickup");
        List<String> all = new ArrayList<>();
        sheets(harness, Paper.A1).forEach(sheet -> all.addAll(texts(sheet)));
        assertTrue(all.contains("SL9 250 from P8"), all.toString());
        assertTrue(all.contains("SL10 300 from P8"), all.toString());
    }

    @Test
    void matchLinesRunFromAToZWithoutIAndO() {
        assertEquals("A", MatchLines.letter(0));
        assertEquals("H", MatchLines.letter(7));
        assertEquals("J", MatchLines.letter(8));
        assertEquals("Z", MatchLines.letter(23));
        assertEquals("AA", MatchLines.letter(24));
    }

    @Test
    void theCheckFindsATextOnALineAndOneAcrossTheEdgeOfABox() {
        Lettering lettering = new Lettering(Drawn.FONTS);
        Item text = Item.of(
                Layer.SHEET, lettering.text("250", new Point(10, 10), 2, Anchor.START, Weight.REGULAR, Ink.TEXT));
        Item line = Item.of(Layer.SHEET, Line.of(0.2, Ink.TEXT, new Point(5, 9), new Point(30, 9)));
        Item below = Item.of(Layer.SHEET, Line.of(0.2, Ink.TEXT, new Point(5, 11), new Point(30, 11)));
        Item box = Item.of(Layer.SHEET, new Box(new Extent(11, 5, 20, 15), 0, Fill.edge(Ink.TEXT, 0.2)));
        assertEquals(
                1, Overlaps.textsOnLines(new Scene(50, 50, List.of(line, text))).size());
        assertEquals(
                0,
                Overlaps.textsOnLines(new Scene(50, 50, List.of(below, text))).size());
        assertEquals(
                1, Overlaps.textsOnLines(new Scene(50, 50, List.of(box, text))).size());
    }
}
