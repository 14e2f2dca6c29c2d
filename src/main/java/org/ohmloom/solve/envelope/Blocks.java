package org.ohmloom.solve.envelope;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import org.ohmloom.graph.BranchId;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.LoadGroup;
import org.ohmloom.solve.Solution;
import org.ohmloom.solve.SolveTexts;
import org.ohmloom.words.Text;

/**
 * What takes current, put together where it can only run together, and the rules over it.
 *
 * @param takers  what takes current
 * @param blockOf number of the block of each of them
 * @param count   count of blocks
 * @param allowed which blocks may run at once
 * @param notes   load groups that could not be held to the letter, in sentences
 */
record Blocks(List<Taker> takers, int[] blockOf, int count, Allowed allowed, List<Text> notes) {

    private record Key(SortedSet<Control> controls, SortedSet<BranchId> atRest) {
        static Key of(Taker taker) {
            return new Key(taker.needs().controls(), taker.needs().atRest());
        }
    }

    /**
     * Puts them together.
     *
     * @return fewer than all rules where more than {@link Allowed#MOST_BLOCKS} blocks came out: then {@code allowed} holds
     *     no block at all
     */
    static Blocks of(List<Taker> takers, Iterable<LoadGroup> groups) {
        Map<Key, Integer> numbers = new LinkedHashMap<>();
        int[] blockOf = takers.stream()
                .mapToInt(taker -> numbers.computeIfAbsent(Key.of(taker), key -> numbers.size()))
                .toArray();
        List<Text> notes = new ArrayList<>();
        if (numbers.size() > Allowed.MOST_BLOCKS) {
            return new Blocks(takers, blockOf, numbers.size(), new Allowed(new int[0][], 0), notes);
        }
        Allowed allowed = wiring(List.copyOf(numbers.keySet()), takers, blockOf);
        for (LoadGroup group : groups) {
            rule(group, takers, blockOf, allowed, numbers.size(), notes);
        }
        return new Blocks(takers, blockOf, numbers.size(), allowed, notes);
    }

    private static Allowed wiring(List<Key> keys, List<Taker> takers, int[] blockOf) {
        Map<Control, Integer> controls = new TreeMap<>();
        keys.forEach(key -> key.controls.forEach(control -> controls.putIfAbsent(control, controls.size())));
        int[][] needs = keys.stream()
                .map(key -> key.controls.stream().mapToInt(controls::get).toArray())
                .toArray(int[][]::new);
        Allowed allowed = new Allowed(needs, controls.size());
        for (int block = 0; block < keys.size(); block++) {
            for (int taker = 0; taker < blockOf.length; taker++) {
                if (keys.get(block).atRest.contains(takers.get(taker).id())) {
                    allowed.rests(block, 1L << blockOf[taker]);
                }
            }
            for (int other = 0; other < block; other++) {
                if (exclude(keys.get(block).controls, keys.get(other).controls)) {
                    allowed.conflict(block, other);
                }
            }
        }
        return allowed;
    }

    private static boolean exclude(SortedSet<Control> ones, SortedSet<Control> others) {
        return ones.stream().anyMatch(one -> others.stream().anyMatch(one::excludes));
    }

    private static void rule(
            LoadGroup group, List<Taker> takers, int[] blockOf, Allowed allowed, int count, List<Text> notes) {
        int[] counts = new int[count];
        long members = 0;
        SortedSet<ComponentId> missing = new TreeSet<>(group.members());
        for (int taker = 0; taker < blockOf.length; taker++) {
            if (takers.get(taker).load().filter(missing::remove).isPresent()) {
                counts[blockOf[taker]]++;
                members |= 1L << blockOf[taker];
            }
        }
        if (group.kind() == LoadGroup.Kind.TOGETHER) {
            allowed.together(members);
            return;
        }
        if (allowed.accepts(counts, group.mostOn())) {
            allowed.limit(counts, group.mostOn());
        } else {
            notes.add(SolveTexts.text("envelope.group-left-out", group.id(), group.name()));
        }
    }

    /** The loads of the blocks that run. */
    SortedSet<ComponentId> loads(long on) {
        SortedSet<ComponentId> loads = new TreeSet<>();
        for (int taker = 0; taker < blockOf.length; taker++) {
            if ((on >>> blockOf[taker] & 1) != 0) {
                takers.get(taker).load().ifPresent(loads::add);
            }
        }
        return loads;
    }

    /** The blocks of which something takes current in a solution. */
    long running(Solution solution) {
        long on = 0;
        for (int taker = 0; taker < blockOf.length; taker++) {
            boolean takes = solution.flow(takers.get(taker).id())
                    .filter(flow -> Math.abs(flow.onAmps()) > Takers.NOTHING_AMPS)
                    .isPresent();
            on |= takes ? 1L << blockOf[taker] : 0;
        }
        return on;
    }

    /** The controls of the blocks that run. */
    SortedSet<Control> controls(long on) {
        SortedSet<Control> controls = new TreeSet<>();
        for (int taker = 0; taker < blockOf.length; taker++) {
            if ((on >>> blockOf[taker] & 1) != 0) {
                controls.addAll(takers.get(taker).needs().controls());
            }
        }
        return controls;
    }
}
