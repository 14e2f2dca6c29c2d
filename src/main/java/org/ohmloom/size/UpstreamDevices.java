package org.ohmloom.size;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import org.ohmloom.graph.Guard;
import org.ohmloom.graph.Upstream;
import org.ohmloom.model.Battery;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.ElectronicLimit;
import org.ohmloom.model.Harness;
import org.ohmloom.model.ProtectiveDevice;
import org.ohmloom.model.WireId;
import org.ohmloom.size.protection.FeedingDevices;
import org.ohmloom.size.protection.LimitedOutputs;
import org.ohmloom.tables.WireTables;

/** Tells which protective devices a wire relies on. */
@FunctionalInterface
public interface UpstreamDevices {

    /** Knows of no protective device anywhere. */
    UpstreamDevices NONE = wire -> List.of();

    /**
     * The protective devices whose ratings, each by itself, must suit the conductor of a wire; empty for a wire without
     * any and for a return. Where feeds behind several devices are joined, all of them are named.
     */
    List<ComponentId> of(WireId wire);

    /**
     * The same devices in groups: several in one group feed the wire side by side from one source, so that their currents
     * add.
     */
    default List<List<ComponentId>> groups(WireId wire) {
        return of(wire).stream().map(List::of).toList();
    }

    /**
     * What feeds a wire by each of its ends: those devices, and sources that limit themselves and can add to what they let
     * through. Empty for a wire that relies on none.
     */
    default List<FeedingDevices> feeding(WireTables tables, WireId wire) {
        return groups(wire).stream()
                .map(group -> new FeedingDevices(new TreeSet<>(group), 0))
                .toList();
    }

    /**
     * The current that heats a wire in a lasting fault, A, where an output before it limits to less than its devices' rating;
     * empty for any other wire. Such a wire relies on the output and on no device.
     */
    default OptionalDouble limitedAmps(WireId wire) {
        return OptionalDouble.empty();
    }

    /**
     * Taken from the feeds of a harness, for each source that can feed the wire: the device of the smallest rating among
     * those that stand on every way from it, or the last devices of all ways when none of those is larger. A wire that a
     * battery reaches past all devices relies on none; another source limits its own current, so it may.
     */
    static UpstreamDevices of(Harness harness, Upstream upstream) {
        Map<WireId, ElectronicLimit> limits = LimitedOutputs.wires(harness, upstream);
        return new UpstreamDevices() {
            @Override
            public OptionalDouble limitedAmps(WireId wire) {
                ElectronicLimit limit = limits.get(wire);
                boolean first = limit != null
                        && allGroups(wire).stream()
                                .flatMap(List::stream)
                                .allMatch(id -> ratingAmps(harness, id) > limit.limitAmps());
                return first ? OptionalDouble.of(LimitedOutputs.heatingAmps(limit)) : OptionalDouble.empty();
            }

            @Override
            public List<ComponentId> of(WireId wire) {
                SortedSet<ComponentId> devices = new TreeSet<>();
                groups(wire).forEach(devices::addAll);
                return List.copyOf(devices);
            }

            @Override
            public List<List<ComponentId>> groups(WireId wire) {
                return limitedAmps(wire).isPresent() ? List.of() : allGroups(wire);
            }

            @Override
            public List<FeedingDevices> feeding(WireTables tables, WireId wire) {
                List<FeedingDevices> ends = groups(wire).isEmpty()
                        ? List.of()
                        : upstream.network()
                                .branch(wire)
                                .map(branch -> FeedingDevices.of(harness, tables, upstream, branch))
                                .orElse(List.of());
                return ends.isEmpty() ? UpstreamDevices.super.feeding(tables, wire) : ends;
            }

            private List<List<ComponentId>> allGroups(WireId wire) {
                Set<List<ComponentId>> groups = new LinkedHashSet<>();
                for (Guard guard : upstream.guards(wire)) {
                    if (guard.bare() && isBattery(harness, guard.source().component())) {
                        return List.of();
                    }
                    groups.add(effective(harness, guard));
                }
                groups.removeIf(List::isEmpty);
                return List.copyOf(groups);
            }
        };
    }

    private static boolean isBattery(Harness harness, ComponentId source) {
        return harness.components().get(source).device() instanceof Battery;
    }

    private static List<ComponentId> effective(Harness harness, Guard guard) {
        Comparator<ComponentId> byRating = Comparator.comparingDouble(id -> ratingAmps(harness, id));
        Optional<ComponentId> inSeries = guard.inSeries().stream().min(byRating);
        Optional<ComponentId> largestLast = guard.nearest().stream().max(byRating);
        return inSeries.filter(id -> largestLast.isEmpty() || byRating.compare(id, largestLast.get()) <= 0)
                .map(List::of)
                .orElseGet(() -> new ArrayList<>(guard.nearest()));
    }

    private static double ratingAmps(Harness harness, ComponentId id) {
        return harness.components()
                .find(id)
                .filter(component -> component.device() instanceof ProtectiveDevice)
                .map(component -> ((ProtectiveDevice) component.device()).ratingAmps())
                .orElse(Double.POSITIVE_INFINITY);
    }
}
