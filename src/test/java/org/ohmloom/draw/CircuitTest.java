package org.ohmloom.draw;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.ohmloom.BesideOthers;
import org.ohmloom.model.Component;
import org.ohmloom.model.Connector;
import org.ohmloom.model.Element;
import org.ohmloom.model.ElementId;
import org.ohmloom.model.GroundPoint;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Splice;

/** Harnesses that have wires but no bundle segments yet. */
@BesideOthers
class CircuitTest {

    /** An example with its physical harness taken away. */
    private static Harness wiresOnly(String name) {
        Harness harness = ExamplesDrawTest.example(name).withLayout(new TreeMap<>());
        List<Element> loose = new ArrayList<>();
        harness.components()
                .all()
                .forEach(each -> loose.add(new Component(
                        each.id(),
                        each.name(),
                        each.device(),
                        each.part(),
                        each.zone(),
                        Optional.empty(),
                        each.caseGround(),
                        each.existing(),
                        each.assembly())));
        harness.connectors()
                .all()
                .forEach(each -> loose.add(new Connector(
                        each.id(),
                        each.name(),
                        each.component(),
                        each.mate(),
                        Optional.empty(),
                        each.cavities(),
                        each.part(),
                        each.lock(),
                        each.backshell(),
                        each.limitCelsius(),
                        each.zone(),
                        each.existing(),
                        each.assembly())));
        harness.splices()
                .all()
                .forEach(each -> loose.add(new Splice(
                        each.id(),
                        each.name(),
                        each.jointOhms(),
                        Optional.empty(),
                        each.part(),
                        each.existing(),
                        each.assembly())));
        harness.grounds()
                .all()
                .forEach(each -> loose.add(new GroundPoint(
                        each.id(),
                        each.name(),
                        each.body(),
                        each.jointOhms(),
                        Optional.empty(),
                        each.zone(),
                        each.part(),
                        each.existing(),
                        each.assembly())));
        Harness off = harness.withAll(loose);
        List<ElementId> ids = new ArrayList<>(off.segments().ids());
        ids.addAll(off.breakouts().ids());
        return off.withoutAll(ids);
    }

    @ParameterizedTest
    @ValueSource(strings = {"teaching", "star-ground", "faults", "workboat"})
    void everyWireHasALineAndNothingWrittenLiesOnAnythingElse(String name) {
        Harness harness = wiresOnly(name);
        Scene scene = ExamplesDrawTest.board(harness, SceneOptions.PLAIN);
        Drawn.keep("circuit-" + name + "-LIGHT", scene, DrawStyle.LIGHT, 4);
        assertEquals(List.of(), Overlaps.texts(scene));
        assertEquals(List.of(), Overlaps.outside(scene));
        harness.wires()
                .ids()
                .forEach(id -> assertTrue(
                        scene.itemsOf(id.value()).stream().anyMatch(item -> item.mark() instanceof Line), id::value));
        harness.components()
                .ids()
                .forEach(id -> assertTrue(scene.bounds(id.value()).isPresent(), id::value));
    }

    @ParameterizedTest
    @CsvSource({"star-ground, A2", "star-ground, A3", "teaching, A4", "workboat, A3", "workboat, A2"})
    void onPaperACircuitIsCutWhereItDoesNotFitAndStaysLegible(String name, Paper paper) {
        Harness harness = wiresOnly(name);
        List<Scene> sheets = new DrawingSheet(Drawn.FONTS).sheets(harness, Optional.empty(), paper);
        for (int k = 0; k < sheets.size(); k++) {
            Scene sheet = sheets.get(k);
            Drawn.keep("circuit-sheet-" + name + "-" + paper + "-" + (k + 1), sheet, DrawStyle.PRINT, 4);
            assertEquals(List.of(), Overlaps.texts(sheet));
            assertEquals(List.of(), Overlaps.outside(sheet));
            sheet.items()
                    .forEach(item -> assertTrue(
                            !(item.mark() instanceof Text text) || text.heightMm() >= Lettering.SMALLEST_MM - 1e-6));
        }
    }

    @Test
    void theSourceStandsOnTheLeftOfWhatItFeeds() {
        // Battery, fuse, switch, heater: each further to the right than the one before.
        Scene scene = ExamplesDrawTest.board(wiresOnly("teaching"), SceneOptions.PLAIN);
        double before = Double.NEGATIVE_INFINITY;
        for (String id : List.of("BT1", "F1", "S1", "H1")) {
            double left = scene.bounds(id).orElseThrow().leftMm();
            assertTrue(left > before, id);
            before = left;
        }
    }
}
