package org.ohmloom.judged;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.ohmloom.model.Breakout;
import org.ohmloom.model.BreakoutId;
import org.ohmloom.model.BundleSegment;
import org.ohmloom.model.Component;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.Connector;
import org.ohmloom.model.ConnectorId;
import org.ohmloom.model.Element;
import org.ohmloom.model.GroundPoint;
import org.ohmloom.model.GroundPointId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.SegmentId;

/** Lays a part of a generated harness side by side: one bundle segment from the first control unit to its sensors and dimmed loads. */
final class LaidOut {

    private static final BreakoutId AT_UNIT = new BreakoutId("K1");
    private static final BreakoutId AT_SENSORS = new BreakoutId("K2");

    private LaidOut() {}

    static Harness of(Harness harness, Random random) {
        List<Element> placed = new ArrayList<>();
        placed.add(new Breakout(AT_UNIT, "Unit", Optional.empty()));
        placed.add(new Breakout(AT_SENSORS, "Sensors", Optional.empty()));
        placed.add(new BundleSegment(
                new SegmentId("SG"),
                AT_UNIT,
                AT_SENSORS,
                0.08 + 0.07 * random.nextDouble(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty()));
        placed.add(connector(harness, "XU", AT_UNIT));
        for (String sensor : List.of("XP1", "XP2", "XT1", "XH1")) {
            placed.add(connector(harness, sensor, AT_SENSORS));
        }
        placed.add(component(harness, "LD1", AT_SENSORS));
        if (harness.components().find(new ComponentId("LD2")).isPresent()) {
            placed.add(component(harness, "LD2", AT_SENSORS));
            placed.add(component(harness, "Q1", AT_UNIT));
        }
        // some returns of the dimmed loads then lie there too
        for (String ground : List.of("G1", "E1")) {
            if (random.nextBoolean()) {
                placed.add(ground(harness.grounds().get(new GroundPointId(ground))));
            }
        }
        return harness.withAll(placed);
    }

    private static Connector connector(Harness harness, String id, BreakoutId at) {
        Connector now = harness.connectors().get(new ConnectorId(id));
        return new Connector(
                now.id(),
                now.name(),
                now.component(),
                now.mate(),
                Optional.of(at),
                now.cavities(),
                now.part(),
                now.lock(),
                now.backshell(),
                now.limitCelsius(),
                now.zone(),
                now.existing(),
                now.assembly());
    }

    private static Component component(Harness harness, String id, BreakoutId at) {
        Component now = harness.components().get(new ComponentId(id));
        return new Component(
                now.id(),
                now.name(),
                now.device(),
                now.part(),
                now.zone(),
                Optional.of(at),
                now.caseGround(),
                now.existing(),
                now.assembly());
    }

    private static GroundPoint ground(GroundPoint now) {
        return new GroundPoint(
                now.id(),
                now.name(),
                now.body(),
                now.jointOhms(),
                Optional.of(AT_UNIT),
                now.zone(),
                now.part(),
                now.existing(),
                now.assembly(),
                now.studs(),
                now.studMm(),
                now.torque());
    }
}
