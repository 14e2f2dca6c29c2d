package org.ohmloom.size.protection;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import org.ohmloom.graph.Branch;
import org.ohmloom.graph.FeedSource;
import org.ohmloom.graph.Guard;
import org.ohmloom.graph.PointId;
import org.ohmloom.graph.Upstream;
import org.ohmloom.model.Alternator;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.Converter;
import org.ohmloom.model.Device;
import org.ohmloom.model.Harness;
import org.ohmloom.model.RegulatedSupply;
import org.ohmloom.tables.WireTables;

/**
 * What feeds a wire by one of its ends: devices of batteries, whose currents add, and sources that limit themselves.
 *
 * @param devices   devices between batteries and the wire
 * @param extraAmps what other sources can add past those devices, A
 */
public record FeedingDevices(SortedSet<ComponentId> devices, double extraAmps) {

    public FeedingDevices {
        devices = Collections.unmodifiableSortedSet(new TreeSet<>(devices));
    }

    /** By each end of a feed wire that current comes in by; empty when nothing feeds it. */
    public static List<FeedingDevices> of(Harness harness, WireTables tables, Upstream upstream, Branch branch) {
        return of(harness, tables, upstream, new Relying(harness, upstream), branch);
    }

    static List<FeedingDevices> of(
            Harness harness, WireTables tables, Upstream upstream, Relying relying, Branch branch) {
        Map<PointId, SortedSet<ComponentId>> devices = new LinkedHashMap<>();
        Map<PointId, Double> extra = new LinkedHashMap<>();
        List<Guard> guards = upstream.guards(branch.from());
        for (Guard guard : guards) {
            if (relying.isBattery(guard.source())) {
                relying.entry(guard.source(), branch)
                        .ifPresent(end -> devices.computeIfAbsent(end, point -> new TreeSet<>())
                                .addAll(relying.effective(guard)));
            }
        }
        for (Guard guard : guards) {
            Optional<PointId> end =
                    relying.isBattery(guard.source()) ? Optional.empty() : relying.entry(guard.source(), branch);
            if (end.isPresent()) {
                SortedSet<ComponentId> own = devices.computeIfAbsent(end.get(), point -> new TreeSet<>());
                if (guard.inSeries().stream().noneMatch(own::contains)
                        && guard.nearest().stream().noneMatch(own::contains)) {
                    extra.merge(end.get(), addedAmps(harness, tables, relying, guard), Double::sum);
                }
            }
        }
        List<FeedingDevices> found = new ArrayList<>();
        devices.forEach((end, ids) -> found.add(new FeedingDevices(ids, extra.getOrDefault(end, 0.0))));
        return found;
    }

    /** What a source that limits itself can add for ever: its limit, or what its device carries for ever if that is less. */
    private static double addedAmps(Harness harness, WireTables tables, Relying relying, Guard guard) {
        double limit = limitAmps(harness, guard.source());
        double carried = relying.effective(guard).stream()
                .flatMap(id -> relying.device(id).stream())
                .flatMap(device -> TimeCurrentBand.of(tables, device).stream())
                .mapToDouble(TimeCurrentBand::foreverAmps)
                .sum();
        return carried > 0 ? Math.min(limit, carried) : limit;
    }

    private static double limitAmps(Harness harness, FeedSource source) {
        Device device = harness.components().get(source.component()).device();
        if (device instanceof Alternator alternator) {
            return alternator.limitAmps();
        }
        if (device instanceof RegulatedSupply supply) {
            return supply.limitAmps();
        }
        return device instanceof Converter converter ? converter.limitAmps() : 0;
    }
}
