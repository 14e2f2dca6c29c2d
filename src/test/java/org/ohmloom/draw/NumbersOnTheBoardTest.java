package org.ohmloom.draw;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.ohmloom.AnalysedExamples;
import org.ohmloom.BesideOthers;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.graph.BranchId;
import org.ohmloom.model.StateId;
import org.ohmloom.model.WireId;
import org.ohmloom.units.Formats;

/** The numbers written along the bundles are those of the analysis. */
@BesideOthers
class NumbersOnTheBoardTest {

    private static Analysis analysis(String name) {
        return AnalysedExamples.of(name);
    }

    private static Scene board(Analysis analysis, Optional<StateId> state, SceneOptions.Numbers numbers) {
        return new SceneLayout(Drawn.FONTS)
                .layoutBoard(analysis.harness(), Optional.of(analysis), state, new SceneOptions(numbers, true));
    }

    @ParameterizedTest
    @ValueSource(strings = {"teaching", "rescue-pickup", "workboat", "faults", "star-ground"})
    void numbersOfEveryKindAndStateLeaveAllTextsApart(String name) {
        Analysis analysis = analysis(name);
        for (SceneOptions.Numbers numbers : SceneOptions.Numbers.values()) {
            Scene worst = board(analysis, Optional.empty(), numbers);
            Drawn.keep(name + "-" + numbers + "-LIGHT", worst, DrawStyle.LIGHT, 4);
            assertEquals(List.of(), Overlaps.texts(worst), name + " " + numbers);
        }
        analysis.harness()
                .states()
                .ids()
                .forEach(state -> assertEquals(
                        List.of(),
                        Overlaps.texts(board(analysis, Optional.of(state), SceneOptions.Numbers.CURRENT)),
                        name + " " + state));
    }

    @Test
    void aSegmentShowsTheLargestCurrentOfItsWires() {
        // SG3 leads to the heater alone: whichever of its two wires is named, both carry the heater's current.
        Analysis analysis = analysis("teaching");
        StateId state = analysis.harness().states().ids().stream()
                .filter(each -> amps(analysis, each, "W4") > 1)
                .findFirst()
                .orElseThrow();
        Scene scene = board(analysis, Optional.of(state), SceneOptions.Numbers.CURRENT);
        String current = Formats.amps(amps(analysis, state, "W4"));
        List<String> texts = texts(scene, "SG3");
        assertTrue(
                texts.contains("max " + current + " in W4") || texts.contains("max " + current + " in W6"),
                texts::toString);
    }

    @Test
    void withoutAStateTheWorstOfAllStatesIsShown() {
        Analysis analysis = analysis("teaching");
        Scene scene = board(analysis, Optional.empty(), SceneOptions.Numbers.TEMPERATURE);
        double hottest = Math.max(
                analysis.ratings().get(new WireId("W4")).celsius(),
                analysis.ratings().get(new WireId("W6")).celsius());
        List<String> texts = texts(scene, "SG3");
        assertTrue(
                texts.stream().anyMatch(text -> text.startsWith("max " + Formats.celsius(hottest) + " in ")),
                texts::toString);
    }

    private static double amps(Analysis analysis, StateId state, String wire) {
        return analysis.solution(state)
                .orElseThrow()
                .flow(new BranchId(wire))
                .orElseThrow()
                .rmsAmps();
    }

    private static List<String> texts(Scene scene, String id) {
        return scene.itemsOf(id).stream()
                .filter(item -> item.mark() instanceof Text)
                .map(item -> ((Text) item.mark()).text())
                .toList();
    }
}
