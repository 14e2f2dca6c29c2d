package org.ohmloom.graph;

import org.ohmloom.model.Device;
import org.ohmloom.model.Load;
import org.ohmloom.model.Sensor;

/** Branches of loads and sensors. What a load is in an operating state, {@link LoadLaws} knows. */
final class LoadBranches {

    private LoadBranches() {}

    /** The load itself, and the freewheel diode across its terminals, its anode at the negative one. */
    static void load(DeviceDraft draft, Load load) {
        draft.branch(BranchKind.LOAD, Device.POSITIVE, Device.NEGATIVE, new LoadLaws(draft, load).law());
        load.diodeVolts()
                .ifPresent(volts -> draft.branch(
                        "freewheel",
                        BranchKind.FREEWHEEL_DIODE,
                        Device.NEGATIVE,
                        Device.POSITIVE,
                        DriverBranches.diodeLaw(volts)));
    }

    /** What the sensor takes from its supply, and the resistance it shows between signal and return. */
    static void sensor(DeviceDraft draft, Sensor sensor) {
        if (sensor.drawAmps() > 0) {
            draft.branch(
                    Sensor.SUPPLY,
                    BranchKind.SENSOR,
                    Sensor.SUPPLY,
                    Sensor.RETURN,
                    new Law.ConstantCurrent(sensor.drawAmps()));
        }
        sensor.signalOhms()
                .ifPresent(ohms -> draft.branch(
                        Sensor.SIGNAL, BranchKind.SENSOR, Sensor.SIGNAL, Sensor.RETURN, new Law.Resistance(ohms)));
    }
}
