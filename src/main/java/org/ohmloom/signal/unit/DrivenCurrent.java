package org.ohmloom.signal.unit;

import org.ohmloom.model.Component;
import org.ohmloom.model.Device;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Load;
import org.ohmloom.model.Relay;

/** The current of what an output drives. */
public final class DrivenCurrent {

    private DrivenCurrent() {}

    /** Rated current of a load, or that of a coil, A; 0 for anything else. */
    public static double ofAmps(Component driven, Harness harness) {
        Device device = driven.device();
        if (device instanceof Load load) {
            return load.draw().ratedAmps();
        }
        return device instanceof Relay relay
                ? relay.ratedVolts().orElse(harness.rules().nominalVolts()) / relay.coilOhms()
                : 0;
    }
}
