package org.ohmloom.draw;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.ohmloom.BesideOthers;
import org.ohmloom.Campaign;
import org.ohmloom.model.Connector;
import org.ohmloom.model.Element;
import org.ohmloom.model.Harness;
import org.ohmloom.model.TitleBlock;
import org.ohmloom.store.RandomHarness;

/** Any harness can be drawn: unfinished, with strange texts, with names that never end. */
@BesideOthers
class AnyHarnessTest {

    private static final int HARNESSES = Campaign.count(15, 60);

    @Test
    void aHarnessOfAnyKindIsDrawnOnTheBoardAndOnPaperWithAllTextsApart() {
        for (long seed = 0; seed < HARNESSES; seed++) {
            Harness harness = RandomHarness.of(seed).withLayout(new TreeMap<>());
            for (boolean wires : new boolean[] {false, true}) {
                Scene board = ExamplesDrawTest.board(harness, new SceneOptions(SceneOptions.Numbers.SIZE, wires));
                assertEquals(List.of(), Overlaps.texts(board), "seed " + seed);
                assertEquals(List.of(), Overlaps.outside(board), "seed " + seed);
            }
            for (Scene sheet : new DrawingSheet(Drawn.FONTS).sheets(harness, Optional.empty(), Paper.A3)) {
                assertEquals(List.of(), Overlaps.texts(sheet), "seed " + seed);
                assertEquals(List.of(), Overlaps.textsOnLines(sheet), "seed " + seed);
                assertEquals(List.of(), Overlaps.outside(sheet), "seed " + seed);
            }
        }
    }

    @Test
    void aPersonMayPutThingsAnywhere() {
        for (long seed = 0; seed < HARNESSES; seed++) {
            Harness harness = RandomHarness.of(seed);
            Scene board = ExamplesDrawTest.board(harness, new SceneOptions(SceneOptions.Numbers.NONE, true));
            assertEquals(List.of(), Overlaps.outside(board), "seed " + seed);
        }
    }

    @Test
    void anEmptyHarnessIsAnEmptyBoardAndOneEmptySheet() {
        Harness harness = Harness.empty(
                TitleBlock.of("Nothing yet", "EX-D-0"),
                ExamplesDrawTest.example("teaching").rules());
        assertEquals(
                List.of(), ExamplesDrawTest.board(harness, SceneOptions.PLAIN).items());
        assertEquals(
                1,
                new DrawingSheet(Drawn.FONTS)
                        .sheets(harness, Optional.empty(), Paper.A4)
                        .size());
    }

    @Test
    void longNamesStayInTheirPlace() {
        String name =
                "Forward auxiliary hydraulic accumulator pressure transducer behind the second bulkhead ".repeat(3);
        Harness harness = ExamplesDrawTest.example("star-ground");
        List<Element> renamed = new ArrayList<>();
        harness.components().all().forEach(each -> renamed.add(each.withName(name)));
        harness.connectors().all().forEach(each -> renamed.add(renamed(each, name)));
        TitleBlock block = harness.titleBlock();
        Harness longer = harness.withAll(renamed)
                .withTitleBlock(new TitleBlock(
                        name,
                        Optional.of(name),
                        "EX-" + "0123456789".repeat(6),
                        Optional.of(name),
                        Optional.of(name),
                        Optional.of(name),
                        block.date(),
                        block.language(),
                        block.revisions()));
        List<Scene> scenes = new ArrayList<>(new DrawingSheet(Drawn.FONTS).sheets(longer, Optional.empty(), Paper.A3));
        scenes.add(ExamplesDrawTest.board(longer, SceneOptions.PLAIN));
        for (int k = 0; k < scenes.size(); k++) {
            Drawn.keep("long-" + k, scenes.get(k), DrawStyle.PRINT, 4);
            assertEquals(List.of(), Overlaps.texts(scenes.get(k)));
            assertEquals(List.of(), Overlaps.textsOnLines(scenes.get(k)));
            assertEquals(List.of(), Overlaps.outside(scenes.get(k)));
        }
    }

    private static Connector renamed(Connector each, String name) {
        return new Connector(
                each.id(),
                name,
                each.component(),
                each.mate(),
                each.at(),
                each.cavities(),
                each.part(),
                each.lock(),
                each.backshell(),
                each.limitCelsius(),
                each.zone(),
                each.existing(),
                each.assembly());
    }
}
