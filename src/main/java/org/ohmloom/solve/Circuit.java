package org.ohmloom.solve;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BooleanSupplier;
import org.ohmloom.graph.Branch;
import org.ohmloom.graph.BranchId;
import org.ohmloom.graph.PointId;

/** One island with numbered points and branches, ready to be solved again and again. */
final class Circuit {

    private final PointId datum;
    private final List<PointId> points;
    private final List<Branch> branches;
    private final Map<PointId, Integer> numberOfPoint;
    private final Map<BranchId, Integer> numberOfBranch;
    private final StarMesh mesh;

    /**
     * Numbers the points and plans their elimination.
     *
     * @param datum     the point voltages are relative to
     * @param points    all points of the island
     * @param branches  all branches of the island that can conduct
     * @param cancelled asks to stop
     */
    Circuit(PointId datum, List<PointId> points, List<Branch> branches, BooleanSupplier cancelled) {
        this.datum = datum;
        this.points = points.stream().filter(point -> !point.equals(datum)).toList();
        this.branches = List.copyOf(branches);
        numberOfPoint = new HashMap<>();
        numberOfBranch = new HashMap<>();
        numberOfPoint.put(datum, -1);
        for (PointId point : this.points) {
            numberOfPoint.put(point, numberOfPoint.size() - 1);
        }
        int[] from = new int[branches.size()];
        int[] to = new int[branches.size()];
        for (int number = 0; number < from.length; number++) {
            Branch branch = branches.get(number);
            numberOfBranch.put(branch.id(), number);
            from[number] = numberOfPoint.get(branch.from());
            to[number] = numberOfPoint.get(branch.to());
        }
        mesh = new StarMesh(EliminationOrder.of(this.points.size(), from, to, cancelled), from, to);
    }

    private Circuit(Circuit like, List<Branch> branches) {
        datum = like.datum;
        points = like.points;
        this.branches = List.copyOf(branches);
        numberOfPoint = like.numberOfPoint;
        numberOfBranch = like.numberOfBranch;
        mesh = like.mesh;
    }

    /** The same points and branches with other laws. Shares the elimination: only one of them may be solved at a time. */
    Circuit withLawsOf(List<Branch> others) {
        return new Circuit(this, others);
    }

    /** The point voltages are relative to. */
    PointId datum() {
        return datum;
    }

    /** Points but the datum, by number. */
    List<PointId> points() {
        return points;
    }

    /** Branches by number. */
    List<Branch> branches() {
        return branches;
    }

    /** Number of a point; -1 is the datum. */
    int number(PointId point) {
        return numberOfPoint.get(point);
    }

    /** Whether it is a point of the island. */
    boolean holds(PointId point) {
        return numberOfPoint.containsKey(point);
    }

    /** Number of a branch. */
    int number(BranchId branch) {
        return numberOfBranch.get(branch);
    }

    /** The elimination of its points. */
    StarMesh mesh() {
        return mesh;
    }

    /** V(from) - V(to) of a branch. */
    Precise along(int branch, PreciseRow volts) {
        return volts.get(mesh.from()[branch]).minus(volts.get(mesh.to()[branch]));
    }

    /** V(from) - V(to) of all branches. */
    PreciseRow along(PreciseRow volts) {
        PreciseRow along = new PreciseRow(branches.size());
        for (int branch = 0; branch < along.length(); branch++) {
            along.setDifference(branch, volts, mesh.from()[branch], mesh.to()[branch]);
        }
        return along;
    }

    /** V(from) - V(to) of a branch. */
    double along(int branch, double[] volts) {
        int from = mesh.from()[branch];
        int to = mesh.to()[branch];
        return (from < 0 ? 0 : volts[from]) - (to < 0 ? 0 : volts[to]);
    }

    /** All points at the voltage of the datum. */
    PreciseRow flat() {
        return new PreciseRow(points.size());
    }

    /** The voltages of its points out of a map; 0 for those that are not in it. */
    PreciseRow volts(Map<PointId, Precise> byPoint) {
        PreciseRow volts = flat();
        for (int point = 0; point < points.size(); point++) {
            volts.set(point, byPoint.getOrDefault(points.get(point), Precise.ZERO));
        }
        return volts;
    }
}
