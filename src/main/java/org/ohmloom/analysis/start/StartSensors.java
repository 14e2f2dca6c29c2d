package org.ohmloom.analysis.start;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ohmloom.model.Component;
import org.ohmloom.model.ConnectorId;
import org.ohmloom.model.Sensor;
import org.ohmloom.model.SignalClass;
import org.ohmloom.model.WireEnd;

/** The sensors of a first harness: a signal each, one reference supply and one sensor return for all, apart from power. */
final class StartSensors {

    private final StartDraft draft;
    private final StartPlaces places;
    private final StartUnit unit;
    private final StartSplit supply;
    private final StartSplit back;

    StartSensors(StartDraft draft, StartPlaces places, StartUnit unit) {
        this.draft = draft;
        this.places = places;
        this.unit = unit;
        String near = draft.plan().unitPlace().orElseThrow();
        this.supply = new StartSplit(draft, places, near, "Reference supply", SignalClass.REFERENCE_SUPPLY);
        this.back = new StartSplit(draft, places, near, "Sensor return", SignalClass.REFERENCE_RETURN);
    }

    void build(StartSensor sensor) {
        StartSensor.Kind kind = sensor.kind();
        Component component = draft.plugged(
                "B-",
                sensor.name(),
                new Sensor(
                        kind.sensing(),
                        kind.supplied() ? StartFigures.SENSOR_AMPS : 0,
                        kind.supplied() ? OptionalDouble.empty() : OptionalDouble.of(StartFigures.PULL_UP_OHMS)),
                Optional.of(places.zone(sensor.place())));
        List<String> terminals = kind.supplied()
                ? List.of(Sensor.SIGNAL, Sensor.RETURN, Sensor.SUPPLY)
                : List.of(Sensor.SIGNAL, Sensor.RETURN);
        ConnectorId plug = places.connector(component, terminals, sensor.place());
        draft.wire(new WireEnd.AtCavity(plug, "1"), unit.end(unit.input(kind.input())), kind.signal(), sensor.name());
        back.join(new WireEnd.AtCavity(plug, "2"), sensor.name());
        if (kind.supplied()) {
            supply.join(new WireEnd.AtCavity(plug, "3"), sensor.name());
        }
    }

    /** Joins reference supply and sensor return. */
    void finish() {
        if (supply.count() > 0) {
            supply.build(unit.reference(), "reference");
        }
        if (back.count() > 0) {
            back.build(unit.sensorReturn(), "reference");
        }
    }
}
