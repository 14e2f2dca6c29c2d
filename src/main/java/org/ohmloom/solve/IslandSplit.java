package org.ohmloom.solve;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.ohmloom.graph.Branch;
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

    private static IslandPart island(
            List<PointId> points, List<Branch> branches, Optional<PointId> networkDatum, boolean main) {
        Optional<Branch> source = branches.stream()
                .filter(branch -> branch.law() instanceof Law.VoltageSource)
                .findFirst();
        Optional<PointId> datum = source.map(Branch::from);
        if (main && source.isPresent()) {
            datum = networkDatum.or(() -> source.map(Branch::from));
        }
        return new IslandPart(points.get(0).value(), points, branches, datum, main, source);
    }
}
