package org.ohmloom.graph;

import java.util.Collections;
import java.util.HashSet;
import java.util.Set;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import org.ohmloom.model.GroundPointId;

/**
 * The part of a network that carries current back to its sources, found from how it hangs together and not from names,
 * colours or classes of wires.
 *
 * <p>Take the conductors and contacts alone: wires, shields, contacts, joints, chassis, straps and the insides of
 * devices, but no source, load, protective device, switch, relay contact, output or diode. They fall into pieces. A piece
 * with the positive terminal of a source, of a converter's output, of a reference supply or of a pull-up is a feed and
 * never a return; so is the link between two batteries in series. Of the other pieces a return is
 * <ul>
 *   <li>one with the negative terminal of a source, converter output or reference supply (the sensor return);
 *   <li>one with a ground joint, a stretch of chassis or a strap;
 *   <li>one that only the negative ends of loads and sensors reach, no positive one: the wire from loads to a low-side
 *       output, or to a switch in the return. Relay coils do not count, as either end may be the positive one.
 * </ul>
 * The law of a branch plays no part, so every operating state has the same return network.
 *
 * <p>Where chassis is on the positive side it is a feed; loops there are not loops of returns.
 *
 * @param points   its points
 * @param branches its branches
 */
public record ReturnNetwork(SortedSet<PointId> points, SortedMap<BranchId, Branch> branches) {

    public ReturnNetwork {
        points = Collections.unmodifiableSortedSet(new TreeSet<>(points));
        branches = Collections.unmodifiableSortedMap(new TreeMap<>(branches));
    }

    /** The return network of a network. O(points + branches). */
    public static ReturnNetwork of(Network network) {
        Islands pieces = Islands.of(network, Branch::isPlain);
        Set<Integer> feeds = new HashSet<>();
        Set<Integer> returns = new HashSet<>();
        Set<Integer> fed = new HashSet<>();
        Set<Integer> drained = new HashSet<>();
        for (Branch branch : network.branches().values()) {
            int from = pieces.number(branch.from()).orElseThrow();
            int to = pieces.number(branch.to()).orElseThrow();
            if (branch.kind().part() == BranchKind.Part.SOURCE) {
                returns.add(from);
                feeds.add(to);
            } else if (branch.kind().part() == BranchKind.Part.LOAD && branch.kind() != BranchKind.RELAY_COIL) {
                fed.add(from);
                drained.add(to);
            } else if (isOnChassis(branch)) {
                returns.add(from);
            }
        }
        drained.removeAll(fed);
        returns.addAll(drained);
        returns.removeAll(feeds);
        SortedSet<PointId> points = new TreeSet<>();
        returns.forEach(piece -> points.addAll(pieces.all().get(piece)));
        SortedMap<BranchId, Branch> branches = new TreeMap<>();
        network.branches().forEach((id, branch) -> {
            if (branch.isPlain()
                    && returns.contains(pieces.number(branch.from()).orElseThrow())) {
                branches.put(id, branch);
            }
        });
        return new ReturnNetwork(points, branches);
    }

    private static boolean isOnChassis(Branch branch) {
        return branch.kind() == BranchKind.CHASSIS
                || branch.kind() == BranchKind.STRAP
                || branch.element().filter(GroundPointId.class::isInstance).isPresent();
    }
}
