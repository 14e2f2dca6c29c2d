package org.ohmloom.draw;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ohmloom.model.Battery;
import org.ohmloom.model.Breakout;
import org.ohmloom.model.BreakoutId;
import org.ohmloom.model.BundleSegment;
import org.ohmloom.model.Cavity;
import org.ohmloom.model.Component;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.Connector;
import org.ohmloom.model.ConnectorId;
import org.ohmloom.model.DesignRules;
import org.ohmloom.model.Draw;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Load;
import org.ohmloom.model.SegmentId;
import org.ohmloom.model.SignalClass;
import org.ohmloom.model.TitleBlock;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireEnd;
import org.ohmloom.model.Zone;
import org.ohmloom.model.ZoneId;
import org.ohmloom.units.Gauge;
import org.ohmloom.units.GaugeSystem;

/** A battery and a lamp with one bundle segment between them: the smallest harness that shows everything. */
final class SmallBoard {

    private SmallBoard() {}

    static Harness harness() {
        DesignRules rules = new DesignRules("road-vehicle", 12, 0.03, GaugeSystem.METRIC, "PVC", Optional.empty(), 30);
        Component battery = at(Component.of("BT1", "Battery", new Battery(12.6, 0.01, 60)), "A");
        Component lamp = Component.of("LA1", "Work lamp", Load.of(new Draw.Resistive(2, 12)));
        Connector plug = new Connector(
                new ConnectorId("X1"),
                "Lamp plug",
                Optional.of(lamp.id()),
                Optional.empty(),
                Optional.of(new BreakoutId("B")),
                List.of(cavity("1", "+"), cavity("2", "-")),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                OptionalDouble.empty(),
                Optional.empty(),
                false,
                Optional.empty());
        BundleSegment segment = new BundleSegment(
                new SegmentId("SG1"),
                new BreakoutId("A"),
                new BreakoutId("B"),
                0.85,
                Optional.of(new ZoneId("cab")),
                Optional.empty(),
                Optional.empty());
        return Harness.empty(TitleBlock.of("Lamp", "EX-D-1"), rules)
                .withAll(List.of(
                        new Zone(new ZoneId("cab"), "Cab", 40, false),
                        new Breakout(new BreakoutId("A"), "Front", Optional.empty()),
                        new Breakout(new BreakoutId("B"), "Lamp", Optional.empty()),
                        segment,
                        battery,
                        lamp,
                        plug,
                        wire("W1", "+", "1", SignalClass.FEED),
                        wire("W2", "-", "2", SignalClass.RETURN)));
    }

    private static Component at(Component component, String breakout) {
        return new Component(
                component.id(),
                component.name(),
                component.device(),
                component.part(),
                component.zone(),
                Optional.of(new BreakoutId(breakout)),
                component.caseGround(),
                component.existing(),
                component.assembly());
    }

    private static Cavity cavity(String name, String terminal) {
        return new Cavity(name, Optional.of(terminal), Optional.empty(), Optional.empty(), false);
    }

    private static Wire wire(String id, String terminal, String cavity, SignalClass signalClass) {
        return Wire.of(
                        id,
                        new WireEnd.AtTerminal(new ComponentId("BT1"), terminal),
                        new WireEnd.AtCavity(new ConnectorId("X1"), cavity),
                        signalClass)
                .withGauge(Optional.of(Gauge.metric(1.5)));
    }
}
