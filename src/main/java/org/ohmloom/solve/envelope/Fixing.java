package org.ohmloom.solve.envelope;

/**
 * What is decided so far: bit k stands for block k. A block in neither mask is free.
 *
 * @param on  blocks that run
 * @param off blocks that do not
 */
record Fixing(long on, long off) {
    /** Nothing decided. */
    static final Fixing NONE = new Fixing(0, 0);

    boolean isOn(int block) {
        return (on >>> block & 1) != 0;
    }

    boolean isOff(int block) {
        return (off >>> block & 1) != 0;
    }

    boolean isFree(int block) {
        return !isOn(block) && !isOff(block);
    }

    Fixing withOn(long blocks) {
        return new Fixing(on | blocks, off);
    }

    Fixing withOff(long blocks) {
        return new Fixing(on, off | blocks);
    }

    /** The blocks nothing is decided about. */
    long free(long all) {
        return all & ~on & ~off;
    }
}
