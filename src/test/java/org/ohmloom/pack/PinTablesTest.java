package org.ohmloom.pack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.ohmloom.AnalysedExamples;
import org.ohmloom.BesideOthers;
import org.ohmloom.draw.CavityView;
import org.ohmloom.draw.Extent;
import org.ohmloom.draw.Scene;
import org.ohmloom.draw.SceneFonts;
import org.ohmloom.draw.Swatch;
import org.ohmloom.draw.Text;
import org.ohmloom.model.Cavity;
import org.ohmloom.model.CavityGrid;
import org.ohmloom.model.Connector;
import org.ohmloom.model.ConnectorId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Part;
import org.ohmloom.model.PartId;
import org.ohmloom.model.SignalClass;
import org.ohmloom.model.TitleBlock;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireEnd;
import org.ohmloom.pack.page.Block;
import org.ohmloom.pack.page.Row;
import org.ohmloom.store.HarnessFileException;
import org.ohmloom.store.HarnessText;

/** The pin tables hold every cavity, and the view of a connector shows its cavities where its grid has them. */
@BesideOthers
class PinTablesTest {
    private static final SceneFonts FONTS = SceneFonts.load();

    private static final double EXACT_MM = 1e-6;

    private static List<Block> sections(Harness harness) {
        return new PinTables(harness, FONTS)
                .report().blocks().stream().filter(Block.Kept.class::isInstance).toList();
    }

    private static Block.Table table(Block section) {
        return ((Block.Kept) section)
                .blocks().stream()
                        .filter(Block.Table.class::isInstance)
                        .map(Block.Table.class::cast)
                        .findFirst()
                        .orElseThrow();
    }

    @ParameterizedTest
    @MethodSource("org.ohmloom.pack.Packs#examples")
    void everyCavityHasARowForEachOfItsWiresOrOneThatSaysPlugOrOpen(String example) {
        Harness harness = AnalysedExamples.harness(example);
        List<Block> sections = sections(harness);
        List<Connector> connectors = List.copyOf(harness.connectors().all());
        assertEquals(connectors.size(), sections.size());
        for (int k = 0; k < connectors.size(); k++) {
            List<Row> rows = table(sections.get(k)).rows();
            int expected = 0;
            for (Cavity cavity : connectors.get(k).cavities()) {
                WireEnd end = new WireEnd.AtCavity(connectors.get(k).id(), cavity.name());
                List<String> wires = harness.wires().all().stream()
                        .filter(wire -> wire.ends().contains(end))
                        .map(Wording::wire)
                        .toList();
                List<String> listed = rows.stream()
                        .filter(row -> row.cells().get(2).text().equals(cavity.name()))
                        .map(row -> row.cells().get(4).text())
                        .toList();
                assertEquals(wires.isEmpty() ? List.of("unused") : wires, listed, end.text());
                expected += Math.max(1, wires.size());
            }
            assertEquals(expected, rows.size());
        }
    }

    /** Beyond an in-line pair there is no unit: its cavities lead to those of the other half. */
    @Test
    void aCavityOfAnInLinePairNamesTheCavityItMeets() {
        Harness harness = AnalysedExamples.harness("rescue-pickup");
        int found = 0;
        List<Connector> connectors = List.copyOf(harness.connectors().all());
        List<Block> sections = sections(harness);
        for (int k = 0; k < connectors.size(); k++) {
            Connector connector = connectors.get(k);
            if (connector.mate().isPresent()) {
                for (Row row : table(sections.get(k)).rows()) {
                    String cavity = row.cells().get(2).text();
                    assertEquals(
                            connector.mate().get() + "." + cavity,
                            row.cells().get(3).text(),
                            connector + " cavity " + cavity);
                    found++;
                }
            }
        }
        assertTrue(found > 10, found + " cavities");
    }

    /** A file may name the other half at one half only: the tables of both tell what they mate with. */
    @Test
    void bothHalvesOfAPairThatOnlyOneNamesTellTheirMate() throws IOException, HarnessFileException {
        Path example = Path.of("examples/rescue-pickup.harness.json");
        String oneWay = Files.readString(example).replaceAll("\\s*\"mate\": \"X6[02]\",", "");
        Harness harness = HarnessText.read(oneWay, example);
        assertEquals(
                Optional.empty(),
                harness.connectors().get(new ConnectorId("X61")).mate());
        List<String> told = sections(harness).stream()
                .flatMap(section -> ((Block.Kept) section).blocks().stream())
                .filter(Block.Beside.class::isInstance)
                .flatMap(block -> ((Block.Beside) block).facts().stream())
                .filter(fact -> fact.label().equals("Mates with"))
                .map(fact -> fact.value().substring(0, 3))
                .toList();
        assertEquals(List.of("X61", "X60", "X63", "X62"), told);
        List<String> joined = new MatingOrder(harness)
                .joints().stream()
                        .filter(joint -> joint.stage() == MatingOrder.Stage.IN_LINE)
                        .map(MatingOrder.Joint::what)
                        .toList();
        assertEquals(List.of("X60", "X62"), joined);
    }

    private static Harness doubled(boolean meant) {
        Connector connector = connector(
                Optional.of(new CavityGrid(CavityGrid.Side.MATING_SIDE, 2, List.of("A", "B", "", "C"))),
                new Cavity("A", Optional.empty(), Optional.empty(), Optional.empty(), meant),
                new Cavity("B", Optional.empty(), Optional.empty(), Optional.of(new PartId("EX-PLUG")), false),
                new Cavity("C", Optional.empty(), Optional.empty(), Optional.empty(), false));
        WireEnd inA = new WireEnd.AtCavity(connector.id(), "A");
        return Harness.empty(
                        TitleBlock.of("Doubled", "EX-8"),
                        AnalysedExamples.harness("teaching").rules())
                .withAll(List.of(
                        new Part(new PartId("EX-PLUG"), "Example", "cavity plug", OptionalDouble.empty()),
                        connector,
                        Wire.of("W1", inA, new WireEnd.Loose(), SignalClass.FEED),
                        Wire.of("W2", inA, new WireEnd.Loose(), SignalClass.FEED)));
    }

    private static Connector connector(Optional<CavityGrid> grid, Cavity... cavities) {
        return new Connector(
                new ConnectorId("X1"),
                "lamp",
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                List.of(cavities),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                OptionalDouble.empty(),
                Optional.empty(),
                false,
                Optional.empty(),
                grid);
    }

    @Test
    void twoWiresOfOneCavityNameEachOtherAndAPlugOrAnOpenCavityIsSaid() {
        List<Row> rows = table(sections(doubled(true)).get(0)).rows();
        assertEquals(
                List.of("double, with W2", "double, with W1", "", ""),
                rows.stream().map(row -> row.cells().get(15).text()).toList());
        assertEquals("EX-PLUG", rows.get(2).cells().get(12).text());
        assertEquals("open", rows.get(3).cells().get(12).text());
        assertEquals(
                "double, with W2: not entered as meant",
                table(sections(doubled(false)).get(0))
                        .rows()
                        .get(0)
                        .cells()
                        .get(15)
                        .text());
    }

    @Test
    void aGridSeenFromTheMatingSideIsDrawnTurnedOverAndAnEmptyPlaceStaysEmpty() {
        // mating side: A B over (none) C; from the wires left and right change places: B A over C (none)
        Harness harness = doubled(true);
        Scene scene = CavityView.of(harness.connectors().get(new ConnectorId("X1")), cavity -> List.of())
                .scene(FONTS, 100);
        List<Text> texts = new ArrayList<>();
        scene.items().stream()
                .filter(item -> item.mark() instanceof Text text && text.text().length() == 1)
                .forEach(item -> texts.add((Text) item.mark()));
        Text a = named(texts, "A");
        Text b = named(texts, "B");
        Text c = named(texts, "C");
        assertEquals(3, texts.size());
        assertTrue(b.at().xMm() < a.at().xMm());
        assertEquals(a.at().yMm(), b.at().yMm(), EXACT_MM);
        assertEquals(b.at().xMm(), c.at().xMm(), EXACT_MM);
        assertTrue(c.at().yMm() > b.at().yMm());
    }

    private static Text named(List<Text> texts, String name) {
        return texts.stream()
                .filter(text -> text.text().equals(name))
                .findFirst()
                .orElseThrow();
    }

    @ParameterizedTest
    @MethodSource("org.ohmloom.pack.Packs#examples")
    void everyViewNamesItsMarkedCavityAndShowsEveryColourInsideItsFrame(String example) {
        Harness harness = AnalysedExamples.harness(example);
        for (Connector connector : harness.connectors().all()) {
            CavityView view = CavityView.of(connector, cavity -> wires(harness, connector, cavity));
            Scene scene = view.scene(FONTS, 130);
            assertTrue(
                    scene.items().stream()
                            .anyMatch(item -> item.mark() instanceof Text text
                                    && text.text().endsWith("cavity " + view.marked() + " marked")),
                    connector.id().value());
            long swatches = scene.items().stream()
                    .filter(item -> item.mark() instanceof Swatch)
                    .count();
            long colours = connector.cavities().stream()
                    .flatMap(cavity -> wires(harness, connector, cavity).stream())
                    .filter(wire -> wire.colour().isPresent())
                    .count();
            assertEquals(colours, swatches, connector.id().value());
            Stream<Extent> bounds =
                    scene.items().stream().map(item -> item.mark().bounds());
            assertTrue(
                    bounds.allMatch(each -> each.leftMm() >= -EXACT_MM
                            && each.topMm() >= -EXACT_MM
                            && each.rightMm() <= scene.widthMm() + EXACT_MM
                            && each.bottomMm() <= scene.heightMm() + EXACT_MM),
                    connector.id().value());
        }
    }

    private static List<Wire> wires(Harness harness, Connector connector, Cavity cavity) {
        WireEnd end = new WireEnd.AtCavity(connector.id(), cavity.name());
        return harness.wires().all().stream()
                .filter(wire -> wire.ends().contains(end))
                .toList();
    }
}
