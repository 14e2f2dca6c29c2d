package org.ohmloom.edit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.ohmloom.graph.HarnessSketch;
import org.ohmloom.model.ConnectorId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Waiver;
import org.ohmloom.model.WaiverId;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireEnd;
import org.ohmloom.model.WireId;
import org.ohmloom.store.HarnessFileException;
import org.ohmloom.store.HarnessFiles;
import org.ohmloom.store.HarnessText;

/** Things added to lists. */
class NewThingTest {

    private static Harness teaching() throws HarnessFileException {
        return HarnessFiles.read(Path.of("examples", "teaching" + HarnessFiles.ENDING));
    }

    @ParameterizedTest
    @EnumSource(NewThing.class)
    void eachKindIsAddedTwiceUnderIdentitiesOfItsOwnAndIsWrittenAndReadAgain(NewThing kind) throws Exception {
        Harness before = teaching();
        Harness once = kind.added(before).apply(before);
        Harness twice = kind.added(once).apply(once);
        assertEquals(before.elements().count() + 2, twice.elements().count());
        assertEquals(twice, HarnessText.read(HarnessText.write(twice), Path.of("test")));
    }

    /** 1.05 x 12 is 12.600000000000001 to a computer; nobody wants to see that in a cell that is opened. */
    @ParameterizedTest
    @EnumSource(NewDevice.class)
    void theFiguresOfANewDeviceAreRoundAtEveryUsualVoltage(NewDevice kind) {
        for (double volts : List.of(6.0, 12.0, 24.0, 36.0, 48.0)) {
            String device = String.valueOf(kind.at(volts));
            assertFalse(Pattern.compile("\\.\\d{5}").matcher(device).find(), device);
        }
    }

    @Test
    void aNewSpliceIsNumberedOnFromThoseThere() throws HarnessFileException {
        assertEquals("Add splice SP2", NewThing.SPLICE.added(teaching()).label().english());
        assertEquals("Add note N-9", NewThing.NOTE.added(withNotes(8)).label().english());
    }

    private static Harness withNotes(int count) {
        Harness harness = new HarnessSketch().harness();
        for (int k = 0; k < count; k++) {
            harness = NewThing.NOTE.added(harness).apply(harness);
        }
        return harness;
    }

    @Test
    void aStrapNeedsTwoGroundPoints() {
        Harness bare = new HarnessSketch().harness();
        assertEquals(
                "a strap joins two ground points; add them first",
                assertThrows(IllegalArgumentException.class, () -> NewThing.STRAP.added(bare))
                        .getMessage());
    }

    @Test
    void anotherOfAWireBeginsLooseAndAnotherConnectorPlugsIntoNothing() throws HarnessFileException {
        Harness before = teaching();
        PutElements edit = DuplicateElements.of(before, List.of(new WireId("W3"), new ConnectorId("X1")));
        Harness after = edit.apply(before);
        Wire copy = after.wires().get(new WireId("W9"));
        assertEquals(List.of(new WireEnd.Loose(), new WireEnd.Loose()), copy.ends());
        assertEquals(before.wires().get(new WireId("W3")).gauge(), copy.gauge());
        assertTrue(after.connectors().get(new ConnectorId("X3")).component().isEmpty());
        assertEquals("Add another of 2 things", edit.label().english());
    }

    @Test
    void anAcceptedFindingHasOneReasonTheLatest() {
        Harness before = new HarnessSketch().harness();
        AcceptFindings.Accepted what = new AcceptFindings.Accepted("some-rule", List.of("W1", "W2"));
        Harness once = new AcceptFindings(List.of(what), "seen on the vehicle", "EX", "2026-11-30").apply(before);
        Harness twice = new AcceptFindings(List.of(what), "measured", "", "2026-12-01").apply(once);
        Waiver expected =
                new Waiver(new WaiverId("A-1"), "some-rule", List.of("W1", "W2"), "measured", "", "2026-12-01");
        assertEquals(List.of(expected), List.copyOf(twice.waivers().all()));
        assertThrows(IllegalArgumentException.class, () -> new AcceptFindings(List.of(what), "  ", "", "2026-11-30"));
        assertEquals(
                "Accept some-rule of W1, W2",
                new AcceptFindings(List.of(what), "seen", "", "2026-11-30")
                        .label()
                        .english());
        assertEquals(Optional.empty(), before.waivers().all().stream().findFirst());
    }
}
