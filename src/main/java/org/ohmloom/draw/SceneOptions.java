package org.ohmloom.draw;

/**
 * What a layout shows beside the harness itself.
 *
 * @param numbers which numbers stand on segments and wires
 * @param wires   whether every wire is drawn in its bundle
 */
public record SceneOptions(Numbers numbers, boolean wires) {

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
        SIZE
    }

    /** Bundles and lengths only. */
    public static final SceneOptions PLAIN = new SceneOptions(Numbers.NONE, false);

    /** These options with other numbers. */
    public SceneOptions withNumbers(Numbers changed) {
        return new SceneOptions(changed, wires);
    }

    /** These options with wires drawn or not. */
    public SceneOptions withWires(boolean changed) {
        return new SceneOptions(numbers, changed);
    }
}
