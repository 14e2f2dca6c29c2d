package org.ohmloom.solve;

/**
 * The current of one branch as a function of the voltage along it, {@code from} to {@code to}, in one moment.
 *
 * <p>All but {@link DrawnPower} never fall as the voltage rises; that is what makes the search of {@link Newton} sure to
 * arrive.
 */
interface Characteristic {

    /** Current from {@code from} to {@code to}, A, at a voltage V(from) - V(to) in V. */
    Precise amps(Precise volts);

    /** Slope of the current at that voltage, S; at a kink that of either side. */
    double siemens(Precise volts);

    /**
     * What it leaks beside, S, in a stage of the search; 0 when its slope is always positive. See {@link Leak}.
     *
     * @param stageSiemens leak of the stage, S
     */
    default double leakSiemens(double stageSiemens) {
        return stageSiemens;
    }

    /** Whether the current is in proportion to the voltage. */
    default boolean isLinear() {
        return false;
    }
}
