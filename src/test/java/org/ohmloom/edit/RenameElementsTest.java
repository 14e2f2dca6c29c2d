package org.ohmloom.edit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.ohmloom.graph.HarnessSketch;
import org.ohmloom.model.Component;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.ConnectorId;
import org.ohmloom.model.Element;
import org.ohmloom.model.ElementId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Measured;
import org.ohmloom.model.Note;
import org.ohmloom.model.NoteId;
import org.ohmloom.model.Reading;
import org.ohmloom.model.ReadingId;
import org.ohmloom.model.UnknownKeys;
import org.ohmloom.model.Waiver;
import org.ohmloom.model.WaiverId;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireEnd;
import org.ohmloom.model.WireId;
import org.ohmloom.store.HarnessFileException;
import org.ohmloom.store.HarnessFiles;
import org.ohmloom.store.HarnessText;
import org.ohmloom.words.Text;

/** Other identities, followed by everything that names them. */
class RenameElementsTest {

    private static Harness example(String name) throws HarnessFileException {
        return HarnessFiles.read(Path.of("examples", name + HarnessFiles.ENDING));
    }

    private static RenameElements one(ElementId old, ElementId now) {
        return new RenameElements(Map.of(old, now));
    }

    @Test
    void theWiresOfARenamedConnectorEndInIt() throws HarnessFileException {
        Harness before = example("teaching");
        RenameElements edit = one(new ConnectorId("X1"), new ConnectorId("X101"));
        Harness after = edit.apply(before);
        assertEquals("Rename X1 to X101", edit.label().english());
        assertFalse(after.connectors().has(new ConnectorId("X1")));
        long ended = before.wires().all().stream()
                .flatMap(wire -> wire.ends().stream())
                .filter(end -> end.text().startsWith("X1."))
                .count();
        assertTrue(ended > 0);
        assertEquals(
                ended,
                after.wires().all().stream()
                        .flatMap(wire -> wire.ends().stream())
                        .filter(end -> end.text().startsWith("X101."))
                        .count());
    }

    @Test
    void whatNamesAnElementInWordsFollowsToo() throws HarnessFileException {
        UnknownKeys kept = new UnknownKeys(new TreeMap<>(Map.of("wires/W4/from", Map.of("remark", "1"))));
        Harness before = example("teaching")
                .withAll(List.of(
                        new Note(new NoteId("N-99"), Optional.of("W4"), "W4 runs over the frame"),
                        new Waiver(new WaiverId("A-1"), "some-rule", List.of("W4", "X1.1"), "seen", "", "2026-11-30"),
                        Reading.of(new ReadingId("R1"), new Measured.Path("X1.1", "G1, terminal of W4", 0.01)),
                        Reading.of(new ReadingId("R2"), new Measured.OfWire("W4", 0.01))))
                .withUnknownKeys(kept);
        Harness after = one(new WireId("W4"), new WireId("W40")).apply(before);
        assertEquals(
                new Note(new NoteId("N-99"), Optional.of("W40"), "W4 runs over the frame"),
                after.notes().get(new NoteId("N-99")));
        assertEquals(
                List.of("W40", "X1.1"), after.waivers().get(new WaiverId("A-1")).subjects());
        assertEquals(
                new Measured.Path("X1.1", "G1, terminal of W40", 0.01),
                after.readings().get(new ReadingId("R1")).measured());
        assertEquals(
                new Measured.OfWire("W40", 0.01),
                after.readings().get(new ReadingId("R2")).measured());
        assertEquals(Set.of("wires/W40/from"), after.unknownKeys().byPlace().keySet());
    }

    @Test
    void aCavityThatIsCalledLikeAWireStays() {
        assertEquals("X1.W4", renamedPath("X1.W4"));
        assertEquals("W40", renamedPath("W4"));
        assertEquals("W41", renamedPath("W41"));
    }

    private static String renamedPath(String end) {
        Harness before = new HarnessSketch()
                .load("L1", 5, 12)
                .wire("W4", "L1.-", "loose", 0.02)
                .with(Reading.of(new ReadingId("R1"), new Measured.Path(end, "L1.-", 0)))
                .harness();
        Harness after = one(new WireId("W4"), new WireId("W40")).apply(before);
        return ((Measured.Path) after.readings().get(new ReadingId("R1")).measured()).from();
    }

    @Test
    void twoMayChangePlaces() throws HarnessFileException {
        Harness before = example("teaching");
        Map<ElementId, ElementId> swapped = Map.of(
                new WireId("W1"), new WireId("W2"),
                new WireId("W2"), new WireId("W1"));
        Harness after = new RenameElements(swapped).apply(before);
        assertEquals(
                before.wires().get(new WireId("W1")).ends(),
                after.wires().get(new WireId("W2")).ends());
        assertEquals(
                before.wires().get(new WireId("W2")).gauge(),
                after.wires().get(new WireId("W1")).gauge());
    }

    @ParameterizedTest
    @ValueSource(strings = {"teaching", "star-ground", "workboat"})
    void everythingRenamedAndNamedBackIsTheSameFile(String name) throws HarnessFileException {
        Harness before = example(name);
        Map<ElementId, ElementId> there = new LinkedHashMap<>();
        Map<ElementId, ElementId> back = new LinkedHashMap<>();
        Random random = new Random(6);
        before.elements().map(Element::id).forEach(id -> {
            ElementId other = (ElementId) RecordShape.of((Record) id).made("Q" + random.nextInt(1000) + "-" + id);
            there.put(id, other);
            back.put(other, id);
        });
        Harness after = new RenameElements(there).apply(before);
        assertEquals(before.elements().count(), after.elements().count());
        String renamed = HarnessText.write(after);
        assertFalse(renamed.equals(HarnessText.write(before)));
        assertEquals(HarnessText.write(before), HarnessText.write(new RenameElements(back).apply(after)));
        assertSame(before, new RenameElements(Map.of()).apply(before));
    }

    @Test
    void aPlanSaysWhatSpeaksAgainstEachName() throws HarnessFileException {
        Harness harness = example("teaching");
        List<WireId> wires = List.of(new WireId("W1"), new WireId("W2"), new WireId("W3"));
        RenamePlan clash =
                RenamePlan.of(harness, wires, NamePattern.parse("X{1}"), (element, word) -> Optional.empty());
        assertEquals(
                List.of("'X1' is another thing in the harness", "'X2' is another thing in the harness", ""),
                clash.lines().stream()
                        .map(RenamePlan.Line::problem)
                        .map(Text::english)
                        .toList());
        assertFalse(clash.isReady());
        assertThrows(IllegalArgumentException.class, clash::edit);

        RenamePlan same = RenamePlan.of(harness, wires, NamePattern.parse("Q"), (element, word) -> Optional.empty());
        assertEquals(Optional.of("3 things would be 'Q'"), same.problem().map(Text::english));

        RenamePlan shifted =
                RenamePlan.of(harness, wires, NamePattern.parse("W{2}"), (element, word) -> Optional.empty());
        // W1 to W2, W2 to W3 and W3 to W4: W4 is there already and is not renamed
        assertEquals(
                Optional.of("'W4' is another thing in the harness"),
                shifted.problem().map(Text::english));
    }

    @Test
    void wiresAreNumberedByTheirCircuitAsOneStep() throws HarnessFileException {
        Harness harness = example("teaching");
        Session session = new Session(harness, Optional.empty());
        List<WireId> wires = List.copyOf(harness.wires().ids());
        RenamePlan plan =
                RenamePlan.of(harness, wires, NamePattern.parse("{class} {01}"), (element, word) -> Optional.of(element)
                        .filter(Wire.class::isInstance)
                        .map(Wire.class::cast)
                        .map(wire -> FieldText.words(wire.signalClass())));
        assertTrue(plan.isReady(), plan.problem().map(Text::english).orElse(""));
        session.apply(plan.edit());
        assertEquals(
                Optional.of("Rename " + wires.size() + " things"),
                session.undoLabel().map(Text::english));
        // a space cannot stand in an identity and becomes a hyphen
        assertTrue(
                session.current().wires().has(new WireId("feed-01")),
                session.current().wires().ids() + "");
        session.undo();
        assertSame(harness, session.current());
    }

    @Test
    void aKindOfIdentityCannotBecomeAnother() {
        assertThrows(IllegalArgumentException.class, () -> one(new WireId("W1"), new ComponentId("W1x")));
    }

    @Test
    void statesAndLoadsFollowTogether() throws HarnessFileException {
        Harness before = example("teaching");
        Component heater = before.components().get(new ComponentId("H1"));
        Harness after = one(heater.id(), new ComponentId("H9")).apply(before);
        before.states()
                .all()
                .forEach(state -> assertEquals(
                        state.setting(heater.id()),
                        after.states().get(state.id()).setting(new ComponentId("H9"))));
        assertTrue(after.wires().all().stream()
                .flatMap(wire -> wire.ends().stream())
                .noneMatch(end ->
                        end instanceof WireEnd.AtTerminal at && at.component().equals(heater.id())));
    }
}
