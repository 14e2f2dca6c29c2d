package org.ohmloom;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Size of the files, words that must not be in them, and the sentence that opens each package. */
class SourceFilesTest {
    private static final int LONGEST_FILE_LINES = 600;
    private static final int NINE_IN_TEN_LINES = 230;
    private static final int MEDIAN_LINES = 80;

    /** Marks of unfinished work; written in halves so that this file does not hold them itself. */
    private static final List<String> UNFINISHED = List.of(
            "TO" + "DO",
            "FIX" + "ME",
            "@Dis" + "abled",
            "UnsupportedOperation" + "Exception",
            "not implemented" + " yet");

    /** First words of each package's description: the row of the table of floors. */
    private static final Map<String, String> ROWS = Map.ofEntries(
            Map.entry("units", "Quantities: parsing"),
            Map.entry(
                    "words",
                    "Texts a person reads, from message bundles beside the code that says them, in any language."),
            Map.entry(
                    "model",
                    "The harness as immutable records with typed ids; refuses the impossible, allows the unfinished."),
            Map.entry(
                    "tables",
                    "Published reference data read from {@code wire-tables/}, each value with source, edition, table, status."),
            Map.entry("edit", "Named edits {@code Harness -> Harness}, undo history, the one mutable session."),
            Map.entry(
                    "store",
                    "The file format: versions, migration, atomic save, recovery; CSV and spreadsheet exchange; offers a JSON writer to later rows."),
            Map.entry(
                    "graph",
                    "The harness as graphs: electrical multigraph, return network, bundle tree; loops, routes, shared paths, islands."),
            Map.entry(
                    "solve",
                    "DC network solution for an operating state, its residual, its status per island; sensitivities."),
            Map.entry("bundle", "Diameters, packing, coverings, bend radius, cut length, mass."),
            Map.entry("heat", "Conductor temperature and ampacity; bundle, ambient, altitude."),
            Map.entry("size", "Choice of conductor and protective device, and why."),
            Map.entry("ground", "The return path study: loops, shared returns, offsets, sensor error."),
            Map.entry("signal", "Sensors, channels, bus topology and load."),
            Map.entry("review", "One class per rule, one list of all rules, findings with optional fix."),
            Map.entry(
                    "analysis",
                    "One snapshot in, one immutable {@code Analysis} out; cancellable; iterates solve and heat to agreement."),
            Map.entry("remedy", "Tries a change on a copy and reports the difference."),
            Map.entry(
                    "draw",
                    "Pure layout to a {@code Scene} in millimetres; one painter to any {@code Graphics2D}; hit testing."),
            Map.entry(
                    "bench",
                    "The finished harness on the bench: what each test must measure, and the judged record of what was measured."),
            Map.entry("pack", "The build pack: PDF, CSV, spreadsheet, labels."),
            Map.entry(
                    "manual",
                    "The manual: its pages, those written from rules, tables and formulas, and the search in them."),
            Map.entry("workbench", "The Swing workbench."),
            Map.entry("cli", "The command line; {@code org.ohmloom.Ohmloom} is the launcher."));

    @Test
    void filesAreShort() {
        Map<Path, Long> lines = new TreeMap<>();
        for (Path each : ourFiles()) {
            lines.put(each, OurClasses.text(each).lines().count());
        }
        List<Long> sorted = lines.values().stream().sorted().toList();
        assertEquals(
                List.of(),
                lines.entrySet().stream()
                        .filter(each -> each.getValue() > LONGEST_FILE_LINES)
                        .toList());
        assertTrue(sorted.get(sorted.size() / 2) <= MEDIAN_LINES, "median " + sorted.get(sorted.size() / 2));
        int ninth = sorted.size() * 9 / 10;
        assertTrue(sorted.get(ninth) <= NINE_IN_TEN_LINES, "nine in ten are within " + sorted.get(ninth));
    }

    @Test
    void nothingIsLeftUnfinished() {
        List<String> found = new ArrayList<>();
        for (Path each : ourFiles()) {
            String text = OurClasses.text(each);
            UNFINISHED.stream().filter(text::contains).forEach(mark -> found.add(each + ": " + mark));
        }
        assertEquals(List.of(), found);
    }

    @Test
    void everyPackageSaysWhatItIsAndIsNullMarked() {
        List<String> wrong = new ArrayList<>();
        List<Path> folders = OurClasses.javaFiles(OurClasses.MAIN_SOURCES).stream()
                .map(Path::getParent)
                .distinct()
                .toList();
        for (Path folder : folders) {
            Path description = folder.resolve("package-info.java");
            if (!Files.exists(description)) {
                wrong.add(folder + ": no package-info.java");
            } else if (!OurClasses.text(description).contains("\n@NullMarked\n")) {
                wrong.add(description + ": not @NullMarked");
            }
        }
        assertEquals(List.of(), wrong);
    }

    @Test
    void everyFloorOpensWithItsRowOfTheTable() {
        assertEquals(Floors.FLOOR_OF.keySet(), ROWS.keySet());
        List<String> wrong = new ArrayList<>();
        ROWS.forEach((name, row) -> {
            Path description = OurClasses.MAIN_SOURCES.resolve(Path.of("org", "ohmloom", name, "package-info.java"));
            String prose = OurClasses.text(description)
                    .replaceAll("\\s*\\n \\*\\s*", " ")
                    .replaceFirst("^/\\*\\* ?", "");
            if (!prose.strip().startsWith(row)) {
                wrong.add(description + " does not open with: " + row);
            }
        });
        assertEquals(List.of(), wrong);
    }

    private static List<Path> ourFiles() {
        return Stream.concat(
                        OurClasses.javaFiles(OurClasses.MAIN_SOURCES).stream(),
                        OurClasses.javaFiles(OurClasses.TEST_SOURCES).stream())
                .toList();
    }
}
