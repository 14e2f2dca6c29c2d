package org.ohmloom.graph;

import java.util.BitSet;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import org.ohmloom.model.ComponentId;

/** How protective devices stand between one source and every region it feeds. */
final class RegionGuards {
    private final Map<Integer, Guard> byRegion = new HashMap<>();

    RegionGuards(FeedRegions regions, FeedSource source, int start) {
        BitSet reached = regions.reach(start, gate -> true, region -> true);
        BitSet bare = regions.reach(start, gate -> !FeedRules.isProtective(regions.gate(gate)), region -> true);
        Map<Integer, SortedSet<ComponentId>> inSeries = new HashMap<>();
        reached.stream().forEach(region -> inSeries.put(region, new TreeSet<>()));
        for (int gate = 0; gate < regions.gateCount(); gate++) {
            Branch device = regions.gate(gate);
            if (FeedRules.isProtective(device)) {
                int removed = gate;
                BitSet parted = (BitSet) reached.clone();
                parted.andNot(regions.reach(start, each -> each != removed, region -> true));
                FeedRules.component(device).ifPresent(id -> parted.stream()
                        .forEach(region -> inSeries.get(region).add(id)));
            }
        }
        reached.stream()
                .forEach(region -> byRegion.put(
                        region,
                        new Guard(
                                source,
                                bare.get(region),
                                inSeries.get(region),
                                bare.get(region) ? new TreeSet<>() : nearest(regions, start, region))));
    }

    /** The devices that lead from what the source reaches without the place into what reaches the place bare. */
    private static SortedSet<ComponentId> nearest(FeedRegions regions, int start, int region) {
        BitSet around = regions.reachedBareFrom(region);
        BitSet before = regions.reach(start, gate -> true, each -> !around.get(each));
        SortedSet<ComponentId> devices = new TreeSet<>();
        regions.protectiveBetween(before, around)
                .forEach(device -> FeedRules.component(device).ifPresent(devices::add));
        return devices;
    }

    /** The guard of a region; empty when the source does not feed it. */
    Optional<Guard> at(int region) {
        return Optional.ofNullable(byRegion.get(region));
    }
}
