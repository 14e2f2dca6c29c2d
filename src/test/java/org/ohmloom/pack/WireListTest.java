package org.ohmloom.pack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.ohmloom.BesideOthers;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.bundle.section.CoveringFit;
import org.ohmloom.model.BundleSegment;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireEnd;
import org.ohmloom.model.WireId;
import org.ohmloom.pack.page.Block;
import org.ohmloom.pack.page.Cell;
import org.ohmloom.pack.page.Column;
import org.ohmloom.pack.page.Row;
import org.ohmloom.units.Gauge;

/** The cut list against the model: order, ends, tolerances, ways, coverings. */
@BesideOthers
class WireListTest {
    private static final double EXACT = 1e-9;

    private static List<Map<String, Cell>> rows(Analysis analysis, String file) {
        List<Map<String, Cell>> rows = new ArrayList<>();
        for (Block block : new WireList(analysis).report().blocks()) {
            if (block instanceof Block.Table table && table.file().equals(file)) {
                for (Row row : table.rows()) {
                    if (row.kind() == Row.Kind.ITEM) {
                        Map<String, Cell> cells = new LinkedHashMap<>();
                        List<Column> columns = table.columns();
                        for (int k = 0; k < columns.size(); k++) {
                            cells.put(columns.get(k).head(), row.cells().get(k));
                        }
                        rows.add(cells);
                    }
                }
            }
        }
        return rows;
    }

    @ParameterizedTest
    @ValueSource(strings = {"teaching", "star-ground", "workboat"})
    void wiresOfAnAssemblyAreCutByConductorThenColourThenLengthTheLongestFirst(String example) {
        Analysis analysis = Packs.analysis(example);
        Harness harness = analysis.harness();
        Set<String> listed = new TreeSet<>();
        Map<String, Cell> before = Map.of();
        for (Map<String, Cell> row : rows(analysis, "")) {
            Wire wire = harness.wires().get(new WireId(row.get("Wire").text()));
            assertTrue(listed.add(wire.id().value()), wire.id() + " stands once");
            if (!before.isEmpty() && before.get("Assembly").equals(row.get("Assembly"))) {
                Wire last = harness.wires().get(new WireId(before.get("Wire").text()));
                double more = area(wire) - area(last);
                assertTrue(more > -EXACT, wire.id() + " is not thinner than " + last.id());
                boolean sameDrum = Math.abs(more) < EXACT
                        && before.get("Insulation").equals(row.get("Insulation"))
                        && before.get("Colour").equals(row.get("Colour"))
                        && wire.family().equals(last.family());
                if (sameDrum) {
                    assertTrue(
                            row.get("Length").number().orElse(0)
                                    <= before.get("Length").number().orElse(0),
                            wire.id() + " is not longer than " + last.id());
                }
            }
            before = row;
        }
        Set<String> made = new TreeSet<>();
        harness.wires().all().stream()
                .filter(wire -> !wire.existing())
                .forEach(wire -> made.add(wire.id().value()));
        assertEquals(made, listed);
        assertEquals(made.size(), rows(analysis, "ways").size());
    }

    private static double area(Wire wire) {
        return wire.gauge().map(Gauge::nominalAreaMm2).orElse(1e6);
    }

    @ParameterizedTest
    @ValueSource(strings = {"teaching", "star-ground", "workboat"})
    void everyEndSaysWhatItGetsAndHowFarItIsStripped(String example) {
        Analysis analysis = Packs.analysis(example);
        Harness harness = analysis.harness();
        for (Map<String, Cell> row : rows(analysis, "")) {
            Wire wire = harness.wires().get(new WireId(row.get("Wire").text()));
            for (String side : List.of("From", "To")) {
                WireEnd end = side.equals("From") ? wire.from() : wire.to();
                String gets = row.get(side + " gets").text();
                harness.contact(end).ifPresent(contact -> {
                    assertTrue(gets.startsWith(contact.part().orElseThrow().value()), gets);
                    contact.seal().ifPresent(seal -> assertTrue(gets.endsWith("+ " + seal.part()), gets));
                    assertEquals(
                            contact.stripLengthMm(),
                            row.get(side + " strip").number().orElseThrow(),
                            EXACT);
                });
                assertEquals(end instanceof WireEnd.AtSplice, gets.equals("splice"), end.text());
                assertEquals(end instanceof WireEnd.AtGround, gets.startsWith("ring"), end.text());
            }
            String tolerance = row.get("Tolerance mm").text();
            assertTrue(tolerance.matches("\\+[0-9]+ / 0"), "never shorter: " + tolerance);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"star-ground", "workboat"})
    void everyCoveringIsCutToWhatItsLengthTakes(String example) {
        Analysis analysis = Packs.analysis(example);
        List<BundleSegment> covered = analysis.harness().segments().all().stream()
                .filter(segment -> segment.covering().isPresent())
                .toList();
        List<Map<String, Cell>> rows = rows(analysis, "coverings");
        assertEquals(covered.size(), rows.size());
        for (int k = 0; k < rows.size(); k++) {
            BundleSegment segment = covered.get(k);
            assertEquals(segment.id().value(), rows.get(k).get("Segment").text());
            double perMetre = analysis.evidence()
                    .bundles()
                    .of(segment.id())
                    .flatMap(section -> section.covering())
                    .map(CoveringFit::materialMetres)
                    .orElse(1.0);
            assertEquals(
                    1000 * segment.lengthMetres() * perMetre,
                    rows.get(k).get("Cut to").number().orElseThrow(),
                    1e-6);
        }
        assertEquals(
                Optional.empty(),
                rows.stream().filter(row -> row.get("Over").number().isEmpty()).findFirst());
    }
}
