package org.ohmloom.graph;

import static org.ohmloom.units.Require.that;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.StateId;
import org.ohmloom.model.WireId;

/**
 * The electrical multigraph of the whole harness in one operating state: feeds, returns and chassis together. Parallel
 * branches are allowed; a branch from a point to itself is not.
 *
 * @param state       the operating state
 * @param points      every electrical point, also those nothing conducts to
 * @param branches    every conducting element by identity
 * @param datum       the point all voltages are relative to: the first source's negative terminal; empty without a source
 * @param index       which point each place of the harness belongs to
 * @param assumptions what was taken for granted because the harness does not say it
 * @param sensings    sources that regulate at another place than their own terminals, each at most once
 * @param owned       the branches of each component, found when first asked for
 */
public record Network(
        StateId state,
        SortedSet<PointId> points,
        SortedMap<BranchId, Branch> branches,
        Optional<PointId> datum,
        PointIndex index,
        List<Assumption> assumptions,
        List<Sensing> sensings,
        OwnedBranches owned) {

    public Network {
        points = Collections.unmodifiableSortedSet(new TreeSet<>(points));
        branches = Collections.unmodifiableSortedMap(new TreeMap<>(branches));
        assumptions = List.copyOf(assumptions);
        sensings = List.copyOf(sensings);
        owned = new OwnedBranches(branches);
    }

    /** A network with sources that regulate at another place than their own terminals. */
    public Network(
            StateId state,
            SortedSet<PointId> points,
            SortedMap<BranchId, Branch> branches,
            Optional<PointId> datum,
            PointIndex index,
            List<Assumption> assumptions,
            List<Sensing> sensings) {
        this(state, points, branches, datum, index, assumptions, sensings, OwnedBranches.NONE);
    }

    /** A network whose sources all regulate at their own terminals. */
    public Network(
            StateId state,
            SortedSet<PointId> points,
            SortedMap<BranchId, Branch> branches,
            Optional<PointId> datum,
            PointIndex index,
            List<Assumption> assumptions) {
        this(state, points, branches, datum, index, assumptions, List.of());
    }

    /** A network that was not made from a harness: it knows no places and takes nothing for granted. */
    public Network(
            StateId state, SortedSet<PointId> points, SortedMap<BranchId, Branch> branches, Optional<PointId> datum) {
        this(state, points, branches, datum, PointIndex.NONE, List.of());
    }

    /**
     * The same network with other laws for some branches.
     *
     * @param laws the new laws; branches that are not in it keep theirs
     * @throws IllegalArgumentException when a branch is not in the network
     */
    public Network withLaws(Map<BranchId, Law> laws) {
        laws.keySet().forEach(id -> that(branches.containsKey(id), "%s is no branch of the network of %s", id, state));
        return laws.isEmpty() ? this : withLaws(branch -> laws.getOrDefault(branch.id(), branch.law()));
    }

    /** The same network with each branch at the law it is given. */
    Network withLaws(Function<Branch, Law> laws) {
        SortedMap<BranchId, Branch> changed = new TreeMap<>(branches);
        changed.replaceAll((id, branch) -> branch.withLaw(laws.apply(branch)));
        return new Network(state, points, changed, datum, index, assumptions, sensings);
    }

    /** The same network with each wire of the harness it was made from at another resistance: what building it anew would make. */
    public Network withWires(Harness harness, ConductorOhms ohms) {
        return withLaws(branch -> branch.element().orElse(null) instanceof WireId wire
                        && branch.id().value().equals(wire.value())
                ? NetworkDraft.atLeast(
                        new Law.Resistance(ohms.of(harness.wires().get(wire))))
                : branch.law());
    }

    /** The same network taking other things for granted. */
    public Network withAssumptions(List<Assumption> changed) {
        return new Network(state, points, branches, datum, index, changed, sensings);
    }

    /** The same network with other sources regulating elsewhere than at their terminals. */
    public Network withSensings(List<Sensing> changed) {
        return new Network(state, points, branches, datum, index, assumptions, changed);
    }

    /** The same network with these points watched in every moment. */
    public Network watching(SortedSet<PointId> watched) {
        return new Network(state, points, branches, datum, index.watching(watched), assumptions, sensings);
    }

    /** The branches in order. */
    public List<Branch> all() {
        return List.copyOf(branches.values());
    }

    /** The branch of that identity. */
    public Optional<Branch> branch(BranchId id) {
        return Optional.ofNullable(branches.get(id));
    }

    /** The branch of a wire; empty when both its ends are one point. */
    public Optional<Branch> branch(WireId wire) {
        return branch(new BranchId(wire.value()));
    }

    /** The branches that belong to a component. */
    public List<Branch> of(ComponentId component) {
        return owned.of(component);
    }
}
