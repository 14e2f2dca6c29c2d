package org.ohmloom.draw.wiring;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntFunction;
import org.junit.jupiter.api.Test;
import org.ohmloom.BesideOthers;
import org.ohmloom.Campaign;
import org.ohmloom.draw.DrawingSheet;
import org.ohmloom.draw.Overlaps;
import org.ohmloom.draw.Paper;
import org.ohmloom.draw.Scene;
import org.ohmloom.draw.SceneFonts;
import org.ohmloom.draw.ShopHarness;
import org.ohmloom.model.Harness;

/**
 * Harnesses of 10 to 1,500 wires, on papers of every size in turn: on the drawing and on the wiring diagram nothing written lies on
 * anything or leaves its sheet, and every wire is on the diagram as the model has it. All 200 with the system property
 * {@code ohmloom.campaign=full}.
 */
@BesideOthers
class ShopHarnessesTest {

    private static final int ALL = 200;
    private static final int SAMPLE = 8;
    private static final int FEWEST_WIRES = 10;
    private static final int MOST_WIRES = 1500;
    private static final int MOST_WIRES_OF_SAMPLE = 90;
    private static final SceneFonts FONTS = SceneFonts.load();

    /** Counts in even ratios from the fewest to the most. */
    static int wires(int seed) {
        int count = Campaign.FULL ? ALL : SAMPLE;
        double most = Campaign.FULL ? MOST_WIRES : MOST_WIRES_OF_SAMPLE;
        return (int) Math.round(FEWEST_WIRES * Math.pow(most / FEWEST_WIRES, seed / (count - 1.0)));
    }

    private static Harness harness(int seed) {
        Harness harness = ShopHarness.of(seed, wires(seed));
        assertEquals(wires(seed), harness.wires().size());
        return harness;
    }

    private static Paper paper(int seed) {
        return Paper.values()[seed % Paper.values().length];
    }

    /** Looks at all harnesses, several at a time, and gathers what is wrong. */
    private static void each(IntFunction<List<String>> wrong) {
        List<String> found = Campaign.each(Campaign.count(SAMPLE, ALL), wrong).stream()
                .flatMap(List::stream)
                .toList();
        assertEquals(List.of(), found.stream().limit(10).toList(), found.size() + " in all");
    }

    @Test
    void nothingLiesOnAnythingOnTheWiringDiagram() {
        each(ShopHarnessesTest::wrongOnTheWiringDiagram);
    }

    static List<String> wrongOnTheWiringDiagram(int seed) {
        Harness harness = harness(seed);
        WiringDiagram diagram = WiringDiagram.of(harness, Optional.empty(), paper(seed), FONTS);
        return WiringPages.wrong(harness, diagram, paper(seed), "seed " + seed + " on " + paper(seed));
    }

    @Test
    void linesThatPassAColumnSideBySideStaySoWhereTheirHeightsRoundFromTheMiddleOfAStep() {
        // once two of them came to one height: each was rounded by itself, one up and one down
        Harness harness = ShopHarness.of(165, 637);
        WiringDiagram diagram = WiringDiagram.of(harness, Optional.empty(), Paper.ANSI_A, FONTS);
        assertEquals(List.of(), WiringPages.wrong(harness, diagram, Paper.ANSI_A, "seed 165"));
    }

    @Test
    void nothingLiesOnAnythingOnTheDrawing() {
        each(ShopHarnessesTest::wrongOnTheDrawing);
    }

    static List<String> wrongOnTheDrawing(int seed) {
        List<Scene> sheets = new DrawingSheet(FONTS).sheets(harness(seed), Optional.empty(), paper(seed));
        List<String> wrong = new ArrayList<>();
        for (int k = 0; k < sheets.size(); k++) {
            String place = "seed " + seed + ", " + paper(seed) + " sheet " + (k + 1) + " of " + sheets.size() + ": ";
            Overlaps.texts(sheets.get(k)).forEach(each -> wrong.add(place + each));
            Overlaps.textsOnLines(sheets.get(k)).forEach(each -> wrong.add(place + each));
            Overlaps.outside(sheets.get(k)).forEach(each -> wrong.add(place + each));
        }
        return wrong;
    }
}
