package org.ohmloom.draw;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.ohmloom.BesideOthers;
import org.ohmloom.edit.board.Arrangement;
import org.ohmloom.model.Breakout;
import org.ohmloom.model.BreakoutId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Position;

/** Positions on the board: as they are without any, kept as they are, and moved by a person. */
@BesideOthers
class BoardPositionsTest {

    /** Positions are kept to a tenth of a millimetre; a scene's origin moves with them. */
    private static final double TENTH_MM = 0.21;

    private static final SceneLayout LAYOUT = new SceneLayout(Drawn.FONTS);

    private static Harness free(String name) {
        return ExamplesDrawTest.example(name).withLayout(new TreeMap<>());
    }

    private static BoardPlaces places(Harness harness) {
        return LAYOUT.layOut(
                        harness,
                        Optional.empty(),
                        Optional.empty(),
                        SceneOptions.PLAIN,
                        SceneLayout.SCREEN_ASPECT_RATIO)
                .board()
                .orElseThrow();
    }

    private static SortedMap<String, Position> positions(Harness harness) {
        return places(harness).positions();
    }

    private static SortedMap<String, Position> moved(Harness harness, String id) {
        return new Arrangement(places(harness).moving(Set.of(id))).moved(5, 2);
    }

    @ParameterizedTest
    @ValueSource(strings = {"teaching", "rescue-pickup", "workboat", "faults", "star-ground"})
    void keepingThePositionsThatAnAutomaticLayoutGivesChangesNothing(String name) {
        Harness harness = free(name);
        SortedMap<String, Position> positions = positions(harness);
        Scene before = ExamplesDrawTest.board(harness, SceneOptions.PLAIN);
        Scene after = ExamplesDrawTest.board(harness.withLayout(positions), SceneOptions.PLAIN);
        assertEquals(before.elements().size(), after.elements().size());
        for (String id : before.elements()) {
            Extent one = before.bounds(id).orElseThrow();
            Extent other = after.bounds(id).orElseThrow();
            assertEquals(one.leftMm(), other.leftMm(), TENTH_MM, id);
            assertEquals(one.topMm(), other.topMm(), TENTH_MM, id);
            assertEquals(one.bottomMm(), other.bottomMm(), TENTH_MM, id);
        }
    }

    @Test
    void aBreakoutThatIsMovedTakesWhatHangsThereAlong() {
        // B14 with its two switches goes 30 mm up; the battery stays.
        Harness harness = free("star-ground");
        SortedMap<String, Position> positions = positions(harness);
        Position from = positions.get("B14");
        Position to = new Position(from.xMm(), from.yMm() - 30);
        Harness moved = harness.withLayout(new TreeMap<>(Map.of("B14", to)));
        SortedMap<String, Position> after = positions(moved);
        assertEquals(positions.get("S1").yMm() - 30, after.get("S1").yMm(), TENTH_MM);
        assertEquals(positions.get("S2").yMm() - 30, after.get("S2").yMm(), TENTH_MM);
        assertEquals(positions.get("BT1"), after.get("BT1"));
    }

    @Test
    void aBreakoutWithoutWiresIsADotThatCanBeTakenHoldOf() {
        Harness harness = ExamplesDrawTest.example("teaching")
                .with(new Breakout(new BreakoutId("B99"), "Spare", Optional.empty()));
        Scene scene = ExamplesDrawTest.board(harness, new SceneOptions(SceneOptions.Numbers.NONE, true));
        assertTrue(scene.itemsOf("B99").stream().anyMatch(item -> item.mark() instanceof Disc));
        assertTrue(scene.itemsOf("B1").stream().noneMatch(item -> item.mark() instanceof Disc));
    }

    @Test
    void twoCardsPutOnTheSamePlaceAreDrawnApart() {
        Harness harness = free("star-ground");
        Position place = positions(harness).get("F2");
        TreeMap<String, Position> same = new TreeMap<>();
        same.put("F2", place);
        same.put("F3", place);
        Scene scene = ExamplesDrawTest.board(harness.withLayout(same), SceneOptions.PLAIN);
        Extent one = scene.bounds("F2").orElseThrow();
        Extent other = scene.bounds("F3").orElseThrow();
        assertTrue(one.bottomMm() < other.bottomMm() - 5 || other.bottomMm() < one.bottomMm() - 5);
        assertEquals(List.of(), Overlaps.texts(scene));
    }

    @Test
    void draggingACardByItsConnectorOrByItsComponentIsTheSame() {
        // X20 sits on WL1: both names move the one card by 5 mm and 2 mm.
        Harness harness = free("rescue-pickup");
        Position from = positions(harness).get("X20");
        SortedMap<String, Position> byConnector = moved(harness, "X20");
        assertEquals(byConnector, moved(harness, "WL1"));
        assertEquals(Set.of("X20", "WL1"), byConnector.keySet());
        assertEquals(from.xMm() + 5, byConnector.get("WL1").xMm(), TENTH_MM);
        assertEquals(from.yMm() + 2, byConnector.get("X20").yMm(), TENTH_MM);
    }

    @Test
    void theLayoutStandsStillWhateverNumbersAreShown() {
        Harness harness = free("rescue-pickup");
        Extent plain = ExamplesDrawTest.board(harness, SceneOptions.PLAIN)
                .bounds("X20")
                .orElseThrow();
        Extent full = ExamplesDrawTest.board(harness, new SceneOptions(SceneOptions.Numbers.SIZE, true))
                .bounds("X20")
                .orElseThrow();
        assertEquals(plain.rightMm(), full.rightMm(), TENTH_MM);
    }
}
