package org.ohmloom.model;

import static org.ohmloom.units.Require.positive;

import java.util.List;

/**
 * A battery: an electromotive force behind an internal resistance. Terminals {@code +} and {@code -}.
 * Connected in every operating state unless the state says it is off.
 *
 * @param emfVolts         open-circuit voltage, V, more than 0
 * @param internalOhms     internal resistance, ohm, more than 0
 * @param capacityAmpHours rated capacity, Ah, more than 0
 */
public record Battery(double emfVolts, double internalOhms, double capacityAmpHours) implements Device {

    public Battery {
        positive(emfVolts, "battery electromotive force");
        positive(internalOhms, "battery internal resistance");
        positive(capacityAmpHours, "battery capacity");
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
