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
     * Puts the current at the voltage of one branch in its place, A.
     *
     * @param along  voltage along each branch, V
     * @param branch number of the branch
     * @param into   current of each branch, A
     */
    default void amps(PreciseRow along, int branch, PreciseRow into) {
        into.set(branch, amps(along.get(branch)));
    }

    /**
     * Slope at the voltage of one branch, S.
     *
     * @param along  voltage along each branch, V
     * @param branch number of the branch
     */
    default double siemens(PreciseRow along, int branch) {
        return siemens(along.get(branch));
    }

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
