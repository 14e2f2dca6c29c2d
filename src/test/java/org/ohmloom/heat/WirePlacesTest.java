package org.ohmloom.heat;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.ohmloom.model.Place;
import org.ohmloom.model.SegmentId;
import org.ohmloom.model.SignalClass;
import org.ohmloom.model.Splice;
import org.ohmloom.model.SpliceId;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireEnd;
import org.ohmloom.model.WireId;

/** The air a wire meets on its way and at its ends. */
class WirePlacesTest {
    private static final double DEFAULT_CELSIUS = 20;

    private static LaidHarness laid() {
        return LaidHarness.of("road-vehicle", 12, "ISO 6722-1 class B", DEFAULT_CELSIUS)
                .zone("1", 90, true)
                .zone("2", -10, false);
    }

    private static WirePlaces of(LaidHarness laid) {
        var harness = laid.harness();
        return WirePlaces.of(harness, laid.routes(), harness.wires().get(new WireId("W1")));
    }

    @Test
    void aSpliceBringsTheZoneOfTheSegmentItLiesOn() {
        SpliceId splice = new SpliceId("S1");
        LaidHarness laid = laid().with(new Splice(
                        splice,
                        "S1",
                        0,
                        Optional.of(new Place.OnSegment(new SegmentId("G1"), 0.5)),
                        Optional.empty(),
                        false,
                        Optional.empty()))
                .wire(Wire.of("W1", new WireEnd.AtSplice(splice), new WireEnd.Loose(), SignalClass.FEED));
        assertEquals(90, of(laid).hottestCelsius(DEFAULT_CELSIUS));
        assertTrue(of(laid).engineSpace());
        assertFalse(of(laid).defaultAmbient(), "its one known place has a zone");
    }

    @Test
    void aWireWithinColdZonesNeverMeetsTheDefaultAir() {
        assertEquals(-10, of(laid().wire("W1", "2")).hottestCelsius(DEFAULT_CELSIUS));
        assertFalse(of(laid().wire("W1", "2")).engineSpace());
    }

    @Test
    void aStretchWithoutAZoneHasTheDefaultAir() {
        WirePlaces mixed = of(laid().open("3").wire("W1", "2", "3"));
        assertTrue(mixed.defaultAmbient());
        assertEquals(DEFAULT_CELSIUS, mixed.hottestCelsius(DEFAULT_CELSIUS));
        assertEquals(
                DEFAULT_CELSIUS, of(laid().wire("W1")).hottestCelsius(DEFAULT_CELSIUS), "nothing is known of its way");
    }
}
