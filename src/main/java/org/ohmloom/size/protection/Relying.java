package org.ohmloom.size.protection;

import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import org.ohmloom.graph.Branch;
import org.ohmloom.graph.BranchId;
import org.ohmloom.graph.FeedSource;
import org.ohmloom.graph.Guard;
import org.ohmloom.graph.PointId;
import org.ohmloom.graph.Upstream;
import org.ohmloom.model.Battery;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.ProtectiveDevice;

/**
 * The protective devices a point relies on: for each source the one of the smallest rating on every way from it, or the last
 * devices of all ways where none of those is larger. A point a battery reaches past all devices relies on none.
 */
final class Relying {
    private final Harness harness;
    private final Upstream upstream;
    private final Map<PointId, SortedSet<ComponentId>> known = new HashMap<>();

    Relying(Harness harness, Upstream upstream) {
        this.harness = harness;
        this.upstream = upstream;
    }

    SortedSet<ComponentId> on(PointId point) {
        return known.computeIfAbsent(point, this::find);
    }

    private SortedSet<ComponentId> find(PointId point) {
        SortedSet<ComponentId> devices = new TreeSet<>();
        for (Guard guard : upstream.guards(point)) {
            if (guard.bare() && isBattery(guard.source())) {
                return Collections.emptySortedSet();
            }
            devices.addAll(effective(guard));
        }
        return Collections.unmodifiableSortedSet(devices);
    }

    /** The devices of one source that a place relies on. */
    SortedSet<ComponentId> effective(Guard guard) {
        Comparator<ComponentId> byRating = Comparator.comparingDouble(this::ratingAmps);
        Optional<ComponentId> inSeries = guard.inSeries().stream().min(byRating);
        Optional<ComponentId> largest = guard.nearest().stream().max(byRating);
        return inSeries.isPresent() && (largest.isEmpty() || byRating.compare(inSeries.get(), largest.get()) <= 0)
                ? new TreeSet<>(List.of(inSeries.get()))
                : guard.nearest();
    }

    /** The sources that can feed a point: its batteries, or all when there is no battery among them. */
    List<FeedSource> sources(PointId point) {
        List<FeedSource> all =
                upstream.guards(point).stream().map(Guard::source).toList();
        List<FeedSource> batteries = all.stream().filter(this::isBattery).toList();
        return batteries.isEmpty() ? all : batteries;
    }

    /** The end of a wire by which current from one source comes in; empty when it does not pass the wire. */
    Optional<PointId> entry(FeedSource source, Branch branch) {
        if (passes(source, branch.to(), branch.id())) {
            return Optional.of(branch.from());
        }
        return passes(source, branch.from(), branch.id()) ? Optional.of(branch.to()) : Optional.empty();
    }

    /** Whether the way from a source to a point goes over a branch. */
    boolean passes(FeedSource source, PointId point, BranchId branch) {
        return upstream.way(source, point)
                .filter(way -> way.branches().contains(branch))
                .isPresent();
    }

    /** Whether a source is a battery, which limits nothing. */
    boolean isBattery(FeedSource source) {
        return harness.components().get(source.component()).device() instanceof Battery;
    }

    private double ratingAmps(ComponentId id) {
        return device(id).map(ProtectiveDevice::ratingAmps).orElse(Double.POSITIVE_INFINITY);
    }

    /** The protective device of that identity. */
    Optional<ProtectiveDevice> device(ComponentId id) {
        return harness.components()
                .find(id)
                .map(component -> component.device())
                .filter(ProtectiveDevice.class::isInstance)
                .map(ProtectiveDevice.class::cast);
    }
}
