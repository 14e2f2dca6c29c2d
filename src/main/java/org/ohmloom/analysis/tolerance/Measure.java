package org.ohmloom.analysis.tolerance;

import org.ohmloom.units.Unit;
import org.ohmloom.words.Constants;

/** What a followed result is. */
public enum Measure {
    /** Voltage lost on feed and return of a load while it is on; its limit is what it may lose. */
    LOAD_DROP(Unit.VOLT),
    /** Voltage at a load while it is on; its limit is the least it works at. */
    LOAD_VOLTS(Unit.VOLT),
    /** RMS current of a wire; its limit is what it may carry. */
    WIRE_AMPS(Unit.AMP),
    /** Conductor temperature of a wire; its limit is that of the insulation. */
    WIRE_CELSIUS(Unit.DEGREE_CELSIUS),
    /** RMS current through a protective device; its limit is what it carries for good where it sits. */
    DEVICE_AMPS(Unit.AMP);

    private final Unit unit;

    Measure(Unit unit) {
        this.unit = unit;
    }

    /** What it is, in a word. */
    public String words() {
        return Constants.text(this).english();
    }

    /** Its unit. */
    public Unit unit() {
        return unit;
    }

    /** Whether its limit is the least it may be. */
    public boolean isFloor() {
        return this == LOAD_VOLTS;
    }
}
