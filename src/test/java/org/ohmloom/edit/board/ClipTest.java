package org.ohmloom.edit.board;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.ohmloom.edit.Renaming;
import org.ohmloom.graph.HarnessSketch;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.ConnectorId;
import org.ohmloom.model.Element;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Position;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireEnd;
import org.ohmloom.model.WireId;
import org.ohmloom.store.HarnessFileException;
import org.ohmloom.store.HarnessText;

/** Copying part of a harness and pasting it. */
class ClipTest {

    private static Harness clip(Harness harness, String... ids) {
        return Clip.of(harness, List.of(ids), harness.layout()).orElseThrow();
    }

    @Test
    void aCopiedHeaterBringsItsConnectorItsBundleEndAndItsPartsButNothingElse() throws HarnessFileException {
        Harness teaching = DraftingTest.example("teaching");
        Harness clip = clip(teaching, "H1");
        assertEquals(Set.of(new ComponentId("H1")), clip.components().ids());
        assertEquals(Set.of(new ConnectorId("X1")), clip.connectors().ids());
        assertEquals("B4", clip.breakouts().ids().iterator().next().value());
        assertTrue(clip.parts().ids().stream().anyMatch(id -> id.value().equals("EX-HT60")));
        assertEquals(
                0,
                clip.wires().size()
                        + clip.segments().size()
                        + clip.states().size()
                        + clip.notes().size());
        assertEquals(new Position(205, 44), clip.layout().get("B4"));
    }

    @Test
    void wiresBetweenCopiedThingsComeAlongAndOneThatLeadsElsewhereEndsLoose() throws HarnessFileException {
        Harness teaching = DraftingTest.example("teaching");
        // W1 joins battery and fuse; W2 leads from the fuse to the switch
        Harness both = clip(teaching, "BT1", "F1");
        assertEquals(Set.of(new WireId("W1")), both.wires().ids());
        Wire asked = clip(teaching, "F1", "W2").wires().get(new WireId("W2"));
        assertEquals(new WireEnd.AtTerminal(new ComponentId("F1"), "2"), asked.from());
        assertEquals(new WireEnd.Loose(), asked.to());
    }

    @Test
    void nothingDrawnMakesNoClip() throws HarnessFileException {
        Harness teaching = DraftingTest.example("teaching");
        assertEquals(Optional.empty(), Clip.of(teaching, List.of("EX-HT60", "nobody"), new TreeMap<>()));
    }

    @Test
    void aClipGoesThroughTheFileFormatAndIntoAnotherHarnessAsItWas() throws HarnessFileException {
        Harness clip = clip(DraftingTest.example("teaching"), "H1", "BT1", "F1");
        Harness read = HarnessText.read(HarnessText.write(clip), Path.of("clipboard"));
        assertEquals(clip, read);
        Harness empty = new HarnessSketch().harness();
        Drawn paste = PasteClip.of(empty, read, 0, 0);
        Harness after = paste.edit().apply(empty);
        assertEquals(clip.components(), after.components());
        assertEquals(clip.connectors(), after.connectors());
        assertEquals(clip.wires(), after.wires());
        assertEquals(clip.layout(), after.layout());
    }

    @Test
    void pastedBesideTheOriginalEverythingDrawnIsNewAndThePartsAreTheSame() throws HarnessFileException {
        Harness teaching = DraftingTest.example("teaching");
        Drawn paste = PasteClip.of(teaching, clip(teaching, "BT1", "F1"), 10, 20);
        Harness after = paste.edit().apply(teaching);
        assertEquals("Paste 4 things", paste.edit().label().english());
        assertEquals(teaching.parts(), after.parts());
        assertEquals("Battery 2", after.components().get(new ComponentId("BT2")).name());
        Wire copied = after.wires().get(new WireId("W9"));
        assertEquals(new WireEnd.AtTerminal(new ComponentId("BT2"), "+"), copied.from());
        assertEquals(new WireEnd.AtTerminal(new ComponentId("F2"), "1"), copied.to());
        // B1 stands at 90, 60
        String end = after.components()
                .get(new ComponentId("BT2"))
                .at()
                .orElseThrow()
                .value();
        assertEquals(new Position(100, 80), after.layout().get(end));
        teaching.elements()
                .forEach(each ->
                        assertEquals(Optional.of(each), after.element(each.id().value())));
    }

    @Test
    void aPartThatIsAnotherInTheOtherHarnessComesUnderANewIdAndOnlyOnce() throws HarnessFileException {
        Harness teaching = DraftingTest.example("teaching");
        Harness clip = clip(teaching, "H1");
        Harness other = clip(DraftingTest.example("teaching"), "H1");
        var part = other.parts().all().stream()
                .filter(each -> each.id().value().equals("EX-HT60"))
                .findFirst()
                .orElseThrow();
        Harness changed = other.with(new Renaming(Map.of("EX-BAT44", "EX-HT60"), Map.of())
                .of(teaching.parts().all().stream()
                        .filter(each -> each.id().value().equals("EX-BAT44"))
                        .findFirst()
                        .orElseThrow()));
        assertFalse(changed.parts().all().contains(part));
        Harness once = PasteClip.of(changed, clip, 0, 0).edit().apply(changed);
        Harness twice = PasteClip.of(once, clip, 0, 0).edit().apply(once);
        assertEquals(changed.parts().size() + 1, once.parts().size());
        assertEquals(once.parts(), twice.parts());
    }

    @Test
    void anyThingDrawnInAnExampleCanBeCopiedAndPastedAndTheClipIsAFileOfItsOwn() throws HarnessFileException {
        for (String name : List.of("rescue-pickup", "star-ground", "workboat", "faults")) {
            Harness harness = DraftingTest.example(name);
            List<String> drawn = harness.elements()
                    .filter(Clip::isDrawn)
                    .map(each -> each.id().value())
                    .collect(Collectors.toList());
            Collections.shuffle(drawn, new Random(20261130));
            for (int k = 0; k + 5 < Math.min(drawn.size(), 60); k += 5) {
                Harness clip = clip(harness, drawn.subList(k, k + 5).toArray(String[]::new));
                assertEquals(clip, HarnessText.read(HarnessText.write(clip), Path.of("clipboard")));
                Drawn paste = PasteClip.of(harness, clip, 5, 5);
                Harness after = paste.edit().apply(harness);
                long more = clip.elements().filter(Clip::isDrawn).count();
                assertEquals(
                        harness.elements().filter(Clip::isDrawn).count() + more,
                        after.elements().filter(Clip::isDrawn).count());
                List<Element> kept = harness.elements().toList();
                assertTrue(after.elements().toList().containsAll(kept), name + " stays as it was");
            }
        }
    }
}
