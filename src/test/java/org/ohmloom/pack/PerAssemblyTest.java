package org.ohmloom.pack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.analysis.assembly.AssemblyAnalysis;
import org.ohmloom.model.Assembly;
import org.ohmloom.model.Wire;

/** The pickup is built as two harnesses that meet at two bulkhead connectors; each shop gets its own pack. */
class PerAssemblyTest {
    private static final String DOCUMENTS =
            "cover,drawing,wiring-diagram,pin-tables,bill-of-materials,wire-list,bundles,build-order,test-sheet,labels";

    private static Analysis pickup;

    @TempDir
    private static Path folder;

    @BeforeAll
    static void write() throws PackException {
        pickup = Packs.analysis("rescue-pickup");
        PackOptions options = PackOptions.ALL.withDocuments(DOCUMENTS).withPerAssembly(true);
        BuildPack.write(pickup, folder, options, Progress.NONE);
    }

    private static List<Map<String, String>> rows(String assembly, String table) throws IOException {
        return Packs.rows(folder.resolve(assembly).resolve(assembly + "-" + table + ".csv"));
    }

    @Test
    void everyWireOfAnAssemblyIsInItsCutListAsInTheWholeOneAndNoOther() throws IOException {
        List<Map<String, String>> whole = Packs.rows(folder.resolve("EX-D-0100-wire-list.csv"));
        int all = 0;
        for (Assembly assembly : pickup.harness().assemblies().all()) {
            TreeSet<String> expected = new TreeSet<>();
            for (Wire wire : pickup.harness().wires().all()) {
                if (!wire.existing()
                        && wire.assembly().filter(assembly.id()::equals).isPresent()) {
                    expected.add(wire.id().value());
                }
            }
            List<Map<String, String>> own = rows(assembly.number(), "wire-list");
            TreeSet<String> listed = new TreeSet<>();
            for (Map<String, String> row : own) {
                listed.add(row.get("Wire"));
                Map<String, String> same = whole.stream()
                        .filter(each -> each.get("Wire").equals(row.get("Wire")))
                        .findFirst()
                        .orElseThrow();
                assertEquals(same.get("Length mm"), row.get("Length mm"), row.get("Wire"));
            }
            assertEquals(expected, listed);
            all += own.size();
        }
        assertEquals(whole.size(), all);
    }

    /** Tools are not used up and each harness has a label of its own, so neither adds up. */
    @Test
    void theBillsOfTheAssembliesTogetherAreTheBillOfTheWhole() throws IOException {
        double whole = pieces(Packs.rows(folder.resolve("EX-D-0100-bill-of-materials.csv")));
        double parts = 0;
        for (Assembly assembly : pickup.harness().assemblies().all()) {
            parts += pieces(rows(assembly.number(), "bill-of-materials"));
        }
        assertTrue(whole > 300, whole + " pieces");
        assertEquals(whole, parts, 1e-9);
    }

    private static double pieces(List<Map<String, String>> bill) {
        return bill.stream()
                .filter(row -> row.get("Unit").equals("pc"))
                .filter(row -> !row.get("Group").startsWith("Tools")
                        && !row.get("Group").equals("Labels"))
                .mapToDouble(row -> Double.parseDouble(row.get("Quantity")))
                .sum();
    }

    /** The currents are those of the whole vehicle, whose states an assembly does not have. */
    @Test
    void theWiringDiagramOfAnAssemblyHasEachOfItsWiresOnceWithItsCurrent() throws IOException {
        List<Map<String, String>> whole = Packs.rows(folder.resolve("EX-D-0100-wiring-diagram.csv"));
        Map<String, String> currents = new TreeMap<>();
        whole.forEach(row -> currents.put(row.get("Wire"), row.get("Current A") + " A in " + row.get("State")));
        for (Assembly assembly : pickup.harness().assemblies().all()) {
            List<Map<String, String>> own = rows(assembly.number(), "wiring-diagram");
            TreeSet<String> wires = new TreeSet<>();
            for (Map<String, String> row : own) {
                assertTrue(wires.add(row.get("Wire")), row.get("Wire"));
                String current = row.get("Current A") + " A in " + row.get("State");
                assertEquals(currents.get(row.get("Wire")), current, row.get("Wire"));
            }
            assertTrue(wires.size() > 20, assembly + ": " + wires.size());
        }
    }

    /** The same housing for two harnesses is ordered once, and each shop reads how many are its own. */
    @Test
    void whatBothAssembliesNeedIsOnePurchaseWithTheShareOfEach() throws IOException {
        List<Map<String, String>> bought = Packs.rows(folder.resolve("EX-D-0100-bill-of-materials-purchasing.csv"));
        int shared = 0;
        for (Map<String, String> row : bought) {
            List<String> shares = Stream.of("EX-D-0101", "EX-D-0102", "For all")
                    .map(row::get)
                    .filter(share -> !share.isEmpty())
                    .toList();
            double sum = shares.stream().mapToDouble(Double::parseDouble).sum();
            assertEquals(Double.parseDouble(row.get("To buy")), sum, 1e-9, row.toString());
            shared += shares.size() > 1 ? 1 : 0;
        }
        assertTrue(shared > 5, shared + " things go into both");
        long keys = bought.stream()
                .map(row -> row.get("Part number") + row.get("Description") + row.get("Colour") + row.get("Unit"))
                .distinct()
                .count();
        assertEquals(bought.size(), keys, "nothing is bought in two rows");
    }

    @Test
    void aBulkheadConnectorSaysWhatItMatesWithAndTheOtherHalfIsInTheOtherPack() throws IOException {
        Path front = folder.resolve("EX-D-0101");
        String text = Packs.text(Packs.find(front, "-pin-tables.pdf"));
        assertTrue(text.contains("mates with X61 of EX-D-0102"), text.substring(0, 200));
        assertTrue(rows("EX-D-0101", "pin-tables").stream()
                .noneMatch(row -> row.get("Connector").equals("X61")));
        assertTrue(rows("EX-D-0102", "pin-tables").stream()
                .anyMatch(row -> row.get("Connector").equals("X61")));
    }

    @Test
    void eachPackCarriesItsOwnNumberAndRevisionAndNoCalculation() throws IOException {
        for (Assembly assembly : pickup.harness().assemblies().all()) {
            Path own = folder.resolve(assembly.number());
            String text = Packs.text(Packs.find(own, "-cover.pdf"));
            assertTrue(text.contains(assembly.number() + ", revision " + assembly.revision()), text);
            assertTrue(text.contains(assembly.name()), text);
            assertTrue(Files.exists(own.resolve(assembly.number() + "-manifest.csv")));
            assertTrue(Files.exists(own.resolve(assembly.number() + "-tables.xlsx")));
        }
        assertFalse(PackDocument.CALCULATION.isOfAssembly());
    }

    @Test
    void lengthAndCopperOfTheAssembliesSumToTheWhole() {
        double metres = 0;
        double copperKg = 0;
        int wires = 0;
        for (Assembly assembly : pickup.harness().assemblies().all()) {
            Analysis part = AssemblyAnalysis.of(pickup, assembly.id());
            metres += part.totals().lengthMetres();
            copperKg += part.totals().copperKg();
            wires += part.totals().wires();
        }
        assertEquals(pickup.totals().wires(), wires);
        assertEquals(pickup.totals().lengthMetres(), metres, 1e-9);
        assertEquals(pickup.totals().copperKg(), copperKg, 1e-9);
    }
}
