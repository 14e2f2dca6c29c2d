package org.ohmloom.heat;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.ohmloom.model.Cable;
import org.ohmloom.model.CableId;
import org.ohmloom.model.Component;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.Draw;
import org.ohmloom.model.Load;
import org.ohmloom.model.SignalClass;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireEnd;
import org.ohmloom.model.ZoneId;
import org.ohmloom.tables.WireTables;

/** The cross-sections in which wires heat each other. */
class HeatPlaceTest {

    private static LaidHarness laid() {
        return LaidHarness.of("road-vehicle", 12, "ISO 6722-1 class B", 20);
    }

    private static List<String> places(LaidHarness laid) {
        return HeatPlace.of(laid.harness(), WireTables.bundled(), laid.routes()).stream()
                .map(place -> place.words() + " " + place.wires() + " " + place.ambientCelsius())
                .toList();
    }

    @Test
    void everySegmentIsAPlaceWithTheAirOfItsZone() {
        LaidHarness laid = laid().zone("1", 80, true).zone("2", 30, false).open("3");
        laid.wire("W1", "1", "2").wire("W2", "2", "3");
        assertEquals(
                List.of("in segment G1 [W1] 80.0", "in segment G2 [W1, W2] 30.0", "in segment G3 [W2] 20.0"),
                places(laid));
    }

    @Test
    void theSameWiresInTheSameAirAreOnePlace() {
        assertEquals(
                List.of("in segment G1 [W1] 20.0"),
                places(laid().open("1").open("2").wire("W1", "1", "2")));
    }

    @Test
    void anEndInHotterAirThanTheWayIsAPlaceOfItsOwn() {
        Component lamp = Component.of("L1", "Lamp", Load.of(new Draw.ConstantCurrent(1, 12)));
        LaidHarness laid = laid().zone("1", 90, true).zone("2", 30, false);
        laid.with(new Component(
                lamp.id(),
                lamp.name(),
                lamp.device(),
                lamp.part(),
                Optional.of(new ZoneId("Z1")),
                lamp.at(),
                lamp.caseGround(),
                lamp.existing(),
                lamp.assembly()));
        laid.wire(
                Wire.of(
                        "W1",
                        new WireEnd.AtTerminal(new ComponentId("L1"), "+"),
                        new WireEnd.Loose(),
                        SignalClass.FEED),
                "2");
        assertEquals(List.of("in segment G2 [W1] 30.0", "alone [W1] 90.0"), places(laid));
    }

    @Test
    void coresWithoutAWayHeatEachOtherInTheirCable() {
        CableId cable = new CableId("C1");
        LaidHarness laid = laid().with(Cable.pair(cable, "Pair", false, Optional.empty()));
        for (String id : List.of("W2", "W1")) {
            laid.wire(Wire.of(id, new WireEnd.Loose(), new WireEnd.Loose(), SignalClass.FEED)
                    .inCable(Optional.of(cable)));
        }
        laid.wire("W3");
        List<String> places = places(laid);
        assertTrue(places.contains("in cable C1 [W1, W2] 20.0"), places.toString());
        assertTrue(places.contains("alone [W3] 20.0"), places.toString());
    }
}
