package org.ohmloom.draw.wiring;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.ohmloom.AnalysedExamples;
import org.ohmloom.BesideOthers;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.draw.Item;
import org.ohmloom.draw.Paper;
import org.ohmloom.draw.Scene;
import org.ohmloom.draw.SceneFonts;
import org.ohmloom.draw.Swatch;
import org.ohmloom.draw.Text;
import org.ohmloom.model.Battery;
import org.ohmloom.model.Component;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.Draw;
import org.ohmloom.model.Element;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Load;
import org.ohmloom.model.SignalClass;
import org.ohmloom.model.TitleBlock;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireEnd;
import org.ohmloom.model.WireId;
import org.ohmloom.store.HarnessFileException;
import org.ohmloom.store.HarnessFiles;
import org.ohmloom.units.Formats;

/** The wiring diagram shows every wire once, as the model has it, with nothing upon anything. */
@BesideOthers
class WiringDiagramTest {

    private static final SceneFonts FONTS = SceneFonts.load();

    private static Harness example(String name) {
        try {
            return HarnessFiles.read(Path.of("examples", name + HarnessFiles.ENDING));
        } catch (HarnessFileException failed) {
            throw new AssertionError(failed);
        }
    }

    private static WiringDiagram diagram(Harness harness, Paper paper) {
        return WiringDiagram.of(harness, Optional.empty(), paper, FONTS);
    }

    @ParameterizedTest
    @CsvSource({
        "teaching, A4",
        "teaching, A3",
        "star-ground, A4",
        "star-ground, A3",
        "faults, A4",
        "faults, A3",
        "workboat, A4",
        "workboat, A3",
        "workboat, A1",
        "rescue-pickup, A4",
        "rescue-pickup, A3",
        "rescue-pickup, A1",
        "rescue-pickup, ANSI_A",
        "rescue-pickup, ANSI_B"
    })
    void everyWireIsThereOnceWithItsSizeAndColourAndNothingLiesOnAnything(String name, Paper paper) {
        Harness harness = example(name);
        WiringDiagram diagram = diagram(harness, paper);
        WiringPages.assertSound(harness, diagram, paper, name);
    }

    @Test
    void eachWireCarriesItsCurrentAndTheStateThatBringsItIsNamedOnThePage() {
        Analysis analysis = AnalysedExamples.of("teaching");
        WiringDiagram diagram = WiringDiagram.of(analysis.harness(), Optional.of(analysis), Paper.A3, FONTS);
        List<String> words = WiringPages.words(diagram.sheets().get(0));
        diagram.rows().forEach(row -> {
            var rating = analysis.ratings().get(row.wire().id());
            assertEquals(Optional.of(rating.worstAmps()), row.amps());
            assertEquals(rating.worstState(), row.state());
            String amps = Formats.amps(rating.worstAmps());
            assertTrue(
                    words.stream().anyMatch(word -> word.startsWith(amps)),
                    amps + " on " + row.wire().id());
            String state =
                    analysis.harness().states().get(row.state().orElseThrow()).name();
            assertTrue(words.stream().anyMatch(word -> word.contains(state)), state);
        });
    }

    @Test
    void theOrderFromSourceToLoadToReturnIsFromTheLeftToTheRight() {
        // teaching: battery, fuse F1, switch S1, splice SP1, heater H1, ground point G2
        Scene sheet = diagram(example("teaching"), Paper.A3).sheets().get(0);
        List<String> chain = List.of("F1", "S1", "SP1", "H1", "G2");
        double before = 0;
        for (String id : chain) {
            double left = sheet.bounds(id).orElseThrow().leftMm();
            assertTrue(left > before, id);
            before = left;
        }
    }

    @Test
    void aSharedFeedIsShownShortenedWithWhereItIsWhole() {
        // workboat: the aft bilge pump is fed from bar BB1, and that by W2 over fuse F1 of 70 A from BT1
        WiringDiagram diagram = diagram(example("workboat"), Paper.A3);
        int house = sheet(diagram, "House");
        int pump = sheet(diagram, "Aft bilge pump");
        List<String> words = WiringPages.words(diagram.sheets().get(pump - 1));
        assertTrue(words.contains("from BT1 +"), words.toString());
        assertTrue(words.contains("by F1 70 A"), words.toString());
        assertTrue(words.stream().anyMatch(word -> word.startsWith("W2, sheet " + house)), words.toString());
    }

    private static int sheet(WiringDiagram diagram, String title) {
        return diagram.titles().stream()
                .filter(each -> each.title().equals(title))
                .findFirst()
                .orElseThrow()
                .sheet();
    }

    @Test
    void aCircuitTooWideForThePaperGoesOnWithTheSheetAndFieldOfEachWire() {
        Harness harness = example("teaching");
        Scene sheet = diagram(harness, Paper.A4).sheets().get(0);
        List<String> words = WiringPages.words(sheet);
        long cut = words.stream()
                .filter(word -> word.matches("W\\d+, sheet 1 [A-F][1-4]"))
                .count();
        // both sides of the one cut name the wire that crosses it
        assertEquals(2, cut, words.toString());
    }

    @Test
    void thePositionInTheTableIsWhereTheWireIsWritten() {
        Harness harness = example("workboat");
        WiringDiagram diagram = diagram(harness, Paper.A3);
        assertEquals(harness.wires().size(), diagram.rows().size());
        for (WiringDiagram.Row row : diagram.rows()) {
            Scene sheet = diagram.sheets().get(row.sheet() - 1);
            String id = row.wire().id().value();
            assertTrue(
                    sheet.itemsOf(id).stream()
                            .anyMatch(item -> item.mark() instanceof Text text
                                    && text.text().equals(id)),
                    id);
        }
    }

    @Test
    void theSameHarnessGivesTheSameSheets() {
        Harness harness = example("faults");
        List<Scene> once = diagram(harness, Paper.A3).sheets();
        List<Scene> again = diagram(example("faults"), Paper.A3).sheets();
        assertEquals(
                once.stream().map(Scene::dump).toList(),
                again.stream().map(Scene::dump).toList());
    }

    @Test
    void anEmptyHarnessIsOneEmptySheet() {
        Harness harness = Harness.empty(
                TitleBlock.of("Nothing yet", "EX-D-0"), example("teaching").rules());
        WiringDiagram diagram = diagram(harness, Paper.A4);
        assertEquals(1, diagram.sheets().size());
        assertEquals(List.of(), diagram.rows());
        assertEquals(List.of(), diagram.titles());
    }

    private static Harness with(Object... elements) {
        Harness harness = Harness.empty(
                TitleBlock.of("Small", "EX-D-1"), example("teaching").rules());
        List<Element> all = new ArrayList<>();
        for (Object each : elements) {
            all.add((Element) each);
        }
        return harness.withAll(all);
    }

    private static WireEnd at(String component, String terminal) {
        return new WireEnd.AtTerminal(new ComponentId(component), terminal);
    }

    private static Component battery(String id) {
        return Component.of(id, id, new Battery(12.6, 0.02, 44, Optional.empty()));
    }

    private static Component lamp(String id) {
        return Component.of(id, id, Load.of(new Draw.Resistive(5, 12)));
    }

    @Test
    void aLoadWithoutReturnIsDrawnWithItsFeed() {
        Wire feed = Wire.of("W1", at("BT1", "+"), at("L1", "+"), SignalClass.FEED);
        Harness harness = with(battery("BT1"), lamp("L1"), feed);
        WiringDiagram diagram = diagram(harness, Paper.A4);
        WiringPages.assertSound(harness, diagram, Paper.A4, "no return");
        assertEquals(
                List.of("L1"),
                diagram.titles().stream().map(WiringDiagram.Title::title).toList());
    }

    @Test
    void twoSourcesThatFeedOneLoadBothStandLeftOfIt() {
        Harness harness = with(
                battery("BT1"),
                battery("BT2"),
                lamp("L1"),
                Wire.of("W1", at("BT1", "+"), at("L1", "+"), SignalClass.FEED),
                Wire.of("W2", at("BT2", "+"), at("L1", "+"), SignalClass.FEED),
                Wire.of("W3", at("L1", "-"), at("BT1", "-"), SignalClass.RETURN),
                Wire.of("W4", at("L1", "-"), at("BT2", "-"), SignalClass.RETURN));
        WiringDiagram diagram = diagram(harness, Paper.A3);
        WiringPages.assertSound(harness, diagram, Paper.A3, "two sources");
        Scene sheet = diagram.sheets().get(0);
        double load = sheet.bounds("L1").orElseThrow().leftMm();
        for (String pole : List.of("BT1 +", "BT2 +")) {
            assertTrue(left(sheet, pole) < load, pole);
        }
        for (String pole : List.of("BT1 \u2212", "BT2 \u2212")) {
            assertTrue(left(sheet, pole) > load, pole);
        }
    }

    private static double left(Scene sheet, String text) {
        return sheet.items().stream()
                .map(Item::mark)
                .filter(mark -> mark instanceof Text written && written.text().equals(text))
                .findFirst()
                .orElseThrow()
                .bounds()
                .leftMm();
    }

    @Test
    void aWireWithoutAnEndAndOneFromATerminalToItselfAreDrawn() {
        Harness harness = with(
                lamp("L1"),
                Wire.of("W1", new WireEnd.Loose(), at("L1", "+"), SignalClass.FEED),
                Wire.of("W2", new WireEnd.Loose(), new WireEnd.Loose(), SignalClass.DATA_BUS),
                Wire.of("W3", at("L1", "-"), at("L1", "-"), SignalClass.RETURN));
        WiringDiagram diagram = diagram(harness, Paper.A4);
        WiringPages.assertSound(harness, diagram, Paper.A4, "loose");
        long loose = WiringPages.words(diagram.sheets().get(0)).stream()
                .filter("joined to nothing"::equals)
                .count();
        assertEquals(3, loose);
    }

    @Test
    void theColourOfEachWireIsASwatchOfIts() {
        Harness harness = example("star-ground");
        Map<WireId, String> shown = new TreeMap<>();
        for (Scene sheet : diagram(harness, Paper.A3).sheets()) {
            for (Item item : sheet.items()) {
                if (item.mark() instanceof Swatch swatch) {
                    shown.put(
                            new WireId(item.element().orElseThrow()),
                            swatch.colour().text());
                }
            }
        }
        Map<WireId, String> wanted = new TreeMap<>();
        harness.wires().all().forEach(wire -> wire.colour().ifPresent(colour -> wanted.put(wire.id(), colour.text())));
        assertEquals(wanted, shown);
    }
}
