package org.ohmloom.draw;

import org.ohmloom.units.ShownUnits;

/**
 * What a layout shows beside the harness itself.
 *
 * @param numbers which numbers stand on segments and wires
 * @param wires   whether every wire is drawn in its bundle
 * @param heat    whether wires and segments are told by their numbers, in colours and widths of a {@link HeatScale}, instead
 *                of by their signal classes
 * @param units   units in which sizes, lengths and temperatures are written
 */
public record SceneOptions(Numbers numbers, boolean wires, boolean heat, ShownUnits units) {

    /** Which numbers stand on segments and wires. */
    public enum Numbers {
        /** None but lengths. */
        NONE,
        /** Current, RMS: of the state asked for, otherwise the largest of all states. */
        CURRENT,
        /** Voltage drop along the wire. */
        DROP,
        /** Conductor temperature in the worst state. */
        TEMPERATURE,
        /** Conductor size. */
        SIZE,
        /** What is left of the ampacity: 1 - current / ampacity, RMS, of the state asked for or the largest of those that last. */
        MARGIN,
        /** Outside diameter of a wire; of a segment that over its covering. */
        DIAMETER
    }

    /** Signal classes in their colours, in the usual units. */
    public SceneOptions(Numbers numbers, boolean wires) {
        this(numbers, wires, false, ShownUnits.USUAL);
    }

    /** In the usual units. */
    public SceneOptions(Numbers numbers, boolean wires, boolean heat) {
        this(numbers, wires, heat, ShownUnits.USUAL);
    }

    /** Bundles and lengths only. */
    public static final SceneOptions PLAIN = new SceneOptions(Numbers.NONE, false);

    /** These options with other numbers. */
    public SceneOptions withNumbers(Numbers changed) {
        return new SceneOptions(changed, wires, heat, units);
    }

    /** These options with wires drawn or not. */
    public SceneOptions withWires(boolean changed) {
        return new SceneOptions(numbers, changed, heat, units);
    }

    /** These options with wires and segments told by their numbers or by their signal classes. */
    public SceneOptions withHeat(boolean changed) {
        return new SceneOptions(numbers, wires, changed, units);
    }

    /** These options in other units. */
    public SceneOptions withUnits(ShownUnits changed) {
        return new SceneOptions(numbers, wires, heat, changed);
    }
}
