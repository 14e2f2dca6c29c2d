package org.ohmloom.size;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.ohmloom.BesideOthers;
import org.ohmloom.analysis.SizedHarness;
import org.ohmloom.model.DesignRules;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireId;
import org.ohmloom.units.Gauge;
import org.ohmloom.units.GaugeSystem;

@BesideOthers
class SizingTest {
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

    @Test
    void clearingTakesTheSizeFromWiresToBeMadeOnly() {
        Harness cleared = SizedHarness.cleared(fed.harness()).apply(fed.harness());
        assertEquals(Optional.empty(), cleared.wires().get(new WireId("W1")).gauge());
        assertEquals(
                Optional.of(Gauge.metric(2.5)),
                cleared.wires().get(new WireId("W3")).gauge());
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
