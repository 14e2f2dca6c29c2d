package org.ohmloom.workbench.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.formdev.flatlaf.FlatSystemProperties;
import java.awt.event.KeyEvent;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.apache.commons.codec.digest.DigestUtils;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.ohmloom.AnalysedExamples;
import org.ohmloom.FullOnly;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.model.Harness;
import org.ohmloom.model.OperatingState;
import org.ohmloom.model.Wire;
import org.ohmloom.store.HarnessFiles;
import org.ohmloom.workbench.CountedHand;
import org.ohmloom.workbench.HandAtATable;
import org.ohmloom.workbench.HandAtTheLists;
import org.ohmloom.workbench.OnEventThread;

/**
 * The teaching example, built by mouse and keyboard from an empty window: its hand-worked numbers are read off the screen, it is
 * saved, opened again and exported. Skipped where there is no display.
 */
@FullOnly
class TeachingByHandTest extends HandAtTheLayout {

    /** The notes of the example print four decimals, temperatures two. */
    private static final double FOUR_DECIMALS = 0.5e-4, TWO_DECIMALS = 0.5e-2;

    /** Numbers of the harness built and of the example are those of one and the same model. */
    private static final double SAME = 1e-9;

    private static final int BETWEEN_MILLIS = 2;

    private CountedHand hand;

    @BeforeEach
    void takeMouseAndKeyboard() throws Exception {
        // The dialogs of the system would not be those of the program.
        System.setProperty(FlatSystemProperties.USE_SYSTEM_FILE_CHOOSER, "false");
        hand = new CountedHand(BETWEEN_MILLIS);
        OnEventThread.run(() -> window.setBounds(0, 0, 1600, 1000));
        robot.waitForIdle();
    }

    @AfterEach
    void giveTheDialogsBack() {
        System.clearProperty(FlatSystemProperties.USE_SYSTEM_FILE_CHOOSER);
    }

    @Test
    void theTeachingExampleIsBuiltFromAnEmptyWindowReadSavedOpenedAndExported() throws Exception {
        Analysis example = AnalysedExamples.of("teaching");
        hand.shortcut(KeyEvent.VK_CONTROL, KeyEvent.VK_SHIFT, KeyEvent.VK_N);
        OnEventThread.await("the new harness", () -> desk().document().isPresent());
        settle();
        new TeachingBoard(this, hand).draw();
        new TeachingLists(hand).type(example.harness());
        assertEquals(apart(example.harness()), apart(harness()));
        undoAndRedo();
        assertEquals(apart(example.harness()), apart(harness()));
        OnEventThread.await("results", () -> desk().isWhole());
        theNumbersWorkedByHandAreOnTheScreen();
        theNumbersAre(example);

        Path file = folder.resolve("by-hand" + HarnessFiles.ENDING);
        hand.shortcut(KeyEvent.VK_CONTROL, KeyEvent.VK_SHIFT, KeyEvent.VK_S);
        hand.nameFile(folder.resolve("by-hand"));
        OnEventThread.await(
                "the file", () -> desk().document().orElseThrow().file().isPresent());
        assertEquals(apart(example.harness()), apart(HarnessFiles.read(file)));
        hand.shortcut(KeyEvent.VK_CONTROL, KeyEvent.VK_W);
        OnEventThread.await("the start screen", () -> CountedHand.isSeen("start"));
        hand.shortcut(KeyEvent.VK_CONTROL, KeyEvent.VK_O);
        hand.nameFile(file);
        OnEventThread.await("the file", () -> desk().document().isPresent());
        OnEventThread.await("results", () -> desk().isWhole());
        theNumbersWorkedByHandAreOnTheScreen();

        Path pack = folder.resolve("pack");
        hand.shortcut(KeyEvent.VK_CONTROL, KeyEvent.VK_E);
        hand.enter("pack-folder", pack.toString());
        hand.click("write-pack");
        OnEventThread.await("the pack", () -> !CountedHand.isSeen("write-pack"));
        everyWireIsInThePack(pack);
        assertTrue(Files.readString(pack.resolve("EX-D-0001-manifest.csv"))
                .contains("harness as saved," + Files.size(file) + ","
                        + DigestUtils.sha256Hex(Files.readAllBytes(file))));
        assertEquals(apart(example.harness()), apart(harness()));
    }

    /** A harness but for where things stand on its board. */
    private static Harness apart(Harness harness) {
        return harness.withLayout(new TreeMap<>());
    }

    private void undoAndRedo() {
        Harness before = harness();
        for (int k = 0; k < 3; k++) {
            hand.shortcut(KeyEvent.VK_CONTROL, KeyEvent.VK_Z);
        }
        OnEventThread.await(
                "three steps back", () -> !desk().harness().orElseThrow().equals(before));
        for (int k = 0; k < 3; k++) {
            hand.shortcut(KeyEvent.VK_CONTROL, KeyEvent.VK_SHIFT, KeyEvent.VK_Z);
        }
        OnEventThread.await(
                "three steps on", () -> desk().harness().orElseThrow().equals(before));
    }

    /** Steps 3 to 8 of the notes of the example, every number with every decimal printed there. */
    private void theNumbersWorkedByHandAreOnTheScreen() throws Exception {
        hand.choose("state", "Heater and pump");
        HandAtTheLists lists = new HandAtTheLists(hand, "Loads");
        reads(lists, "H1", Map.of("Current (A)", 4.9810, "Volts (V)", 11.9544));
        reads(lists, "H1", Map.of("Feed drop (V)", 0.3321, "Return drop (V)", 0.1539, "Drop (V)", 0.4860));
        reads(lists, "P1", Map.of("Current (A)", 3.0000, "Volts (V)", 11.9931));
        reads(lists, "P1", Map.of("Feed drop (V)", 0.3186, "Return drop (V)", 0.1287, "Drop (V)", 0.4473));
        lists.open("Sources");
        reads(lists, "BT1", Map.of("Gives (A)", 7.9810));
        lists.open("Wires");
        wire(lists, "W1", 7.9810, 21.87);
        wire(lists, "W2", 7.9810, 23.27);
        wire(lists, "W3", 7.9810, 23.27);
        wire(lists, "W4", 4.9810, 23.16);
        wire(lists, "W5", 3.0000, 21.22);
        wire(lists, "W6", 4.9810, 23.16);
        wire(lists, "W7", 3.0000, 22.13);
        wire(lists, "W8", 7.9810, 21.87);
        hand.choose("state", "Heater alone");
        lists.open("Loads");
        reads(lists, "H1", Map.of("Current (A)", 5.0495, "Volts (V)", 12.1187, "Drop (V)", 0.3803));
    }

    private static void wire(HandAtTheLists lists, String wire, double amps, double celsius) throws Exception {
        reads(lists, wire, Map.of("Current (A)", amps), FOUR_DECIMALS);
        reads(lists, wire, Map.of("Temp. (°C)", celsius), TWO_DECIMALS);
    }

    private static void reads(HandAtTheLists lists, String row, Map<String, Double> byHand) throws Exception {
        reads(lists, row, byHand, FOUR_DECIMALS);
    }

    /** What a row shows is the number worked by hand to the last digit shown; copied out, to the last digit worked. */
    private static void reads(HandAtTheLists lists, String row, Map<String, Double> byHand, double within)
            throws Exception {
        HandAtATable table = lists.front();
        Map<String, String> copied = table.copied(row);
        for (Map.Entry<String, Double> each : byHand.entrySet()) {
            String what = each.getKey() + " of " + row;
            String shown = table.shown(row, each.getKey());
            assertEquals(each.getValue(), Double.parseDouble(shown), lastDigit(shown), what);
            assertEquals(each.getValue(), Double.parseDouble(copied.get(each.getKey())), within, what);
        }
    }

    /** Half a unit of the last digit of a number, and what it may have been rounded by before. */
    private static double lastDigit(String shown) {
        int decimals = shown.contains(".") ? shown.length() - shown.indexOf('.') - 1 : 0;
        return 0.5 * Math.pow(10, -decimals) + FOUR_DECIMALS;
    }

    private void theNumbersAre(Analysis example) {
        Analysis built = OnEventThread.get(() -> desk().analysis().orElseThrow());
        for (OperatingState state : example.states()) {
            example.solution(state.id()).orElseThrow().loads().forEach((id, load) -> {
                var found = built.solution(state.id()).orElseThrow().loads().get(id);
                assertEquals(load.amps(), found.amps(), SAME);
                assertEquals(load.dropVolts(), found.dropVolts(), SAME);
            });
        }
    }

    private void everyWireIsInThePack(Path pack) throws IOException {
        StringBuilder text = new StringBuilder();
        try (Stream<Path> files = Files.list(pack)) {
            for (Path file :
                    files.filter(each -> each.toString().endsWith(".pdf")).toList()) {
                try (PDDocument document = Loader.loadPDF(file.toFile())) {
                    text.append(new PDFTextStripper().getText(document)).append(' ');
                }
            }
        }
        List<String> missing = harness().wires().all().stream()
                .map(Wire::id)
                .map(Object::toString)
                .filter(id -> !Pattern.compile("\\b" + id + "\\b").matcher(text).find())
                .toList();
        assertEquals(List.of(), missing);
    }
}
