package org.ohmloom.pack;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.ohmloom.AnalysedExamples;
import org.ohmloom.Campaign;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.tables.WireTables;

/** Packs of the examples, and ways to read what was written. */
final class Packs {
    private static final WireTables TABLES = WireTables.bundled();

    private static final Map<String, Analysis> ANALYSES = new ConcurrentHashMap<>();

    private static final Map<String, Path> WRITTEN = new ConcurrentHashMap<>();

    private Packs() {}

    /** Names of the examples whose whole packs are looked at: two by default, all in the full campaign. */
    static List<String> examples() {
        return Campaign.FULL
                ? List.of("teaching", "rescue-pickup", "workboat", "faults", "star-ground")
                : List.of("teaching", "rescue-pickup");
    }

    /** The analysis of an example, made once. */
    static Analysis analysis(String example) {
        return ANALYSES.computeIfAbsent(example, Packs::analyse);
    }

    /** A fresh analysis of an example. */
    static Analysis analyse(String example) {
        return AnalysedExamples.of(example);
    }

    /** A folder with the whole pack of an example, written once; it is for reading. */
    static Path written(String example) {
        return WRITTEN.computeIfAbsent(example, name -> {
            try {
                Path folder = Files.createTempDirectory("pack-" + name);
                BuildPack.write(analysis(name), folder, PackOptions.ALL, Progress.NONE)
                        .forEach(file -> file.toFile().deleteOnExit());
                folder.toFile().deleteOnExit();
                return folder;
            } catch (IOException | PackException failed) {
                throw new AssertionError(failed);
            }
        });
    }

    /** Content of every file in a folder by name, sub-folders with an ending slash. */
    static Map<String, byte[]> contents(Path folder) {
        Map<String, byte[]> contents = new TreeMap<>();
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.filter(each -> !each.equals(folder)).toList()) {
                String name = folder.relativize(file).toString();
                contents.put(
                        Files.isDirectory(file) ? name + "/" : name,
                        Files.isDirectory(file) ? new byte[0] : Files.readAllBytes(file));
            }
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
        return contents;
    }

    /** The one file of the folder with that ending. */
    static Path find(Path folder, String ending) {
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(file -> file.getFileName().toString().endsWith(ending))
                    .findFirst()
                    .orElseThrow(() -> new AssertionError("no file *" + ending + " in " + folder));
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    /** Text of each page, lines in reading order. */
    static List<String> pages(Path pdf) throws IOException {
        return pages(pdf, true);
    }

    private static List<String> pages(Path pdf, boolean inReadingOrder) throws IOException {
        List<String> pages = new ArrayList<>();
        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
            PDFTextStripper stripper = new PDFTextStripper();
            stripper.setSortByPosition(inReadingOrder);
            for (int page = 1; page <= document.getNumberOfPages(); page++) {
                stripper.setStartPage(page);
                stripper.setEndPage(page);
                pages.add(stripper.getText(document));
            }
        }
        return pages;
    }

    /** All text as it was drawn, text by text, any white space as one space. */
    static String text(Path pdf) throws IOException {
        return String.join(" ", pages(pdf, false)).replaceAll("\\s+", " ");
    }

    /** Every letter of a page with its position. */
    static List<TextPosition> letters(PDDocument document, int page) throws IOException {
        List<TextPosition> letters = new ArrayList<>();
        PDFTextStripper stripper = new PDFTextStripper() {
            @Override
            protected void processTextPosition(TextPosition text) {
                letters.add(text);
            }
        };
        stripper.setStartPage(page);
        stripper.setEndPage(page);
        stripper.getText(document);
        return Collections.unmodifiableList(letters);
    }

    /** Rows of a table file by head. */
    static List<Map<String, String>> rows(Path csv) throws IOException {
        List<Map<String, String>> rows = new ArrayList<>();
        CSVFormat format = CSVFormat.RFC4180
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .get();
        for (CSVRecord row : format.parse(Files.newBufferedReader(csv))) {
            rows.add(new LinkedHashMap<>(row.toMap()));
        }
        return rows;
    }
}
