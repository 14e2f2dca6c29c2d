package org.ohmloom.pack.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.ohmloom.BesideOthers;
import org.ohmloom.draw.Anchor;
import org.ohmloom.draw.Extent;
import org.ohmloom.draw.Ink;
import org.ohmloom.draw.Item;
import org.ohmloom.draw.Layer;
import org.ohmloom.draw.Point;
import org.ohmloom.draw.Scene;
import org.ohmloom.draw.SceneFonts;
import org.ohmloom.draw.Text;
import org.ohmloom.draw.Weight;
import org.ohmloom.model.WireColour;
import org.ohmloom.units.Unit;

/** Tables keep their rows whole, repeat their heads, and let nothing leave the frame. */
@BesideOthers
class ReportPagesTest {
    private static final TitleFields FIELDS = new TitleFields(
            Optional.of("Example"),
            "EX-1",
            "B",
            Optional.of("2025-01-31"),
            Optional.of("en"),
            "Test harness",
            Optional.empty(),
            "Test report",
            Optional.of("A. Example"),
            Optional.empty());

    private final ReportPages pages = new ReportPages(SceneFonts.load());

    private List<Scene> set(Block... blocks) {
        return pages.set(new Report(List.of(blocks), "A remark."), FIELDS).scenes();
    }

    private static List<Text> texts(Scene scene) {
        return scene.items().stream()
                .map(Item::mark)
                .filter(Text.class::isInstance)
                .map(Text.class::cast)
                .toList();
    }

    private static String words(Scene scene) {
        return texts(scene).stream().map(Text::text).collect(Collectors.joining("\n"));
    }

    private static Block.Table table(int rows) {
        List<Row> all = new ArrayList<>();
        for (int k = 1; k <= rows; k++) {
            all.add(Row.of(Cell.text("W" + k), Cell.text("circuit of wire " + k), Cell.number(k / 8.0)));
        }
        return new Block.Table(
                "",
                List.of(Column.code("Wire"), Column.words("Circuit"), Column.number("Length", Unit.METRE, 2)),
                all,
                "");
    }

    @Test
    void everyPageOfALongTableHasTheHeadAndItsPlace() {
        List<Scene> scenes = set(new Block.Heading("Wires"), table(300));
        assertTrue(scenes.size() >= 3, "300 rows of 5 mm in three columns take three sheets of 155 mm");
        for (int k = 0; k < scenes.size(); k++) {
            List<String> words = texts(scenes.get(k)).stream().map(Text::text).toList();
            assertTrue(words.containsAll(List.of("Wire", "Circuit", "Length", "m")), words.toString());
            assertTrue(words.contains((k + 1) + " of " + scenes.size()));
            assertEquals(k > 0, words.contains("Wires (continued)"));
        }
    }

    /** Down the first column, then down the next; on the last sheet all are equally high. */
    @Test
    void aNarrowTableGoesOnBesideItselfWithItsHeadAndARowWithoutRoomForThatDoesNot() {
        Scene scene = set(table(30)).get(0);
        List<Text> heads =
                texts(scene).stream().filter(text -> text.text().equals("Wire")).toList();
        assertEquals(3, heads.size());
        for (int k = 1; k <= 30; k++) {
            double left = find(scene, "W" + k).bounds().leftMm();
            // 30 rows in three columns are ten to a column
            assertEquals(heads.get((k - 1) / 10).bounds().leftMm(), left, 1e-6, "W" + k);
        }
        assertTrue(find(scene, "W1").at().yMm() < find(scene, "W2").at().yMm());
        assertEquals(find(scene, "W1").at().yMm(), find(scene, "W11").at().yMm(), 1e-6);
        assertEquals(1, headsOf(table(4)));
    }

    private long headsOf(Block.Table table) {
        return texts(set(table).get(0)).stream()
                .filter(text -> text.text().equals("Wire"))
                .count();
    }

    /** Wherever the table ends on its page, what is said about it is not on the next alone. */
    @Test
    void aNoteBehindATableStandsWithItsLastRows() {
        String wide = "a circuit so long that the table has no room beside itself".repeat(2);
        for (int count = 1; count <= 40; count++) {
            List<Row> rows = new ArrayList<>();
            for (int k = 1; k <= count; k++) {
                rows.add(Row.of(Cell.text("W" + k), Cell.text(wide)));
            }
            Block.Table table = new Block.Table("", List.of(Column.code("Wire"), Column.code("Circuit")), rows, "");
            String last = "W" + count;
            List<String> noted = set(table, new Block.Prose("The note."), new Block.Heading("Next")).stream()
                    .map(scene -> texts(scene).stream().map(Text::text).toList())
                    .filter(words -> words.contains("The note."))
                    .findFirst()
                    .orElseThrow();
            assertTrue(noted.contains(last), count + " rows");
        }
    }

    /** "EX-D-0101" over counts of one digit: broken behind its hyphen the column leaves room for the words beside it. */
    @Test
    void theHeadOfANarrowColumnIsBrokenBehindAHyphen() {
        String words = "words that take nearly all of the sheet, one after the other, ".repeat(3);
        Block.Table table = new Block.Table(
                "",
                List.of(Column.code("Text"), Column.count("EX-D-0101", 0), Column.count("Two words", 0)),
                List.of(Row.of(Cell.text(words), Cell.number(1), Cell.number(2))),
                "");
        List<String> printed = texts(set(table).get(0)).stream().map(Text::text).toList();
        assertTrue(printed.containsAll(List.of("EX-D-", "0101")), printed.toString());
    }

    @Test
    void aSmallNumberBelowZeroIsPrintedWithItsFirstDigit() {
        Column column = Column.number("Offset", Unit.MILLIVOLT, 0);
        assertEquals("<1", column.print(0.3));
        assertEquals("-0.3", column.print(-0.3));
        assertEquals("-0.04", column.print(-0.0412));
        assertEquals("-2", column.print(-1.6));
    }

    @Test
    void noRowIsLostOrTornApart() {
        List<Scene> scenes = set(table(100));
        for (int k = 1; k <= 100; k++) {
            String id = "W" + k;
            String circuit = "circuit of wire " + k;
            long whole = scenes.stream()
                    .map(scene -> texts(scene).stream().map(Text::text).toList())
                    .filter(words -> words.contains(id) && words.contains(circuit))
                    .count();
            assertEquals(1, whole, id);
        }
    }

    @Test
    void aRowHigherThanAPageGoesOnOnTheNext() {
        String essay = "word ".repeat(6000).strip();
        Block.Table table = new Block.Table(
                "",
                List.of(Column.code("Id"), Column.words("Text")),
                List.of(Row.of(Cell.text("A"), Cell.text(essay))),
                "");
        List<Scene> scenes = set(table);
        long words = scenes.stream()
                .map(ReportPagesTest::words)
                .flatMap(text -> List.of(text.split("\\s+")).stream())
                .filter("word"::equals)
                .count();
        assertEquals(6000, words);
        scenes.forEach(ReportPagesTest::assertTidy);
    }

    @Test
    void numbersStandToTheRightAndTheirUnitInTheHead() {
        Scene scene = set(table(2)).get(0);
        Text first = find(scene, "0.13");
        Text second = find(scene, "0.25");
        assertEquals(right(first), right(second), 1e-9);
        assertFalse(words(scene).contains("0.25 m"));
    }

    @Test
    void aLongIdIsKeptOnOneLine() {
        String id = "EX-CONTACT-6.3-TIN-SEALED-0.5-1.0-REEL";
        Block.Table table = new Block.Table(
                "",
                List.of(Column.code("Part number"), Column.words("Description")),
                List.of(Row.of(Cell.text(id), Cell.text("a contact with a very long description ".repeat(20)))),
                "");
        assertTrue(
                texts(set(table).get(0)).stream().anyMatch(text -> text.text().equals(id)));
    }

    @Test
    void aTableTooWideForThePageIsBrokenInsideItsColumnsAndKeepsEveryLetter() {
        List<Column> columns = new ArrayList<>();
        List<Cell> cells = new ArrayList<>();
        for (int k = 0; k < 14; k++) {
            columns.add(Column.code("Column" + k));
            cells.add(Cell.text("EX-" + (char) ('a' + k) + "x".repeat(30)));
        }
        Scene scene = set(new Block.Table("", columns, List.of(Row.of(cells.toArray(Cell[]::new))), ""))
                .get(0);
        assertTidy(scene);
        long letters = words(scene).chars().filter(letter -> letter == 'x').count();
        assertTrue(letters >= 14 * 30, "of 420 letters x only " + letters + " are there");
    }

    @Test
    void nothingLeavesTheFrameOrLiesOnSomethingElse() {
        Random random = new Random(20250131);
        for (int round = 0; round < 30; round++) {
            for (Scene scene : set(
                    new Block.Heading("Heading " + "long ".repeat(random.nextInt(60))),
                    new Block.Notice("Read this", List.of(noise(random, 60), noise(random, 3))),
                    new Block.Facts(List.of(
                            new Block.Fact("Label", noise(random, 30)),
                            new Block.Fact("Other label", noise(random, 2)))),
                    new Block.Points(List.of(noise(random, 40))),
                    randomTable(random))) {
                assertTidy(scene);
            }
        }
    }

    @Test
    void aLongTitleShrinksIntoItsField() {
        TitleFields wordy = new TitleFields(
                Optional.of("A legal owner with a name that goes on and on for most of a line"),
                "EX-0123456789-0123456789-0123456789",
                "AB",
                Optional.of("2025-01-31"),
                Optional.of("en"),
                "A harness with a title far longer than the twenty-five letters the standard recommends",
                Optional.of("and a second line that is not short either, to say the least of it"),
                "A document type of unusual length for one",
                Optional.of("Somebody Somewhere-Somename"),
                Optional.of("Another Person Altogether"));
        for (Scene scene : pages.set(new Report(List.of(table(1)), "remark ".repeat(30)), wordy)
                .scenes()) {
            assertTidy(scene);
        }
    }

    private static Block.Table randomTable(Random random) {
        List<Column> columns = List.of(
                Column.code("Id"),
                Column.words("Name " + noise(random, 2)),
                Column.number("Amount", Unit.AMP, random.nextInt(4)),
                Column.colour("Colour"),
                Column.words("Remark"));
        List<Row> rows = new ArrayList<>();
        for (int k = random.nextInt(40); k >= 0; k--) {
            if (random.nextInt(6) == 0) {
                rows.add(Row.group(noise(random, 5)));
            }
            rows.add(Row.of(
                    Cell.text("X" + random.nextInt(1000000)),
                    Cell.text(noise(random, random.nextInt(12))),
                    Cell.number(random.nextGaussian() * Math.pow(10, random.nextInt(7) - 3)),
                    Cell.colour(WireColour.parse(random.nextBoolean() ? "RD" : "GNYEBK")),
                    Cell.text(noise(random, random.nextInt(30))).toned(Cell.Tone.ALERT)));
        }
        return new Block.Table("", columns, rows, "");
    }

    private static String noise(Random random, int words) {
        return random.ints(words, 1, 16)
                .mapToObj(length -> random.ints(length, 'a', 'z' + 1)
                        .mapToObj(letter -> String.valueOf((char) letter))
                        .collect(Collectors.joining()))
                .collect(Collectors.joining(" "));
    }

    private static Text find(Scene scene, String words) {
        return texts(scene).stream()
                .filter(text -> text.text().equals(words))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no text '" + words + "' in " + words(scene)));
    }

    private static double right(Text text) {
        return text.bounds().rightMm();
    }

    /** Every text inside the frame, and no two on each other. */
    static void assertTidy(Scene scene) {
        Extent frame = new Extent(20, 10, 287, 200);
        List<Text> texts = texts(scene);
        for (int k = 0; k < texts.size(); k++) {
            Extent bounds = texts.get(k).bounds().grown(-0.05);
            assertTrue(frame.contains(bounds), texts.get(k).text() + " leaves the frame: " + bounds);
            for (Text other : texts.subList(0, k)) {
                assertFalse(
                        bounds.overlaps(other.bounds().grown(-0.05)),
                        "'" + texts.get(k).text() + "' lies on '" + other.text() + "'");
            }
        }
    }

    @Test
    void picturesStandSideBySideAndAreNotTornByTheEndOfAPage() {
        // Two of 128 mm stand beside each other on 260 mm, the third below; the fourth line of 60 mm finds no room.
        Scene one = new Scene(
                128,
                60,
                List.of(Item.of(
                        Layer.SHEET,
                        new Text("picture", new Point(1, 3), 2, 10, Anchor.START, 0, Weight.REGULAR, Ink.TEXT))));
        List<Scene> sheets = set(new Block.Pictures(List.of(one, one, one, one, one)));
        List<Text> first = texts(sheets.get(0)).stream()
                .filter(text -> text.text().equals("picture"))
                .toList();
        assertEquals(4, first.size());
        assertEquals(first.get(0).at().yMm(), first.get(1).at().yMm());
        assertEquals(first.get(0).at().xMm() + 132, first.get(1).at().xMm(), 1e-9);
        assertTrue(first.get(2).at().yMm() >= first.get(0).at().yMm() + 60);
        assertEquals(2, sheets.size());
    }
}
