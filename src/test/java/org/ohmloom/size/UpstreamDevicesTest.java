package org.ohmloom.size;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.ohmloom.BesideOthers;
import org.ohmloom.graph.Network;
import org.ohmloom.graph.NetworkBuilder;
import org.ohmloom.graph.Upstream;
import org.ohmloom.model.Battery;
import org.ohmloom.model.Component;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.DesignRules;
import org.ohmloom.model.Draw;
import org.ohmloom.model.Element;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Load;
import org.ohmloom.model.OperatingState;
import org.ohmloom.model.SignalClass;
import org.ohmloom.model.TitleBlock;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireEnd;
import org.ohmloom.model.WireId;
import org.ohmloom.tables.WireTables;
import org.ohmloom.units.GaugeSystem;

/** A battery, two fuses one behind the other, a lamp: WA - FA - WB - FB - WC - lamp - WR. */
@BesideOthers
class UpstreamDevicesTest {

    private static WireEnd at(String component, String terminal) {
        return new WireEnd.AtTerminal(new ComponentId(component), terminal);
    }

    private static UpstreamDevices devices(double firstAmps, double secondAmps) {
        List<Element> elements = List.of(
                Component.of("BAT", "Battery", new Battery(12.6, 0.01, 60)),
                Component.of("FA", "First fuse", FedLoad.fuse(firstAmps)),
                Component.of("FB", "Second fuse", FedLoad.fuse(secondAmps)),
                Component.of("LAMP", "Lamp", Load.of(new Draw.Lamp(55, 12))),
                Wire.of("WA", at("BAT", "+"), at("FA", "1"), SignalClass.FEED),
                Wire.of("WB", at("FA", "2"), at("FB", "1"), SignalClass.FEED),
                Wire.of("WC", at("FB", "2"), at("LAMP", "+"), SignalClass.FEED),
                Wire.of("WR", at("LAMP", "-"), at("BAT", "-"), SignalClass.RETURN));
        OperatingState state = OperatingState.of("run", "Run", OperatingState.EngineMode.RUNNING);
        Harness harness = Harness.empty(
                        TitleBlock.of("Two fuses", "EX-TWO"),
                        new DesignRules(
                                "road-vehicle",
                                12,
                                0.05,
                                GaugeSystem.METRIC,
                                "ISO 6722-1 class B",
                                Optional.empty(),
                                25))
                .withAll(elements)
                .with(state);
        Network network = NetworkBuilder.build(harness, state, wire -> 0.01, WireTables.bundled());
        return UpstreamDevices.of(harness, Upstream.of(network, harness, Wire::lengthMetres));
    }

    private static List<ComponentId> of(UpstreamDevices devices, String wire) {
        return devices.of(new WireId(wire));
    }

    @Test
    void aWireReliesOnTheSmallestFuseOnItsWay() {
        UpstreamDevices devices = devices(30, 10);
        assertEquals(List.of(), of(devices, "WA"));
        assertEquals(List.of(new ComponentId("FA")), of(devices, "WB"));
        assertEquals(List.of(new ComponentId("FB")), of(devices, "WC"));
        assertEquals(List.of(), of(devices, "WR"), "a return is not protected by the feed's fuse");
    }

    @Test
    void aLargerFuseBehindASmallerOneProtectsNothing() {
        assertEquals(List.of(new ComponentId("FA")), of(devices(10, 30), "WC"));
    }
}
