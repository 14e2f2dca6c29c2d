package org.ohmloom.edit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.ohmloom.BesideOthers;
import org.ohmloom.Campaign;
import org.ohmloom.graph.HarnessSketch;
import org.ohmloom.model.BreakoutId;
import org.ohmloom.model.BundleSegment;
import org.ohmloom.model.ConnectorId;
import org.ohmloom.model.Element;
import org.ohmloom.model.ElementId;
import org.ohmloom.model.GroundPointId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireEnd;
import org.ohmloom.model.WireId;
import org.ohmloom.store.HarnessFileException;
import org.ohmloom.store.HarnessFiles;
import org.ohmloom.store.HarnessText;

/** Taking things out with all that hangs on them. */
@BesideOthers
class TakeOutTest {

    /** Every element by itself in the full campaign, every fourth of each example otherwise. */
    private static final int STRIDE = Campaign.count(4, 1);

    private static Harness example(String name) throws HarnessFileException {
        return HarnessFiles.read(Path.of("examples", name + HarnessFiles.ENDING));
    }

    @Test
    void theWiresOfAGroundPointThatIsTakenOutEndLoose() {
        Harness harness = new HarnessSketch()
                .body("FR")
                .ground("G1", "FR", 0.001)
                .load("L1", 5, 12)
                .wire("W1", "L1.-", "G1", 0.02)
                .harness();
        TakeOut edit = new TakeOut(List.of(new GroundPointId("G1")));
        Wire left = edit.apply(harness).wires().get(new WireId("W1"));
        assertEquals("Take out G1", edit.label().english());
        assertEquals(new WireEnd.Loose(), left.to());
        assertEquals(harness.wires().get(new WireId("W1")).from(), left.from());
        assertSame(harness, new TakeOut(List.of(new GroundPointId("G9"))).apply(harness));
    }

    @Test
    void theSegmentsAtABreakoutGoWithItAndTheConnectorThereHasNoPlace() throws HarnessFileException {
        Harness harness = example("rescue-pickup");
        BreakoutId breakout = new BreakoutId("P4");
        List<BundleSegment> joined = harness.segments().all().stream()
                .filter(each -> each.from().equals(breakout) || each.to().equals(breakout))
                .toList();
        Harness after = new TakeOut(List.of(breakout)).apply(harness);
        assertFalse(joined.isEmpty());
        joined.forEach(each -> assertFalse(after.segments().has(each.id()), each.id() + " goes"));
        assertEquals(harness.segments().size() - joined.size(), after.segments().size());
        assertTrue(after.connectors().get(new ConnectorId("X60")).at().isEmpty());
        assertEquals(harness.wires().size(), after.wires().size());
    }

    @Test
    void oneOfAnInLinePairLeavesTheOtherUnmated() throws HarnessFileException {
        Harness harness = example("rescue-pickup");
        Harness after = new TakeOut(List.of(new ConnectorId("X61"))).apply(harness);
        assertTrue(after.connectors().get(new ConnectorId("X60")).mate().isEmpty());
        long loose = after.wires().all().stream()
                .flatMap(wire -> wire.ends().stream())
                .filter(WireEnd.Loose.class::isInstance)
                .count();
        long joined = harness.wires().all().stream()
                .flatMap(wire -> wire.ends().stream())
                .filter(end ->
                        end instanceof WireEnd.AtCavity at && at.connector().equals(new ConnectorId("X61")))
                .count();
        assertEquals(joined, loose);
    }

    /** Each element by itself: the harness stays whole (its constructor refuses anything else) and can be saved and read. */
    @ParameterizedTest
    @ValueSource(strings = {"teaching", "workboat", "rescue-pickup", "faults", "star-ground"})
    void anythingCanBeTakenOutOfAnExample(String name) throws HarnessFileException {
        Harness harness = example(name);
        List<Element> elements = harness.elements().toList();
        for (int k = 0; k < elements.size(); k += STRIDE) {
            Element element = elements.get(k);
            Harness after = new TakeOut(List.of(element.id())).apply(harness);
            assertTrue(after.element(element.id().value()).isEmpty(), element.id() + " is gone");
            assertFalse(after.layout().containsKey(element.id().value()), element.id() + " has no position");
        }
    }

    @Test
    void whatIsLeftOfManyTakenOutAtRandomComesBackFromItsFile() throws HarnessFileException {
        Harness harness = example("rescue-pickup");
        Random random = new Random(20261130);
        for (int round = 0; round < 30; round++) {
            List<ElementId> ids =
                    new ArrayList<>(harness.elements().map(Element::id).toList());
            Collections.shuffle(ids, random);
            Harness after = new TakeOut(ids.subList(0, 1 + random.nextInt(ids.size() - 1))).apply(harness);
            Harness read = HarnessText.read(HarnessText.write(after), Path.of("left.harness.json"));
            assertEquals(after, read);
        }
    }

    @Test
    void allTakenOutLeavesAnEmptyHarnessWithItsTitle() throws HarnessFileException {
        Harness harness = example("workboat");
        Harness after = new TakeOut(harness.elements().map(Element::id).toList()).apply(harness);
        assertEquals(0, after.elements().count());
        assertEquals(harness.titleBlock(), after.titleBlock());
        assertTrue(after.layout().isEmpty());
    }
}
