package org.ohmloom.draw.form;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.ohmloom.AnalysedExamples;
import org.ohmloom.BesideOthers;
import org.ohmloom.draw.Area;
import org.ohmloom.draw.Box;
import org.ohmloom.draw.Disc;
import org.ohmloom.draw.Extent;
import org.ohmloom.draw.Ink;
import org.ohmloom.draw.Item;
import org.ohmloom.draw.Layer;
import org.ohmloom.draw.Paper;
import org.ohmloom.draw.Point;
import org.ohmloom.draw.Scene;
import org.ohmloom.draw.Text;
import org.ohmloom.model.Harness;

/** The tiles of form boards: they join, everything is on one of them, and nothing written lies on anything written. */
@BesideOthers
class TileSheetsTest {

    private static final double ROUNDING_MM = 1e-6;
    private static final double ALLOWED_MM = 0.1;

    @ParameterizedTest
    @CsvSource({"teaching, A4", "star-ground, A3", "star-ground, ANSI_B", "workboat, A0", "rescue-pickup, A3"})
    void theMarksOfNeighboursAreTheSamePointsOfTheBoard(String example, Paper paper) {
        Harness harness = AnalysedExamples.harness(example);
        for (FormBoard board : Boards.of(example, paper)) {
            List<Scene> sheets = Boards.tiles(harness, board);
            Map<String, List<Point>> marks = new TreeMap<>();
            for (int k = 0; k < sheets.size(); k++) {
                int[] tile = board.tiles().get(k);
                Extent shown = board.grid().picture(tile[0], tile[1]);
                Extent picture = board.grid().pictureOnSheet();
                marks.put(
                        TileGrid.name(tile[0], tile[1]),
                        crosses(sheets.get(k)).stream()
                                .map(at -> at.plus(shown.leftMm() - picture.leftMm(), shown.topMm() - picture.topMm()))
                                .toList());
            }
            for (int[] tile : board.tiles()) {
                joins(marks, TileGrid.name(tile[0], tile[1]), TileGrid.name(tile[0] + 1, tile[1]));
                joins(marks, TileGrid.name(tile[0], tile[1]), TileGrid.name(tile[0], tile[1] + 1));
            }
        }
    }

    /** Neighbours share the two marks at the ends of the side they have in common. */
    private static void joins(Map<String, List<Point>> marks, String one, String other) {
        if (!marks.containsKey(one) || !marks.containsKey(other)) {
            return;
        }
        long shared = marks.get(one).stream()
                .filter(mark -> marks.get(other).stream().anyMatch(each -> each.distanceMm(mark) < ROUNDING_MM))
                .count();
        assertEquals(2, shared, one + " and " + other);
    }

    private static List<Point> crosses(Scene sheet) {
        List<Point> crosses = sheet.items().stream()
                .filter(item -> item.layer() == Layer.SHEET)
                .map(Item::mark)
                .filter(mark -> mark instanceof Disc)
                .map(mark -> ((Disc) mark).centre())
                .toList();
        assertEquals(4, crosses.size());
        return crosses;
    }

    @ParameterizedTest
    @CsvSource({
        "teaching, A4",
        "star-ground, A4",
        "star-ground, A3",
        "star-ground, ANSI_A",
        "workboat, A4",
        "workboat, A0",
        "faults, A3",
        "rescue-pickup, A4",
        "rescue-pickup, ANSI_B",
        "rescue-pickup, A0"
    })
    void everythingIsOnATileAndNoTextLiesOnAText(String example, Paper paper) {
        Harness harness = AnalysedExamples.harness(example);
        TreeSet<String> shown = new TreeSet<>();
        for (FormBoard board : Boards.of(example, paper)) {
            List<Scene> sheets = Boards.tiles(harness, board);
            for (int k = 0; k < sheets.size(); k++) {
                String place =
                        example + " " + paper + " tile " + board.tileNames().get(k);
                assertEquals(List.of(), overlaps(sheets.get(k)), place);
                shown.addAll(sheets.get(k).elements());
                assertTrue(texts(sheets.get(k)).stream()
                        .anyMatch(text -> text.text().contains(" of " + sheets.size())));
            }
        }
        TreeSet<String> missing = new TreeSet<>();
        harness.segments().ids().forEach(id -> missing.add(id.value()));
        harness.connectors().ids().forEach(id -> missing.add(id.value()));
        harness.splices().ids().forEach(id -> missing.add(id.value()));
        harness.grounds().ids().forEach(id -> missing.add(id.value()));
        missing.removeAll(shown);
        assertEquals(new TreeSet<>(), missing, example);
    }

    /** Of a card or a text that the edge of a tile cuts, neither tile can be read before the board is glued. */
    @ParameterizedTest
    @CsvSource({"star-ground, A4", "rescue-pickup, A3", "rescue-pickup, ANSI_B"})
    void noCardAndNoTextIsCutByTheEdgeOfATileAndNoneLiesOnABundle(String example, Paper paper) {
        List<String> wrong = new ArrayList<>();
        for (FormBoard board : Boards.of(example, paper)) {
            board.cards().stream()
                    .filter(card -> !board.grid().shows(card))
                    .forEach(card -> wrong.add("a card is cut at " + card.centre()));
            for (Item item : board.items()) {
                if (item.mark() instanceof Text text && item.layer() == Layer.NUMBERS) {
                    if (!board.grid().shows(text.bounds())) {
                        wrong.add(text.text() + " is cut");
                    }
                    board.segments().stream()
                            .filter(segment -> liesOn(segment, text.bounds().grown(-0.3)))
                            .forEach(segment -> wrong.add(text.text() + " lies on " + segment.segment()));
                }
            }
        }
        assertEquals(List.of(), wrong, example + " on " + paper);
    }

    private static boolean liesOn(LaidSegment segment, Extent text) {
        List<Point> line = segment.centreLine();
        for (int k = 1; k < line.size(); k++) {
            Capsule body = new Capsule(line.get(k - 1), line.get(k), segment.widthMm() / 2, 0);
            if (Capsule.of(text, Room.CARD).stream().anyMatch(body::meets)) {
                return true;
            }
        }
        return false;
    }

    /** What a splice is called is told on the tile that shows its mark. */
    @Test
    void aSplicesMarkAndItsNameAreOnOneTile() {
        int found = 0;
        for (FormBoard board : Boards.of("rescue-pickup", Paper.A3)) {
            for (Item item : board.items()) {
                if (item.mark() instanceof Text text && text.text().contains(" splice, ")) {
                    int[] tile = board.grid().tileAt(text.bounds().centre());
                    Extent picture = board.grid().picture(tile[0], tile[1]);
                    assertTrue(
                            board.items().stream()
                                    .anyMatch(mark -> mark.mark() instanceof Area area
                                            && mark.element().equals(item.element())
                                            && mark.layer() == Layer.CONNECTORS
                                            && picture.contains(area.bounds().centre())),
                            text.text());
                    found++;
                }
            }
        }
        assertTrue(found > 3, found + " splices");
    }

    @Test
    void everySegmentsIdAndLengthStandsOnItsBoardAndEverySplicesDistance() {
        Harness harness = AnalysedExamples.harness("star-ground");
        List<String> words = new ArrayList<>();
        Boards.of("star-ground", Paper.A4).forEach(board -> board.items().stream()
                .map(Item::mark)
                .filter(mark -> mark instanceof Text)
                .forEach(mark -> words.add(((Text) mark).text())));
        harness.segments()
                .all()
                .forEach(segment -> assertTrue(
                        words.contains(segment.id() + "  " + Math.round(segment.lengthMetres() * 1000) + " mm"),
                        segment.id().value()));
        assertTrue(words.contains("SP1 splice, 900 mm from B2"), words.toString());
    }

    @Test
    void bothScaleBarsAreAHundredMillimetresLong() {
        FormBoard board = Boards.of("teaching", Paper.A4).get(0);
        Scene sheet = Boards.tiles(AnalysedExamples.harness("teaching"), board).get(0);
        long bars = sheet.items().stream()
                .map(Item::mark)
                .filter(mark -> mark instanceof Box box
                        && box.fill().inside().isEmpty()
                        && box.fill().edge().equals(Optional.of(Ink.FRAME))
                        && Math.abs(Math.max(
                                                box.extent().widthMm(),
                                                box.extent().heightMm())
                                        + box.fill().edgeWidthMm()
                                        - 100)
                                < ROUNDING_MM)
                .count();
        assertEquals(2, bars);
    }

    private static List<Text> texts(Scene scene) {
        return scene.items().stream()
                .map(Item::mark)
                .filter(mark -> mark instanceof Text)
                .map(mark -> (Text) mark)
                .toList();
    }

    private static List<String> overlaps(Scene scene) {
        List<Text> texts = texts(scene);
        List<String> found = new ArrayList<>();
        for (int i = 0; i < texts.size(); i++) {
            Extent one = texts.get(i).bounds().grown(-ALLOWED_MM);
            for (int j = i + 1; j < texts.size(); j++) {
                if (one.overlaps(texts.get(j).bounds())) {
                    found.add(texts.get(i).dump() + " and " + texts.get(j).dump());
                }
            }
        }
        return found;
    }
}
