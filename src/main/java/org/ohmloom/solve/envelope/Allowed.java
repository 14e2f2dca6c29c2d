package org.ohmloom.solve.envelope;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Which combinations of blocks are allowed. A block is what is always on or off as a whole; a combination is a set of
 * blocks that run, bit k of a mask for block k.
 *
 * <ul>
 *   <li>Wiring: a block needs controls (switches, outputs, commands) closed. A control is closed when some running block
 *       needs it; a block whose controls all are closed runs. One without any always runs. A block behind a contact that is
 *       closed at rest runs only while the blocks with that relay's coil do not.
 *   <li>Conflicts: two blocks that need one switch in two positions.
 *   <li>Limits: at most so many of some loads at once; mutually exclusive is at most one.
 *   <li>Together: all of some blocks or none.
 * </ul>
 *
 * <p>Limits and sets of blocks that run together may overlap in any way.
 */
final class Allowed {
    /** Most blocks. */
    static final int MOST_BLOCKS = 62;

    private final int count;
    private final int[][] needs;
    private final long[] providers;
    private final long[] resting;
    private final long[] conflicts;
    private final List<Limit> limits = new ArrayList<>();
    private final List<Long> together = new ArrayList<>();

    /** At most so many loads of some blocks; a block brings as many as {@code counts} says. */
    record Limit(int[] counts, int most) {
        int used(long on) {
            int used = 0;
            for (long left = on; left != 0; left &= left - 1) {
                used += counts[Long.numberOfTrailingZeros(left)];
            }
            return used;
        }
    }

    /**
     * Blocks with what they need; rules are added after.
     *
     * @param needs    numbers of the controls each block needs, counted from 0
     * @param controls count of controls
     */
    Allowed(int[][] needs, int controls) {
        this.count = needs.length;
        this.needs = Arrays.stream(needs).map(int[]::clone).toArray(int[][]::new);
        providers = new long[controls];
        resting = new long[count];
        conflicts = new long[count];
        for (int block = 0; block < count; block++) {
            for (int control : needs[block]) {
                providers[control] |= 1L << block;
            }
        }
    }

    /** Lets a block run only while others do not. */
    void rests(int block, long whileOff) {
        resting[block] |= whileOff;
    }

    /** Lets two blocks never run at once. */
    void conflict(int one, int other) {
        conflicts[one] |= 1L << other;
        conflicts[other] |= 1L << one;
    }

    /** Lets at most so many run; {@code counts} has the number of loads each block brings. */
    void limit(int[] counts, int most) {
        limits.add(new Limit(counts.clone(), most));
    }

    /** Whether a limit leaves any combination at all beside the rules there are. */
    boolean accepts(int[] counts, int most) {
        Optional<Fixing> always = settle(Fixing.NONE);
        return always.isEmpty() || new Limit(counts, most).used(always.get().on()) <= most;
    }

    /** Lets all of some blocks run, or none. */
    void together(long blocks) {
        together.add(blocks);
    }

    int count() {
        return count;
    }

    long all() {
        return (1L << count) - 1;
    }

    List<Limit> limits() {
        return limits;
    }

    /** Sets of blocks that run all or not at all. */
    List<Long> togetherSets() {
        return together;
    }

    /** Everything that follows from what is decided; empty when it contradicts itself. */
    Optional<Fixing> settle(Fixing start) {
        Fixing now = start;
        while (true) {
            Fixing before = now;
            now = byPairs(now);
            now = byLimits(now);
            now = byWiring(now);
            if ((now.on() & now.off()) != 0) {
                return Optional.empty();
            }
            if (now.equals(before)) {
                return Optional.of(now);
            }
        }
    }

    private Fixing byPairs(Fixing at) {
        Fixing now = at;
        for (long left = at.on(); left != 0; left &= left - 1) {
            int block = Long.numberOfTrailingZeros(left);
            now = now.withOff(conflicts[block] | resting[block]);
        }
        for (long set : together) {
            if ((now.on() & set) != 0) {
                now = now.withOn(set);
            }
            if ((now.off() & set) != 0) {
                now = now.withOff(set);
            }
        }
        return now;
    }

    private Fixing byLimits(Fixing at) {
        Fixing now = at;
        for (Limit limit : limits) {
            int left = limit.most() - limit.used(now.on());
            for (int block = 0; block < count; block++) {
                if (limit.counts()[block] > left && now.isFree(block)) {
                    now = now.withOff(1L << block);
                }
            }
            if (left < 0) {
                return new Fixing(now.on(), now.off() | now.on());
            }
        }
        return now;
    }

    private Fixing byWiring(Fixing at) {
        Fixing now = at;
        for (int block = 0; block < count; block++) {
            if (!now.isOn(block) && isCovered(block, now.on())) {
                if ((resting[block] & now.on()) != 0) {
                    now = now.withOff(1L << block);
                } else if ((resting[block] & ~now.off()) == 0) {
                    now = now.withOn(1L << block);
                }
            }
        }
        return now;
    }

    private boolean isCovered(int block, long on) {
        for (int control : needs[block]) {
            if ((providers[control] & on) == 0) {
                return false;
            }
        }
        return true;
    }

    /** Whether limits and sets that run together are kept; the wiring is not asked. */
    boolean keepsGroups(long on) {
        return limits.stream().allMatch(limit -> limit.used(on) <= limit.most())
                && together.stream().allMatch(set -> (set & on) == 0 || (set & on) == set);
    }

    /** Whether exactly these blocks may run. */
    boolean allows(long on) {
        return settle(new Fixing(on, all() & ~on)).isPresent();
    }
}
