package org.ohmloom.review;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.ohmloom.BesideOthers;
import org.ohmloom.Campaign;
import org.ohmloom.edit.RemoveWires;
import org.ohmloom.model.BrokenReferenceException;
import org.ohmloom.model.Component;
import org.ohmloom.model.Element;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Note;
import org.ohmloom.model.OperatingState;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireEnd;
import org.ohmloom.store.HarnessFiles;

/** An unfinished harness is analysed like any other: the analysis never throws and every message is a sentence. */
@BesideOthers
class RemovedElementsTest {

    private static final int HARNESSES = Campaign.FULL ? 60 : 5;
    private static final List<String> NAMES = List.of("teaching", "star-ground", "workboat", "faults", "rescue-pickup");
    private static final long SEED = 20260203;

    private static Harness example(String name) throws Exception {
        return HarnessFiles.read(Path.of("examples", name + HarnessFiles.ENDING));
    }

    private static void analysed(Harness harness) {
        Examined.findings(harness).forEach(MessageChecks::check);
    }

    @Test
    void withElementsTakenAwayAtRandom() throws Exception {
        Random random = new Random(SEED);
        List<Harness> whole = new ArrayList<>();
        for (String name : NAMES) {
            whole.add(example(name));
        }
        int changed = 0;
        for (int k = 0; k < HARNESSES; k++) {
            Harness start = whole.get(k % whole.size());
            Harness torn = torn(start, random);
            changed += torn == start ? 0 : 1;
            analysed(torn);
        }
        assertTrue(changed > HARNESSES * 9 / 10, "only " + changed + " were changed");
    }

    /** Takes away up to a third of the elements, each with whatever refers to it. */
    private static Harness torn(Harness whole, Random random) {
        Harness harness = whole;
        List<Element> elements = whole.elements().toList();
        int count = 1 + random.nextInt(Math.max(1, elements.size() / 3));
        for (int k = 0; k < count; k++) {
            Element element = elements.get(random.nextInt(elements.size()));
            try {
                harness = harness.element(element.id().value()).isPresent() ? harness.without(element.id()) : harness;
            } catch (BrokenReferenceException referred) {
                harness = loosened(harness, element);
            }
        }
        return harness;
    }

    /** What something refers to stays, but the wires that end there are cut loose. */
    private static Harness loosened(Harness harness, Element element) {
        String id = element.id().value();
        List<Element> cut = new ArrayList<>();
        for (Wire wire : harness.wires().all()) {
            WireEnd from = at(wire.from(), id) ? new WireEnd.Loose() : wire.from();
            WireEnd to = at(wire.to(), id) ? new WireEnd.Loose() : wire.to();
            if (from != wire.from() || to != wire.to()) {
                cut.add(wire.withEnds(from, to));
            }
        }
        return cut.isEmpty() ? harness : harness.withAll(cut);
    }

    private static boolean at(WireEnd end, String id) {
        return end.text().equals(id) || end.text().startsWith(id + ".");
    }

    @ParameterizedTest
    @ValueSource(strings = {"teaching", "star-ground", "workboat", "faults", "rescue-pickup"})
    void withoutStates(String name) throws Exception {
        Harness harness = example(name);
        Harness timeless = harness.withoutAll(harness.sequences().ids());
        analysed(timeless.withoutAll(
                timeless.states().all().stream().map(OperatingState::id).toList()));
    }

    @ParameterizedTest
    @ValueSource(strings = {"teaching", "star-ground", "workboat", "faults", "rescue-pickup"})
    void withoutWires(String name) throws Exception {
        Harness harness = example(name);

        Harness bare =
                harness.withoutAll(harness.notes().all().stream().map(Note::id).toList());
        analysed(new RemoveWires(bare.wires().all().stream().map(Wire::id).toList()).apply(bare));
    }

    @ParameterizedTest
    @ValueSource(strings = {"teaching", "star-ground", "workboat", "faults", "rescue-pickup"})
    void withAllWiresLoose(String name) throws Exception {
        Harness harness = example(name);
        List<Wire> loose = harness.wires().all().stream()
                .map(wire -> wire.withEnds(new WireEnd.Loose(), new WireEnd.Loose()))
                .toList();
        analysed(harness.withAll(loose));
    }

    @ParameterizedTest
    @ValueSource(strings = {"teaching", "star-ground", "workboat", "faults", "rescue-pickup"})
    void withEverySourceOff(String name) throws Exception {
        Harness harness = example(name);
        List<OperatingState> off = new ArrayList<>();
        for (OperatingState state : harness.states().all()) {
            OperatingState changed = state;
            for (Component component : harness.components().all()) {
                changed = component.device().isSource() ? changed.withSource(component.id(), false) : changed;
            }
            off.add(changed);
        }
        analysed(harness.withAll(off));
    }
}
