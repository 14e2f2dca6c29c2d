package org.ohmloom.draw;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.ohmloom.AnalysedExamples;
import org.ohmloom.BesideOthers;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.draw.flow.FlowPicture;
import org.ohmloom.graph.PointId;
import org.ohmloom.model.Element;
import org.ohmloom.model.Load;
import org.ohmloom.model.StateId;
import org.ohmloom.solve.PointDrop;

/** The currents as a picture: nothing on anything else, every load in it, the way from source to return with its volts. */
@BesideOthers
class FlowPictureTest {

    @ParameterizedTest
    @ValueSource(strings = {"teaching", "rescue-pickup", "workboat", "faults", "star-ground"})
    void nothingWrittenLiesOnAnythingElseWritten(String name) throws IOException {
        Analysis analysis = AnalysedExamples.of(name);
        List<Optional<StateId>> states = new ArrayList<>(List.of(Optional.empty()));
        analysis.harness().states().ids().forEach(id -> states.add(Optional.of(id)));
        Set<String> sizes = new TreeSet<>();
        for (Optional<StateId> state : states) {
            Scene scene = FlowPicture.of(analysis, state, Drawn.FONTS).scene();
            if (state.isEmpty()) {
                Drawn.keep("currents-" + name, scene, DrawStyle.LIGHT, 2);
                Drawn.keep("currents-" + name + "-dark", scene, DrawStyle.DARK, 2);
            }
            assertEquals(List.of(), Overlaps.texts(scene), state.toString());
            assertEquals(List.of(), Overlaps.outside(scene), state.toString());
            assertEquals(List.of(), nodesOnEachOther(scene), state.toString());
            sizes.add(Math.round(scene.heightMm()) + "");
        }
        assertEquals(1, sizes.size(), "the picture keeps its shape in every state");
    }

    private static List<String> nodesOnEachOther(Scene scene) {
        List<Box> boxes = scene.items().stream()
                .filter(item -> item.layer() == Layer.CONNECTORS && item.mark() instanceof Box)
                .map(item -> (Box) item.mark())
                .toList();
        List<String> found = new ArrayList<>();
        for (int i = 0; i < boxes.size(); i++) {
            for (int j = i + 1; j < boxes.size(); j++) {
                if (boxes.get(i).bounds().overlaps(boxes.get(j).bounds())) {
                    found.add(boxes.get(i).dump() + " and " + boxes.get(j).dump());
                }
            }
        }
        return found;
    }

    @ParameterizedTest
    @ValueSource(strings = {"teaching", "rescue-pickup", "workboat", "faults", "star-ground"})
    void everyWireThatCarriesCurrentAndEveryLoadIsInThePicture(String name) {
        Analysis analysis = AnalysedExamples.of(name);
        Scene scene = FlowPicture.of(analysis, Optional.empty(), Drawn.FONTS).scene();
        Set<String> wanted = new TreeSet<>();
        analysis.ratings().forEach((id, rating) -> {
            if (rating.peakAmps() > 1e-3) {
                wanted.add(id.value());
            }
        });
        analysis.harness().components().all().stream()
                .filter(component -> component.device() instanceof Load)
                .map(Element::id)
                .filter(id -> analysis.evidence().solutions().values().stream()
                        .anyMatch(solution -> solution.loads().containsKey(id)))
                .forEach(id -> wanted.add(id.value()));
        scene.elements().forEach(wanted::remove);
        assertEquals(Set.of(), wanted);
    }

    @Test
    void theWayOfTheHeatersCurrentRunsFromTheBatteryAndBackWithTheVoltsLeft() {
        // Note 6 of the example: at the heater 11.9544 V while heater and pump run; the battery gives 12.6 V less 20
        // mOhm x 7.98 A.
        FlowPicture picture =
                FlowPicture.of(AnalysedExamples.of("teaching"), Optional.of(new StateId("both")), Drawn.FONTS);
        List<String> wires = picture.trail("H1").stream()
                .flatMap(item -> item.element().stream())
                .toList();
        assertEquals(List.of("W1", "W2", "W3", "W4", "W6", "G2", "G1", "W8"), wires);
        List<String> volts = picture.trail("H1").stream()
                .filter(item -> item.mark() instanceof Text)
                .map(item -> ((Text) item.mark()).text())
                .toList();
        assertEquals("12.4 V", volts.get(0));
        assertEquals("0 V", volts.get(volts.size() - 1));
        assertEquals(2 * wires.size(), volts.size());
    }

    @Test
    void theWayBetweenTwoPointsShowsTheVoltsAlongIt() {
        FlowPicture picture = FlowPicture.of(AnalysedExamples.of("teaching"), Optional.empty(), Drawn.FONTS);
        assertTrue(picture.isPoint("H1.+"));
        assertFalse(picture.isPoint("H1"));
        // Note 6: 11.9544 V across the heater, largest of all states when it runs alone or with the pump.
        PointDrop drop = picture.drop(new PointId("H1.+"), new PointId("H1.-"), new StateId("both"))
                .orElseThrow();
        assertEquals(11.9544, drop.volts(), 5e-5);
        PointDrop feed =
                picture.largestDrop(new PointId("BT1.+"), new PointId("H1.+")).orElseThrow();
        assertEquals(
                List.of("W1", "W2", "W3", "W4"),
                picture.trail(feed).stream()
                        .flatMap(item -> item.element().stream())
                        .sorted()
                        .toList());
        assertEquals(Optional.of(new PointId("SP1")), picture.pointAt("SP1"));
        assertTrue(picture.trail("no-such-thing").isEmpty());
    }
}
