package org.ohmloom.pack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.ohmloom.BesideOthers;
import org.ohmloom.model.Cavity;
import org.ohmloom.model.Connector;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireEnd;

/**
 * The text of the pages, extracted as a reader of PDF would, names every wire, cavity and part as often as the model has it:
 * each counted on the pages and in the model.
 */
@BesideOthers
class PackCountsTest {

    /** Words of each line of a document, in reading order. */
    private static List<List<String>> lines(String example, String document) throws IOException {
        Path pdf = Packs.find(Packs.written(example), "-" + document + ".pdf");
        return Packs.pages(pdf).stream()
                .flatMap(String::lines)
                .map(line -> Arrays.asList(line.strip().split("\\s+")))
                .toList();
    }

    @ParameterizedTest
    @MethodSource("org.ohmloom.pack.Packs#examples")
    void everyWireToBeMadeIsOneLineOfTheCutListWithItsEnds(String example) throws IOException {
        List<List<String>> lines = lines(example, "wire-list");
        for (Wire wire : Packs.analysis(example).harness().wires().all()) {
            String from = wire.from().text();
            String to = wire.to().text();
            long count = lines.stream()
                    .filter(line -> line.contains(wire.id().value())
                            && Collections.frequency(line, from) + Collections.frequency(line, to)
                                    >= (from.equals(to) ? 2 : 1)
                            && line.indexOf(from) > line.indexOf(wire.id().value())
                            && line.lastIndexOf(to) > line.indexOf(from)
                            && line.get(0).equals(wire.id().value())
                            && (line.contains("route") || line.contains("entered") || line.contains("unknown")))
                    .count();
            assertEquals(wire.existing() ? 0 : 1, count, wire.id() + " from " + from + " to " + to);
        }
    }

    /** The lines under the heading of each connector, up to the next. */
    private static Map<Connector, List<List<String>>> sections(Harness harness, List<List<String>> lines) {
        Map<String, Connector> headings = new HashMap<>();
        harness.connectors()
                .all()
                .forEach(each -> headings.put(String.join(" ", (each.id() + " " + each.name()).split("\\s+")), each));
        Map<Connector, List<List<String>>> sections = new HashMap<>();
        List<List<String>> section = new ArrayList<>();
        for (List<String> line : lines) {
            String text = String.join(" ", line);
            if (headings.containsKey(text)) {
                assertTrue(!sections.containsKey(headings.get(text)), text + " heads two sections");
                section = new ArrayList<>();
                sections.put(headings.get(text), section);
            } else if (text.equals("Splices") || text.startsWith("Studs, screws")) {
                section = new ArrayList<>();
            }
            section.add(line);
        }
        return sections;
    }

    @ParameterizedTest
    @MethodSource("org.ohmloom.pack.Packs#examples")
    void everyCavityIsAsManyLinesOfItsPinTableAsItHasWires(String example) throws IOException {
        Harness harness = Packs.analysis(example).harness();
        Map<Connector, List<List<String>>> sections = sections(harness, lines(example, "pin-tables"));
        assertEquals(harness.connectors().size(), sections.size());
        for (Connector connector : harness.connectors().all()) {
            List<List<String>> lines = sections.get(connector);
            for (Cavity cavity : connector.cavities()) {
                WireEnd here = new WireEnd.AtCavity(connector.id(), cavity.name());
                List<Wire> wires = harness.wires().all().stream()
                        .filter(wire -> wire.ends().contains(here))
                        .toList();
                for (Wire wire : wires) {
                    assertEquals(1, starting(lines, cavity.name(), wire.id().value()), here.text() + " " + wire.id());
                }
                if (wires.isEmpty()) {
                    assertEquals(1, starting(lines, cavity.name(), "unused"), here.text() + " unused");
                }
            }
        }
    }

    /** Lines that begin with a cavity and have a word in one of their next places: after what the cavity meets. */
    private static long starting(List<List<String>> lines, String cavity, String word) {
        List<String> name = Arrays.asList(cavity.split("\\s+"));
        return lines.stream()
                .filter(line -> line.size() > name.size()
                        && line.subList(0, name.size()).equals(name)
                        && line.subList(name.size(), Math.min(line.size(), name.size() + 4))
                                .contains(word))
                .count();
    }

    @ParameterizedTest
    @MethodSource("org.ohmloom.pack.Packs#examples")
    void everyPartOfTheBillIsOnAsManyLinesAsItHasItemsWithTheirQuantity(String example) throws IOException {
        List<List<String>> lines = lines(example, "bill-of-materials");
        Map<String, Integer> items = new TreeMap<>();
        for (String table : List.of("bill-of-materials", "bill-of-materials-purchasing")) {
            for (Map<String, String> row : Packs.rows(Packs.find(Packs.written(example), "-" + table + ".csv"))) {
                items.merge(row.get("Part number"), 1, Integer::sum);
            }
        }
        items.keySet().removeAll(List.of("not chosen", "by description"));
        assertTrue(!items.isEmpty(), example + " has parts");
        items.forEach((part, count) -> assertEquals(
                (long) count,
                lines.stream().filter(line -> isItem(line, line.indexOf(part))).count(),
                part));
    }

    /** A line of the bill: item, two quantities, unit, part; or of the purchases: its items, part. */
    private static boolean isItem(List<String> line, int part) {
        return part > 0
                && line.get(0).matches("\\d+,?")
                && (part == 4 || line.subList(0, part).stream().allMatch(word -> word.matches("\\d+,?")));
    }

    @ParameterizedTest
    @MethodSource("org.ohmloom.pack.Packs#examples")
    void theDrawingNamesEveryConnectorComponentSpliceAndGround(String example) throws IOException {
        Harness harness = Packs.analysis(example).harness();
        Map<String, Integer> words = new HashMap<>();
        lines(example, "drawing").forEach(line -> line.forEach(word -> words.merge(word, 1, Integer::sum)));
        harness.connectors()
                .all()
                .forEach(each -> assertTrue(words.containsKey(each.id().value()), each + " is drawn"));
        harness.components()
                .all()
                .forEach(each -> assertTrue(words.containsKey(each.id().value()), each + " is drawn"));
        harness.splices()
                .all()
                .forEach(each -> assertTrue(words.containsKey(each.id().value()), each + " is drawn"));
        harness.grounds()
                .all()
                .forEach(each -> assertTrue(words.containsKey(each.id().value()), each + " is drawn"));
        harness.segments()
                .all()
                .forEach(each -> assertTrue(words.containsKey(each.id().value()), each + " is drawn"));
    }
}
