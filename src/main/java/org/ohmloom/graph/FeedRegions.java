package org.ohmloom.graph;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.function.IntPredicate;
import org.ohmloom.model.ElementId;

/**
 * The feeds of a network drawn together: regions that conductors and contacts join, and the devices between them.
 *
 * <p>Points of the return network belong to no region. Searches are breadth-first; a region that was entered by one
 * contact of a change-over switch is not left by another of the same switch.
 */
final class FeedRegions {
    private static final int UNSEEN = -2;
    private static final int ANY = -1;

    private final Islands islands;
    private final ReturnNetwork returns;
    private final List<Branch> gates = new ArrayList<>();
    private final List<List<Integer>> gatesAt = new ArrayList<>();
    private final int[] from;
    private final int[] to;
    private final int[] changeOver;

    FeedRegions(Network network, ReturnNetwork returns) {
        this.returns = returns;
        islands = Islands.of(network, Branch::isPlain);
        islands.all().forEach(island -> gatesAt.add(new ArrayList<>()));
        for (Branch branch : network.branches().values()) {
            if (branch.kind().part() == BranchKind.Part.DEVICE
                    && region(branch.from()).isPresent()
                    && region(branch.to()).isPresent()
                    && !region(branch.from()).equals(region(branch.to()))) {
                gatesAt.get(region(branch.from()).getAsInt()).add(gates.size());
                gatesAt.get(region(branch.to()).getAsInt()).add(gates.size());
                gates.add(branch);
            }
        }
        from = gates.stream()
                .mapToInt(gate -> islands.numberOf().get(gate.from()))
                .toArray();
        to = gates.stream().mapToInt(gate -> islands.numberOf().get(gate.to())).toArray();
        Map<ElementId, Integer> switches = new HashMap<>();
        changeOver = gates.stream()
                .mapToInt(gate -> FeedRules.changeOver(gate)
                        .map(element -> switches.computeIfAbsent(element, each -> switches.size()))
                        .orElse(ANY))
                .toArray();
    }

    /** Number of the region a point is in; empty on the return network. */
    OptionalInt region(PointId point) {
        return returns.points().contains(point) ? OptionalInt.empty() : islands.number(point);
    }

    /** The branch of a device by its number. */
    Branch gate(int number) {
        return gates.get(number);
    }

    int gateCount() {
        return gates.size();
    }

    /** Regions that a region reaches through the devices and regions that are allowed. */
    BitSet reach(int start, IntPredicate gateAllowed, IntPredicate regionAllowed) {
        int[] enteredBy = new int[gatesAt.size()];
        Arrays.fill(enteredBy, UNSEEN);
        BitSet reached = new BitSet();
        Deque<int[]> open = new ArrayDeque<>();
        enter(open, enteredBy, start, ANY, regionAllowed);
        while (!open.isEmpty()) {
            int[] entry = open.remove();
            reached.set(entry[0]);
            for (int gate : gatesAt.get(entry[0])) {
                boolean barred = changeOver[gate] != ANY && changeOver[gate] == entry[1];
                if (!barred && gateAllowed.test(gate) && opens(gate, entry[0])) {
                    enter(open, enteredBy, across(gate, entry[0]), changeOver[gate], regionAllowed);
                }
            }
        }
        return reached;
    }

    /** A region is looked at again when another way leads into it than the first, which may open what that one barred. */
    private static void enter(
            Deque<int[]> open, int[] enteredBy, int region, int changeOver, IntPredicate regionAllowed) {
        boolean again = enteredBy[region] != ANY && enteredBy[region] != changeOver;
        if (again && regionAllowed.test(region)) {
            enteredBy[region] = enteredBy[region] == UNSEEN ? changeOver : ANY;
            open.add(new int[] {region, changeOver});
        }
    }

    /** Regions from which a region is reached past no protective device, itself among them. */
    BitSet reachedBareFrom(int region) {
        BitSet found = new BitSet();
        Deque<Integer> open = new ArrayDeque<>(List.of(region));
        found.set(region);
        while (!open.isEmpty()) {
            int each = open.remove();
            for (int gate : gatesAt.get(each)) {
                int before = across(gate, each);
                if (!FeedRules.isProtective(gates.get(gate)) && opens(gate, before) && !found.get(before)) {
                    found.set(before);
                    open.add(before);
                }
            }
        }
        return found;
    }

    /** The protective devices that lead from one set of regions into another. */
    List<Branch> protectiveBetween(BitSet before, BitSet after) {
        List<Branch> found = new ArrayList<>();
        for (int gate = 0; gate < from.length; gate++) {
            boolean joins =
                    before.get(from[gate]) && after.get(to[gate]) || before.get(to[gate]) && after.get(from[gate]);
            if (joins && FeedRules.isProtective(gates.get(gate))) {
                found.add(gates.get(gate));
            }
        }
        return found;
    }

    private boolean opens(int gate, int region) {
        return !FeedRules.isOneWay(gates.get(gate)) || from[gate] == region;
    }

    private int across(int gate, int region) {
        return from[gate] == region ? to[gate] : from[gate];
    }
}
