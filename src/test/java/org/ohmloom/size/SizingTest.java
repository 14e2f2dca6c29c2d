package org.ohmloom.size;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.ohmloom.model.DesignRules;
import org.ohmloom.model.Harness;
import org.ohmloom.model.ProtectiveDevice;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireId;
import org.ohmloom.units.Gauge;
import org.ohmloom.units.GaugeSystem;

class SizingTest {
    private static final double EXACT = 1e-12;

    private final FedLoad fed = new FedLoad(
                    new DesignRules(
                            "road-vehicle", 12, 0.05, GaugeSystem.METRIC, "ISO 6722-1 class B", Optional.empty(), 30),
                    10,
                    0.6,
                    0.1,
                    FedLoad.fuse(30))
            .wire("W1", 1, Gauge.metric(4), false)
            .wire("W2", 1)
            .wire("W3", 0.5, Gauge.metric(2.5), true);

    private static Optional<Gauge> gauge(Harness harness, String wire) {
        return harness.wires().get(new WireId(wire)).gauge();
    }

    @Test
    void onlyWiresWithoutASizeAndDevicesAreChanged() {
        SizingInput input = fed.input(fed.largest());
        Harness before = input.harness();
        Harness after = Sizing.sizedHarness(
                before, new ConductorChooser(input).chooseAll(), new DeviceChooser(input).chooseAll());
        assertEquals(Optional.of(Gauge.metric(4)), gauge(after, "W1"));
        assertEquals(Optional.of(Gauge.metric(2.5)), gauge(after, "W3"));
        // 0.6 - 0.1 - 0.0471 - 0.038 V leaves 0.415 V for 1 m: the 30 A fuse governs instead. By heat balance less
        // 10 %, 100 C in 30 C air, 1.5 mm2 carries less than 30 A and 2 mm2 more
        assertEquals(Optional.of(Gauge.metric(2)), gauge(after, "W2"));
        // 10 A / 0.8 = 12.5 A: 15 A
        assertEquals(
                15, ((ProtectiveDevice) after.components().get(FedLoad.FUSE).device()).ratingAmps(), EXACT);
    }

    @Test
    void clearingTakesTheSizeFromWiresToBeMadeOnly() {
        Harness cleared = Sizing.clear(fed.harness()).apply(fed.harness());
        assertEquals(Optional.empty(), gauge(cleared, "W1"));
        assertEquals(Optional.of(Gauge.metric(2.5)), gauge(cleared, "W3"));
    }

    @Test
    void provisionalSizesBeginAtTheMechanicalMinimumAndOnlyGrow() {
        Wire wire = fed.harness().wires().get(new WireId("W2"));
        ProvisionalSizes minimum = fed.minimum();
        assertEquals(Gauge.metric(0.35), minimum.gauge(wire));
        // ISO 6722-1 after 0.35 comes 0.5
        ProvisionalSizes larger = minimum.oneLarger(List.of(wire.id(), new WireId("W1")));
        assertEquals(Gauge.metric(0.5), larger.gauge(wire));
        ProvisionalSizes grown = fed.largest();
        assertSame(grown, grown.grow(new ConductorChooser(fed.input(grown)).chooseAll()));
        assertSame(grown, grown.oneLarger(List.of(wire.id())));
    }
}
