package org.ohmloom.graph;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import org.ohmloom.graph.Anchors.Anchor;
import org.ohmloom.model.BreakoutId;
import org.ohmloom.model.BundleSegment;
import org.ohmloom.model.Harness;
import org.ohmloom.model.RoutingRule;
import org.ohmloom.model.SegmentId;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireId;

/**
 * Lays wires by the routing rules: the shortest way that all rules on a wire permit. Wires that are to keep apart from others are
 * laid after all the rest, in the order of their identities, each apart from what lies there by then; so the outcome depends on
 * the harness only. A wire without a permitted way is said to be refused and lies where it would without its rules.
 */
final class RuledRouter {
    private final Harness harness;
    private final Anchors anchors;
    private final PermittedWays ways;
    private final Routes free;
    private final SortedMap<WireId, Route> routes = new TreeMap<>();
    private final SortedMap<WireId, RefusedWay> refused = new TreeMap<>();

    private RuledRouter(Harness harness, Routes free) {
        this.harness = harness;
        this.anchors = new Anchors(harness);
        this.ways = new PermittedWays(harness);
        this.free = free;
    }

    /** The ways of a harness by its rules; {@code free} are the shortest ones without. */
    static Routes routes(Harness harness, Routes free) {
        return new RuledRouter(harness, free).routes();
    }

    private Routes routes() {
        List<Wire> apart = new ArrayList<>();
        for (Wire wire : harness.wires().all()) {
            List<RoutingRule> rules = rules(wire);
            if (rules.isEmpty()) {
                free.of(wire.id()).ifPresent(route -> routes.put(wire.id(), route));
                notJoined(wire);
            } else if (rules.stream().anyMatch(RoutingRule.Apart.class::isInstance)) {
                apart.add(wire);
            } else {
                lay(wire, rules);
            }
        }
        apart.forEach(wire -> lay(wire, rules(wire)));
        return new Routes(routes, new TreeMap<>(), refused);
    }

    private List<RoutingRule> rules(Wire wire) {
        return harness.rules().fabricationRules().routing().stream()
                .filter(rule -> rule.asks(wire))
                .toList();
    }

    private void notJoined(Wire wire) {
        if (free.of(wire.id()).isEmpty()
                && !anchors.of(wire.from()).isEmpty()
                && !anchors.of(wire.to()).isEmpty()) {
            refused.put(wire.id(), new RefusedWay(wire.id(), List.of(), Optional.empty()));
        }
    }

    private void lay(Wire wire, List<RoutingRule> rules) {
        List<Anchor> from = anchors.of(wire.from());
        List<Anchor> to = anchors.of(wire.to());
        Optional<Route> shortest = free.of(wire.id());
        if (shortest.isEmpty()) {
            notJoined(wire);
            return;
        }
        Set<SegmentId> blocked = new TreeSet<>();
        Set<BreakoutId> through = new LinkedHashSet<>();
        for (RoutingRule rule : rules) {
            if (rule instanceof RoutingRule.AvoidZone avoid) {
                for (BundleSegment segment : harness.segments().all()) {
                    if (segment.zone().filter(avoid.avoidZone()::equals).isPresent()) {
                        blocked.add(segment.id());
                    }
                }
            } else if (rule instanceof RoutingRule.Through pass) {
                through.add(pass.through());
            } else if (rule instanceof RoutingRule.Apart apart) {
                for (Map.Entry<WireId, Route> laid : routes.entrySet()) {
                    Wire other = harness.wires().get(laid.getKey());
                    if (apart.apartFrom().contains(other.signalClass())) {
                        blocked.addAll(laid.getValue().segments());
                    }
                }
            }
        }
        Optional<Route> found = ways.shortest(from, to, blocked, through);
        if (found.isEmpty()) {
            refused.put(wire.id(), new RefusedWay(wire.id(), rules, shortest));
        }
        routes.put(wire.id(), found.or(() -> shortest).orElseThrow());
    }
}
