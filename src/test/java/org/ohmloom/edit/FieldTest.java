package org.ohmloom.edit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.ohmloom.model.Component;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.ConnectorId;
import org.ohmloom.model.Draw;
import org.ohmloom.model.Element;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Load;
import org.ohmloom.model.Place;
import org.ohmloom.model.SegmentId;
import org.ohmloom.model.Splice;
import org.ohmloom.model.SpliceId;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireEnd;
import org.ohmloom.model.WireId;
import org.ohmloom.store.HarnessFileException;
import org.ohmloom.store.HarnessFiles;
import org.ohmloom.units.Unit;
import org.ohmloom.words.Text;

/** Fields of elements as a person reads and types them. */
class FieldTest {

    private final Harness harness = teaching();

    private static Harness teaching() {
        try {
            return HarnessFiles.read(Path.of("examples", "teaching" + HarnessFiles.ENDING));
        } catch (HarnessFileException unreadable) {
            throw new AssertionError(unreadable);
        }
    }

    private Wire wire(String id) {
        return harness.wires().get(new WireId(id));
    }

    private Element set(Field field, Element element, String typed) {
        return field.set(harness, "field", List.of(element), typed)
                .apply(harness)
                .element(element.id().value())
                .orElseThrow();
    }

    @Test
    void aNumberIsShownAndTypedInTheUnitOfTheField() {
        Splice splice = harness.splices().get(new SpliceId("SP1"));
        Field joint = Field.of("jointOhms", Unit.MILLIOHM);
        Splice changed = (Splice) set(joint, splice, "0,35");
        // 0.35 mOhm is 0.00035 ohm
        assertEquals(0.00035, changed.jointOhms(), 1e-18);
        assertEquals("0.35 mΩ", joint.text(changed));
        assertEquals(OptionalDouble.of(0.35), joint.number(changed));
        assertEquals(0.002, ((Splice) set(joint, splice, "0.002 Ohm")).jointOhms(), 1e-18);
    }

    @Test
    void lengthsStoredInMillimetresStaySo() {
        Field lay = Field.of("layLengthMm", Unit.MILLIMETRE);
        Element segment = harness.segments().get(new SegmentId("SG1"));
        assertEquals("", lay.text(segment));
        Element changed = set(lay, segment, "2.5 cm");
        assertEquals(OptionalDouble.of(25), lay.number(changed));
        assertEquals("25 mm", lay.text(changed));
        assertEquals(segment, set(lay, changed, ""));
    }

    @Test
    void aFieldInsideADeviceBelongsOnlyToDevicesThatHaveIt() {
        Field volts = Field.of("device.draw.ratedVolts", Unit.VOLT);
        Component heater = harness.components().get(new ComponentId("H1"));
        Component fuse = harness.components().get(new ComponentId("F1"));
        assertTrue(volts.suits(heater));
        assertFalse(volts.suits(fuse));
        Component changed = (Component) set(volts, heater, "13,5 V");
        assertEquals(13.5, ((Load) changed.device()).draw().ratedVolts());
        Draw before = ((Load) heater.device()).draw();
        assertEquals(before.ratedAmps(), ((Load) changed.device()).draw().ratedAmps());
        assertThrows(IllegalArgumentException.class, () -> volts.set(harness, "rating", List.of(fuse), "12"));
    }

    @Test
    void anEndIsWrittenAsPeopleDo() {
        Field from = Field.of("from");
        Wire w1 = wire("W1");
        Wire changed = (Wire) set(from, w1, "x1.1");
        assertEquals(new WireEnd.AtCavity(new ConnectorId("X1"), "1"), changed.from());
        assertEquals("X1.1", from.text(changed));
        assertEquals(new WireEnd.AtSplice(new SpliceId("SP1")), ((Wire) set(from, w1, "SP1")).from());
        assertEquals(new WireEnd.Loose(), ((Wire) set(from, w1, "")).from());
        assertEquals(from.text(w1), from.text(set(from, w1, from.text(w1))));
    }

    @ParameterizedTest
    @CsvSource({
        "X1, 'needs the cavity or terminal after a dot'",
        "X1.77, 'there is no cavity of X1 ''77'''",
        "SP9, 'did you mean ''SP1'''",
        "W2, 'no wire ends at ''W2'''"
    })
    void anEndThatIsNotThereIsRefusedWithTheNearest(String typed, String part) {
        IllegalArgumentException refused = assertThrows(
                IllegalArgumentException.class, () -> Field.of("to").set(harness, "end", List.of(wire("W1")), typed));
        assertTrue(refused.getMessage().contains(part), refused.getMessage());
    }

    @Test
    void choicesColoursAndSizesTakeTheirWords() {
        Wire w1 = wire("W1");
        assertEquals("feed", Field.of("signalClass").text(set(Field.of("signalClass"), w1, "FEED")));
        assertEquals("analogue signal", Field.of("signalClass").text(set(Field.of("signalClass"), w1, "analogue")));
        assertEquals("RDWH", Field.of("colour").text(set(Field.of("colour"), w1, "rd/wh")));
        assertEquals("2.5 mm2", Field.of("gauge").text(set(Field.of("gauge"), w1, "2,5")));
        IllegalArgumentException refused = assertThrows(
                IllegalArgumentException.class, () -> Field.of("signalClass").set(harness, "class", List.of(w1), "r"));
        assertTrue(refused.getMessage().contains("return"), refused.getMessage());
    }

    @Test
    void aPlaceIsABreakoutOrADistanceAlongASegment() {
        Field place = Field.of("place");
        Splice splice = harness.splices().get(new SpliceId("SP1"));
        Splice changed = (Splice) set(place, splice, "SG2 at 0,3 m");
        assertEquals(Optional.of(new Place.OnSegment(new SegmentId("SG2"), 0.3)), changed.place());
        assertEquals("SG2 at 0.3 m", place.text(changed));
        assertEquals("B2", place.text(set(place, splice, "B2")));
    }

    @Test
    void whatAConstructorRefusesIsRefusedBeforeAnythingChanges() {
        Field length = Field.of("lengthMetres", Unit.METRE);
        assertThrows(IllegalArgumentException.class, () -> length.set(harness, "length", List.of(wire("W1")), "-2 m"));
        assertThrows(IllegalArgumentException.class, () -> Field.of("name")
                .set(harness, "name", List.of(harness.splices().get(new SpliceId("SP1"))), " "));
    }

    @Test
    void editsOfOtherFieldsInTheSameStepStay() {
        Wire w1 = wire("W1");
        Edit both = new Compound(
                Text.of("Paste 2 cells"),
                List.of(
                        Field.of("circuit").set(harness, "circuit", List.of(w1), "main feed"),
                        Field.of("colour").set(harness, "colour", List.of(w1), "RD")));
        Wire changed = both.apply(harness).wires().get(w1.id());
        assertEquals(Optional.of("main feed"), changed.circuit());
        assertEquals("RD", changed.colour().orElseThrow().text());
    }
}
