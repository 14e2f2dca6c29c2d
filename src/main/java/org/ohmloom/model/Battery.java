package org.ohmloom.model;

import static org.ohmloom.units.Require.positive;

import java.util.List;
import java.util.Optional;

/**
 * A battery: an electromotive force behind an internal resistance. Terminals {@code +} and {@code -}.
 * Connected in every operating state unless the state says it is off.
 *
 * @param emfVolts         open-circuit voltage, V, more than 0
 * @param internalOhms     internal resistance, ohm, more than 0
 * @param capacityAmpHours rated capacity, Ah, more than 0
 * @param model            how it changes with charge level, temperature and time; empty means not at all. With a model the
 *                         electromotive force holds full at 25 deg C and the resistance full at 25 deg C for a pulse of 1 s
 */
public record Battery(double emfVolts, double internalOhms, double capacityAmpHours, Optional<BatteryModel> model)
        implements Device {

    public Battery {
        positive(emfVolts, "battery electromotive force");
        positive(internalOhms, "battery internal resistance");
        positive(capacityAmpHours, "battery capacity");
    }

    /** A battery that is the same at every charge level and temperature. */
    public Battery(double emfVolts, double internalOhms, double capacityAmpHours) {
        this(emfVolts, internalOhms, capacityAmpHours, Optional.empty());
    }

    @Override
    public List<String> terminals() {
        return List.of(POSITIVE, NEGATIVE);
    }

    @Override
    public boolean isSource() {
        return true;
    }
}
