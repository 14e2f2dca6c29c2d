package org.ohmloom.draw.wiring;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
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
class ShopHarnessesTest {

    private static final boolean FULL = "full".equals(System.getProperty("ohmloom.campaign"));
    private static final int ALL = 200;
    private static final int SAMPLE = 8;
    private static final int FEWEST_WIRES = 10;
    private static final int MOST_WIRES = 1500;
    private static final int MOST_WIRES_OF_SAMPLE = 90;
    private static final SceneFonts FONTS = SceneFonts.load();

    static IntStream seeds() {
        return IntStream.range(0, FULL ? ALL : SAMPLE);
    }

    /** Counts in even ratios from the fewest to the most. */
    static int wires(int seed) {
        int count = FULL ? ALL : SAMPLE;
        double most = FULL ? MOST_WIRES : MOST_WIRES_OF_SAMPLE;
        return (int) Math.round(FEWEST_WIRES * Math.pow(most / FEWEST_WIRES, seed / (count - 1.0)));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void nothingLiesOnAnythingOnTheWiringDiagram(int seed) {
        Harness harness = ShopHarness.of(seed, wires(seed));
        assertEquals(wires(seed), harness.wires().size());
        Paper paper = Paper.values()[seed % Paper.values().length];
        WiringDiagram diagram = WiringDiagram.of(harness, Optional.empty(), paper, FONTS);
        WiringPages.assertSound(harness, diagram, paper, "seed " + seed + " on " + paper);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void nothingLiesOnAnythingOnTheDrawing(int seed) {
        Harness harness = ShopHarness.of(seed, wires(seed));
        Paper paper = Paper.values()[seed % Paper.values().length];
        List<Scene> sheets = new DrawingSheet(FONTS).sheets(harness, Optional.empty(), paper);
        for (int k = 0; k < sheets.size(); k++) {
            List<String> wrong = new ArrayList<>(Overlaps.texts(sheets.get(k)));
            wrong.addAll(Overlaps.textsOnLines(sheets.get(k)));
            wrong.addAll(Overlaps.outside(sheets.get(k)));
            assertEquals(
                    List.of(), wrong, "seed " + seed + ", " + paper + " sheet " + (k + 1) + " of " + sheets.size());
        }
    }
}
