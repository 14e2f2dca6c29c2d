package org.ohmloom.pack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.ohmloom.BesideOthers;
import org.ohmloom.model.Connector;
import org.ohmloom.model.Harness;
import org.ohmloom.model.WireEnd;

/** The installation sheet of the pickup. */
@BesideOthers
class InstallationSheetTest {

    private final Path pack = Packs.written("rescue-pickup");
    private final Harness harness = Packs.analysis("rescue-pickup").harness();

    private List<Map<String, String>> rows(String table) throws IOException {
        return Packs.rows(Packs.find(pack, "-installation-sheet-" + table + ".csv"));
    }

    @Test
    void inLinePairsAreMatedFirstAndTheNegativeOfTheBatteryLast() throws IOException {
        List<Map<String, String>> mating = rows("mating");
        assertEquals("X60", mating.get(0).get("Join"));
        assertTrue(mating.get(0).get("To").startsWith("X61 "), mating.get(0).toString());
        assertEquals("BT1.-", mating.get(mating.size() - 1).get("Join"));
        int units = 0;
        int others = 0;
        for (int k = 0; k < mating.size(); k++) {
            String stage = mating.get(k).get("Stage");
            units = stage.equals(MatingOrder.Stage.UNITS.words()) && units == 0 ? k : units;
            others = stage.equals(MatingOrder.Stage.EQUIPMENT.words()) ? k : others;
        }
        assertTrue(others < units, "the last load at " + others + ", the first control unit at " + units);
    }

    @Test
    void everyConnectorAndEveryTerminalWithAWireIsJoinedOnce() throws IOException {
        TreeSet<String> expected = new TreeSet<>();
        for (Connector connector : harness.connectors().all()) {
            boolean second = connector
                    .mate()
                    .filter(mate -> mate.compareTo(connector.id()) < 0)
                    .isPresent();
            if (!connector.existing() && !second) {
                expected.add(connector.id().value());
            }
        }
        harness.wires().all().stream()
                .filter(wire -> !wire.existing())
                .flatMap(wire -> wire.ends().stream())
                .filter(WireEnd.AtTerminal.class::isInstance)
                .forEach(end -> expected.add(end.text()));
        List<String> joined =
                rows("mating").stream().map(row -> row.get("Join")).toList();
        assertEquals(expected, new TreeSet<>(joined));
        assertEquals(expected.size(), joined.size());
    }

    @Test
    void aSegmentThatEndsWhereAnotherZoneBeginsAsksForAGrommet() throws IOException {
        Map<String, String> through = rows("route").stream()
                .filter(row -> row.get("Segment").equals("SHE"))
                .findFirst()
                .orElseThrow();
        assertTrue(through.get("Mind").contains("grommet or edge guard at HB"), through.toString());
        assertEquals(harness.segments().size(), rows("route").size());
    }

    /** What is bought is what is fitted: of each size as many on both sheets, and together as many as all segments take. */
    @Test
    void theSupportsOfAllSegmentsAreCountedBySizeAsOnTheBill() throws IOException {
        Map<String, Integer> fitted = supports(rows("fasteners"), "Fastener", "Count");
        assertEquals(
                supports(Packs.rows(Packs.find(pack, "-bill-of-materials.csv")), "Description", "Quantity"), fitted);
        int supports = fitted.values().stream().mapToInt(Integer::intValue).sum();
        assertEquals(
                rows("route").stream()
                        .mapToInt(row -> (int) Double.parseDouble(row.get("Supports")))
                        .sum(),
                supports);
        assertTrue(supports > harness.segments().size());
    }

    private static Map<String, Integer> supports(List<Map<String, String>> rows, String words, String count) {
        Map<String, Integer> counts = new TreeMap<>();
        rows.stream()
                .filter(row -> row.get(words).startsWith("support"))
                .forEach(row -> counts.merge(row.get(words), (int) Double.parseDouble(row.get(count)), Integer::sum));
        return counts;
    }
}
