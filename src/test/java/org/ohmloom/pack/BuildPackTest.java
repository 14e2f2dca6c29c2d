package org.ohmloom.pack;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.ohmloom.AnalysedExamples;
import org.ohmloom.BesideOthers;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.model.Connector;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Wire;
import org.ohmloom.words.Text;

/** The pack of the largest example: complete, the same every time, and never half written. */
@BesideOthers
class BuildPackTest {
    private static Analysis pickup;
    private static Path pack;

    @TempDir
    private static Path folder;

    @BeforeAll
    static void writePack() {
        pickup = Packs.analysis("rescue-pickup");
        pack = Packs.written("rescue-pickup");
    }

    private static Path pdf(PackDocument document) {
        return Packs.find(pack, "-" + document.id() + ".pdf");
    }

    private static Path csv(String ending) {
        return Packs.find(pack, "-" + ending + ".csv");
    }

    @Test
    void everyWireToBeMadeIsInTheWireListAndNoOther() throws IOException {
        String text = Packs.text(pdf(PackDocument.WIRE_LIST));
        TreeSet<String> expected = new TreeSet<>();
        for (Wire wire : pickup.harness().wires().all()) {
            boolean found = text.contains(" " + wire.id() + " ");
            assertEquals(!wire.existing(), found, wire.id() + " in the text");
            if (!wire.existing()) {
                expected.add(wire.id().value());
            }
        }
        TreeSet<String> listed = new TreeSet<>();
        Packs.rows(csv("wire-list")).forEach(row -> listed.add(row.get("Wire")));
        assertEquals(expected, listed);
    }

    @Test
    void everySegmentWithItsCoveringAndEveryMarkingIsInTheBundles() throws IOException {
        String text = Packs.text(pdf(PackDocument.BUNDLES));
        List<Map<String, String>> segments = Packs.rows(csv("bundles"));
        assertEquals(pickup.harness().segments().size(), segments.size());
        segments.forEach(row -> assertTrue(text.contains(row.get("Segment")), row.toString()));
        long covered = pickup.harness().segments().all().stream()
                .filter(segment -> segment.covering().isPresent())
                .count();
        assertEquals(covered, Packs.rows(csv("bundles-coverings")).size());
        long made = pickup.harness().wires().all().stream()
                .filter(wire -> !wire.existing())
                .count();
        assertEquals(made, Packs.rows(csv("bundles-markings")).size());
    }

    @Test
    void thePartsOfEachLengthSumToWhatIsCut() throws IOException {
        for (Map<String, String> row : Packs.rows(csv("wire-list-lengths"))) {
            double sum = 0;
            for (Map.Entry<String, String> cell : row.entrySet()) {
                boolean part = cell.getKey().endsWith(" mm")
                        && !cell.getKey().startsWith("Cut to")
                        && !cell.getKey().startsWith("May be longer");
                sum += part && !cell.getValue().isEmpty() ? Double.parseDouble(cell.getValue()) : 0;
            }
            assertEquals(Double.parseDouble(row.get("Cut to mm")), sum, 1e-6, row.toString());
        }
    }

    @Test
    void everyConnectorAndCavityIsInThePinTables() throws IOException {
        String text = Packs.text(pdf(PackDocument.PIN_TABLES));
        List<Map<String, String>> rows = Packs.rows(csv("pin-tables"));
        for (Connector connector : pickup.harness().connectors().all()) {
            assertTrue(
                    text.contains(connector.id() + " " + connector.name()),
                    connector.id().value());
            connector
                    .cavities()
                    .forEach(cavity -> assertTrue(
                            rows.stream()
                                    .anyMatch(row -> row.get("Connector")
                                                    .equals(connector.id().value())
                                            && row.get("Cavity").equals(cavity.name())),
                            connector.id() + "." + cavity.name()));
        }
        assertTrue(text.contains("wire side"));
    }

    @Test
    void everyPartOfTheBillIsInItsText() throws IOException {
        String text = Packs.text(pdf(PackDocument.BILL_OF_MATERIALS));
        Harness harness = pickup.harness();
        for (Map<String, String> row : Packs.rows(csv("bill-of-materials"))) {
            assertTrue(text.contains(row.get("Part number")), row.toString());
        }
        harness.connectors().all().forEach(connector -> connector
                .part()
                .filter(part -> !connector.existing())
                .ifPresent(part -> assertTrue(text.contains(part.value()), part.value())));
    }

    @Test
    void aRowOfTheWireListSaysTheSameInTheFileAndOnThePage() throws IOException {
        List<String> lines = Packs.pages(pdf(PackDocument.WIRE_LIST)).stream()
                .flatMap(String::lines)
                .map(line -> line.replaceAll("\\s+", " "))
                .toList();
        for (Map<String, String> row : Packs.rows(csv("wire-list"))) {
            String line = lines.stream()
                    .filter(each -> each.startsWith(row.get("Wire") + " "))
                    .findFirst()
                    .orElseThrow(() -> new AssertionError("no line of " + row));
            String length = row.get("Length mm");
            String shown = length.isEmpty()
                    ? "unknown"
                    : new BigDecimal(length).setScale(0, RoundingMode.HALF_UP).toPlainString();
            for (String cell : List.of(row.get("From"), row.get("To"), row.get("Size"), row.get("Colour"), shown)) {
                assertTrue(line.contains(" " + cell), "'" + cell + "' in '" + line + "'");
            }
        }
    }

    @Test
    void lengthsAndVoltagesKeepEveryDigitInTheFile() throws IOException {
        Map<String, String> row = Packs.rows(csv("calculation-loads-worst")).get(0);
        String load = row.get("Load");
        String state = row.get("State");
        double margin = pickup.evidence().solutions().entrySet().stream()
                .filter(entry ->
                        pickup.harness().states().get(entry.getKey()).name().equals(state))
                .flatMap(entry -> entry.getValue().loads().values().stream())
                .filter(volts -> volts.load().value().equals(load))
                .mapToDouble(volts -> volts.limitVolts() - volts.onDropVolts())
                .findFirst()
                .orElseThrow();
        assertEquals(margin, Double.parseDouble(row.get("Margin V")));
    }

    @Test
    void theWorstLoadAndTheMostLoadedWireComeFirst() throws IOException {
        List<Double> margins = Packs.rows(csv("calculation-loads-worst")).stream()
                .map(row -> Double.valueOf(row.get("Margin V")))
                .toList();
        assertEquals(margins.stream().sorted().toList(), margins);
        List<Double> loadings = Packs.rows(csv("calculation-wires")).stream()
                .filter(row -> !row.get("Loaded to %").equals("unknown"))
                .map(row -> -Double.parseDouble(row.get("Loaded to %")))
                .toList();
        assertEquals(loadings.stream().sorted().toList(), loadings);
    }

    @Test
    void everyFindingAndCautionIsPrinted() throws IOException {
        String text = Packs.text(pdf(PackDocument.CALCULATION));
        pickup.findings().forEach(finding -> {
            String rule = finding.rule();
            assertTrue(text.contains(rule), rule);
        });
        for (PackDocument document : PackDocument.values()) {
            String all = Packs.text(pdf(document));
            assertTrue(all.contains("Results are a design aid."), document.id());
            assertTrue(all.contains("Disconnect the battery before you work"), document.id());
        }
    }

    @Test
    void everySheetSaysItsRevisionAndItsNumberOfHowMany() throws IOException {
        String revision = pickup.harness().titleBlock().currentRevision();
        for (PackDocument document : PackDocument.values()) {
            List<String> pages = Packs.pages(pdf(document));
            for (int k = 0; k < pages.size(); k++) {
                String page = pages.get(k).replaceAll("\\s+", " ");
                assertTrue(page.contains((k + 1) + " of " + pages.size()), document + " sheet " + (k + 1));
                assertTrue(page.contains(pickup.harness().titleBlock().number()), document.id());
                assertTrue(page.matches(".*\\bRev(ision|\\.).*\\b" + revision + "\\b.*"), document.id());
            }
        }
    }

    @Test
    void twoRunsGiveTheSameBytes() throws PackException {
        Path again = folder.resolve("again");
        BuildPack.write(AnalysedExamples.anew("rescue-pickup"), again, PackOptions.ALL, Progress.NONE);
        Map<String, byte[]> first = Packs.contents(pack);
        Map<String, byte[]> second = Packs.contents(again);
        assertEquals(first.keySet(), second.keySet());
        first.forEach((name, bytes) -> assertArrayEquals(bytes, second.get(name), name));
    }

    @Test
    void cancellingAtAnyStepChangesNothingInTheFolder() throws IOException, PackException {
        Analysis teaching = Packs.analysis("teaching");
        Path target = Files.createDirectory(folder.resolve("cancelled"));
        Files.writeString(target.resolve("EX-D-0001-wire-list.csv"), "older");
        Map<String, byte[]> before = Packs.contents(target);
        AtomicInteger asked = new AtomicInteger();
        PackOptions some = PackOptions.ALL.withDocuments("drawing,pin-tables,wire-list");
        BuildPack.write(teaching, folder.resolve("counted"), some, cancelAt(asked, Integer.MAX_VALUE));
        int checks = asked.get();
        assertTrue(checks >= some.documents().size(), "asked " + checks + " times");
        for (int at = 1; at <= checks; at++) {
            asked.set(0);
            Progress progress = cancelAt(asked, at);
            assertThrows(CancellationException.class, () -> BuildPack.write(teaching, target, some, progress));
            assertEquals(before.keySet(), Packs.contents(target).keySet(), "cancelled at check " + at);
        }
        assertEquals("older", Files.readString(target.resolve("EX-D-0001-wire-list.csv")));
    }

    private static Progress cancelAt(AtomicInteger asked, int at) {
        return new Progress() {
            @Override
            public boolean isCancelled() {
                return asked.incrementAndGet() >= at;
            }

            @Override
            public void step(int done, int total, Text what) {
                assertTrue(done <= total, what::english);
            }
        };
    }

    @Test
    void aCancelledPackLeavesNoFolderThatWasNotThere() {
        Path target = folder.resolve("never").resolve("made");
        Progress progress = cancelAt(new AtomicInteger(), 1);
        assertThrows(CancellationException.class, () -> BuildPack.write(pickup, target, PackOptions.ALL, progress));
        assertFalse(Files.exists(target));
    }

    @Test
    void aPathThatIsAFileIsRefusedInOneLine() throws IOException {
        Path file = Files.writeString(folder.resolve("a-file"), "mine");
        PackException refused =
                assertThrows(PackException.class, () -> BuildPack.write(pickup, file, PackOptions.ALL, Progress.NONE));
        assertEquals(file + ": this is a file; name a folder for the build pack", refused.getMessage());
        assertEquals("mine", Files.readString(file));
        PackException below = assertThrows(
                PackException.class,
                () -> BuildPack.write(pickup, file.resolve("below"), PackOptions.ALL, Progress.NONE));
        assertEquals(1, below.getMessage().lines().count());
    }

    @Test
    void aFileThatCannotBeReplacedIsNamedAndTheRestIsWhole() throws IOException {
        Path target = folder.resolve("blocked");
        Files.createDirectories(target.resolve("EX-D-0100-wire-list.csv"));
        PackException refused = assertThrows(
                PackException.class, () -> BuildPack.write(pickup, target, PackOptions.ALL, Progress.NONE));
        assertTrue(refused.getMessage().contains("wire-list.csv"), refused.getMessage());
        assertEquals(1, refused.getMessage().lines().count());
        Map<String, byte[]> whole = Packs.contents(pack);
        Packs.contents(target).forEach((name, bytes) -> {
            if (!name.endsWith("/")) {
                assertArrayEquals(whole.get(name), bytes, name);
            }
        });
    }
}
