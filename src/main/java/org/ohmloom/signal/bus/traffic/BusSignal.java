package org.ohmloom.signal.bus.traffic;

import static org.ohmloom.units.Require.notBlank;
import static org.ohmloom.units.Require.positive;
import static org.ohmloom.units.Require.within;

import org.ohmloom.model.ComponentId;

/**
 * One value that is sent on a bus again and again.
 *
 * @param name      what people call it
 * @param sender    the unit that sends it
 * @param rateHertz how often, Hz, more than 0
 * @param bits      bits of the value, 1 to 64
 */
public record BusSignal(String name, ComponentId sender, double rateHertz, int bits) {
    public BusSignal {
        notBlank(name, "value on a bus");
        positive(rateHertz, "rate of %s", name);
        within(bits, 1, 64, "bits of %s", name);
    }
}
