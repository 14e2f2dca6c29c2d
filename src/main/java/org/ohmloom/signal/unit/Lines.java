package org.ohmloom.signal.unit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ohmloom.model.Component;
import org.ohmloom.model.Device;
import org.ohmloom.model.Draw;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Load;
import org.ohmloom.model.PinRole;
import org.ohmloom.model.Relay;
import org.ohmloom.model.Sensor;
import org.ohmloom.model.Setting;

/**
 * The lines that sensors, loads and relays need pins for. A sensor needs what its calibration, else its kind, asks for, a reference
 * supply where it takes current, and a return. A load or the coil of a relay needs an output where one of its ends is not joined to
 * anything: a low-side output where only the negative end is free, else a high-side output.
 */
final class Lines {
    private final Harness harness;
    private final Joints joints;
    private final boolean anyHighSide;

    Lines(Harness harness, Joints joints, boolean anyHighSide) {
        this.harness = harness;
        this.joints = joints;
        this.anyHighSide = anyHighSide;
    }

    /** The lines of a component; none where it needs no pin. */
    List<Line> of(Component component) {
        if (component.device() instanceof Sensor sensor) {
            return ofSensor(component, sensor);
        }
        if (component.device() instanceof Load load) {
            boolean switching = load.draw() instanceof Draw.Motor
                    || load.draw() instanceof Draw.MagnetMotor
                    || load.draw() instanceof Draw.Inductive
                    || isSwitched(component);
            return ofOutput(component, Device.POSITIVE, Device.NEGATIVE, switching);
        }
        if (component.device() instanceof Relay) {
            return ofOutput(component, Relay.COIL_B, Relay.COIL_A, false);
        }
        return List.of();
    }

    private List<Line> ofSensor(Component component, Sensor sensor) {
        List<Line> lines = new ArrayList<>();
        lines.add(new Line(component.id(), Sensor.SIGNAL, SensorNeeds.signalRole(sensor), 0, false));
        if (sensor.drawAmps() > 0) {
            lines.add(new Line(component.id(), Sensor.SUPPLY, PinRole.REFERENCE_SUPPLY, sensor.drawAmps(), false));
        }
        lines.add(new Line(component.id(), Sensor.RETURN, PinRole.SENSOR_RETURN, sensor.drawAmps(), false));
        return lines;
    }

    private List<Line> ofOutput(Component component, String plus, String minus, boolean switching) {
        boolean fed = joints.isJoined(component.id(), plus);
        boolean returned = joints.isJoined(component.id(), minus);
        if (fed && returned) {
            return List.of();
        }
        double amps = DrivenCurrent.ofAmps(component, harness);
        return fed || !returned && !anyHighSide
                ? List.of(new Line(component.id(), minus, PinRole.LOW_SIDE_OUTPUT, amps, switching))
                : List.of(new Line(component.id(), plus, PinRole.HIGH_SIDE_OUTPUT, amps, switching));
    }

    private boolean isSwitched(Component component) {
        return harness.states().all().stream()
                .map(state -> Optional.ofNullable(state.components().get(component.id())))
                .flatMap(Optional::stream)
                .map(Setting::dutyFraction)
                .anyMatch(duty -> duty < 1);
    }
}
