package org.ohmloom.heat;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import org.ohmloom.graph.Route;
import org.ohmloom.graph.Routes;
import org.ohmloom.model.CableId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.SegmentId;
import org.ohmloom.model.SignalClass;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireId;

/**
 * Counts the loaded conductors that lie together in bundle segments and in cables.
 *
 * <p>A conductor counts as loaded when it carries more than {@link #LEAST_AMPS} in some operating state. Common practice:
 * signal and bus wires are not counted. It is on the safe side of IEC 60364-5-52, which by memory lets conductors below
 * 30 % of their grouped rating out of the count. Returns and each core of a cable count one; shields do not.
 */
public final class LoadedConductors {

    /** A conductor that carries no more than this in any state is not loaded, A. */
    public static final double LEAST_AMPS = 0.1;

    private final Routes routes;
    private final Map<SegmentId, Set<WireId>> bySegment = new HashMap<>();
    private final Map<CableId, Set<WireId>> byCable = new HashMap<>();

    private LoadedConductors(Routes routes) {
        this.routes = routes;
    }

    /**
     * Counts.
     *
     * @param harness   the harness
     * @param routes    ways of its wires
     * @param worstAmps largest RMS current of each wire in any state, A; a wire without an entry carries none
     */
    public static LoadedConductors of(Harness harness, Routes routes, Map<WireId, Double> worstAmps) {
        LoadedConductors loaded = new LoadedConductors(routes);
        for (Wire wire : harness.wires().all()) {
            if (isLoaded(wire, worstAmps.getOrDefault(wire.id(), 0.0))) {
                loaded.add(wire);
            }
        }
        return loaded;
    }

    /** Whether a wire that carries so much, A, either sign, counts as loaded. */
    public static boolean isLoaded(Wire wire, double amps) {
        return wire.signalClass() != SignalClass.SHIELD && Math.abs(amps) > LEAST_AMPS;
    }

    /** Loaded conductors in the fullest segment or cable along the wire, the wire itself always counted; 1 or more. */
    public int alongside(Wire wire) {
        int most = others(wire, wire.cable().map(byCable::get).orElse(Set.of()));
        for (SegmentId segment : routes.of(wire.id()).map(Route::segmentSet).orElse(Set.of())) {
            most = Math.max(most, others(wire, bySegment.getOrDefault(segment, Set.of())));
        }
        return most + 1;
    }

    /** Loaded conductors in a segment; 0 or more. */
    public int in(SegmentId segment) {
        return bySegment.getOrDefault(segment, Set.of()).size();
    }

    private void add(Wire wire) {
        routes.of(wire.id()).ifPresent(route -> route.segmentSet().forEach(segment -> bySegment
                .computeIfAbsent(segment, id -> new HashSet<>())
                .add(wire.id())));
        wire.cable().ifPresent(cable -> byCable.computeIfAbsent(cable, id -> new HashSet<>())
                .add(wire.id()));
    }

    private static int others(Wire wire, Set<WireId> together) {
        return together.size() - (together.contains(wire.id()) ? 1 : 0);
    }
}
