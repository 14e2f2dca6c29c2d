package org.ohmloom.model;

import static org.ohmloom.units.Require.notBlank;

/**
 * An output pin of a control unit.
 *
 * @param unit the control unit
 * @param pin  name of the pin
 */
public record OutputPin(ComponentId unit, String pin) implements Comparable<OutputPin> {

    public OutputPin {
        notBlank(pin, "output pin of %s", unit);
    }

    @Override
    public int compareTo(OutputPin other) {
        int byUnit = unit.compareTo(other.unit);
        return byUnit != 0 ? byUnit : NaturalOrder.INSTANCE.compare(pin, other.pin);
    }

    @Override
    public String toString() {
        return unit + "." + pin;
    }
}
