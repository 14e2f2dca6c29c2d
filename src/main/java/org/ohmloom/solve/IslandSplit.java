package org.ohmloom.solve;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeMap;
import org.ohmloom.graph.Branch;
import org.ohmloom.graph.BranchId;
import org.ohmloom.graph.Law;
import org.ohmloom.graph.Network;
import org.ohmloom.graph.PointId;

/**
 * Splits a network into islands that share no branch that can conduct. Union-find, near to linear in points and branches.
 *
 * <p>A blocking diode and an output in the off part of its period can conduct and join; an open switch does not. The datum of
 * an island is that of the network where it lies in it, otherwise the negative terminal of the island's first source in
 * branch order. Without a datum of the network the first powered island takes its place.
 */
final class IslandSplit {

    private IslandSplit() {}

    /**
     * Splits a network whose laws are those of the moment.
     *
     * @param network  the points and the datum
     * @param branches its branches with the laws of the moment, in order
     * @return the islands in the order of their first points
     */
    static List<IslandPart> of(Network network, List<Branch> branches) {
        List<PointId> points = List.copyOf(network.points());
        Map<PointId, Integer> numbers = new HashMap<>();
        points.forEach(point -> numbers.put(point, numbers.size()));
        Joining joining = new Joining(points.size());
        for (Branch branch : branches) {
            if (!(branch.law() instanceof Law.Open)) {
                joining.join(numbers.get(branch.from()), numbers.get(branch.to()));
            }
        }
        Map<Integer, List<PointId>> pointsOf = new TreeMap<>();
        for (PointId point : points) {
            pointsOf.computeIfAbsent(joining.root(numbers.get(point)), root -> new ArrayList<>())
                    .add(point);
        }
        Map<Integer, List<Branch>> branchesOf = new HashMap<>();
        for (Branch branch : branches) {
            if (!(branch.law() instanceof Law.Open)) {
                branchesOf
                        .computeIfAbsent(joining.root(numbers.get(branch.from())), root -> new ArrayList<>())
                        .add(branch);
            }
        }
        Optional<Integer> mainRoot = network.datum()
                .map(numbers::get)
                .map(joining::root)
                .or(() -> branches.stream()
                        .filter(branch -> branch.law() instanceof Law.VoltageSource)
                        .findFirst()
                        .map(source -> joining.root(numbers.get(source.from()))));
        List<IslandPart> islands = new ArrayList<>();
        pointsOf.forEach((root, members) -> islands.add(island(
                members,
                branchesOf.getOrDefault(root, List.of()),
                network.datum(),
                mainRoot.equals(Optional.of(root)))));
        return islands;
    }

    /** Whether another network splits in the same way: the same points, branches between the same ones, open and feeding alike. */
    static boolean isAlike(Network one, List<Branch> oneBranches, Network other, List<Branch> otherBranches) {
        if (oneBranches.size() != otherBranches.size()
                || !one.datum().equals(other.datum())
                || !isSame(one.points(), other.points())) {
            return false;
        }
        for (int number = 0; number < oneBranches.size(); number++) {
            Branch before = oneBranches.get(number);
            Branch now = otherBranches.get(number);
            if (before != now && !isAlike(before, now)) {
                return false;
            }
        }
        return true;
    }

    private static boolean isAlike(Branch before, Branch now) {
        return before.id().equals(now.id())
                && before.from().equals(now.from())
                && before.to().equals(now.to())
                && before.law() instanceof Law.Open == now.law() instanceof Law.Open
                && before.law() instanceof Law.VoltageSource == now.law() instanceof Law.VoltageSource;
    }

    private static boolean isSame(SortedSet<PointId> one, SortedSet<PointId> other) {
        if (one == other) {
            return true;
        }
        if (one.size() != other.size()) {
            return false;
        }
        Iterator<PointId> others = other.iterator();
        for (PointId point : one) {
            if (!point.equals(others.next())) {
                return false;
            }
        }
        return true;
    }

    /**
     * The islands of a network that splits like another.
     *
     * @param branches its branches, in order
     * @param islands  the islands of the other
     * @param islandOf number of the island of each branch that conducts
     */
    static List<IslandPart> withLawsOf(
            List<Branch> branches, List<IslandPart> islands, Map<BranchId, Integer> islandOf) {
        List<List<Branch>> own = new ArrayList<>();
        islands.forEach(island -> own.add(new ArrayList<>()));
        for (Branch branch : branches) {
            Integer island = islandOf.get(branch.id());
            if (island != null) {
                own.get(island).add(branch);
            }
        }
        List<IslandPart> changed = new ArrayList<>();
        for (int number = 0; number < islands.size(); number++) {
            IslandPart before = islands.get(number);
            changed.add(new IslandPart(
                    before.id(),
                    before.points(),
                    own.get(number),
                    before.datum(),
                    before.isMain(),
                    source(own.get(number))));
        }
        return changed;
    }

    private static Optional<Branch> source(List<Branch> branches) {
        return branches.stream()
                .filter(branch -> branch.law() instanceof Law.VoltageSource)
                .findFirst();
    }

    private static IslandPart island(
            List<PointId> points, List<Branch> branches, Optional<PointId> networkDatum, boolean main) {
        Optional<Branch> source = source(branches);
        Optional<PointId> datum = source.map(Branch::from);
        if (main && source.isPresent()) {
            datum = networkDatum.or(() -> source.map(Branch::from));
        }
        return new IslandPart(points.get(0).value(), points, branches, datum, main, source);
    }
}
