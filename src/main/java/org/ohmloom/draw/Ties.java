package org.ohmloom.draw;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.ohmloom.model.BreakoutId;
import org.ohmloom.model.BundleSegment;
import org.ohmloom.model.Connector;
import org.ohmloom.model.ConnectorId;
import org.ohmloom.model.Harness;

/** All ties of a harness in a fixed order, and which of them meet where. */
final class Ties {

    private final List<Tie> all = new ArrayList<>();
    private final Map<BreakoutId, List<Tie>> byBreakout = new HashMap<>();
    private final Set<ConnectorId> paired = new HashSet<>();

    Ties(Harness harness) {
        for (BundleSegment segment : harness.segments().all()) {
            all.add(Tie.of(segment));
        }
        for (Connector connector : harness.connectors().all()) {
            harness.mate(connector)
                    .filter(mate -> connector.id().compareTo(mate.id()) < 0)
                    .flatMap(mate -> between(connector, mate))
                    .ifPresent(all::add);
        }
        for (Tie tie : all) {
            byBreakout.computeIfAbsent(tie.from(), id -> new ArrayList<>()).add(tie);
            byBreakout.computeIfAbsent(tie.to(), id -> new ArrayList<>()).add(tie);
            tie.pair().forEach(each -> paired.add(each.id()));
        }
    }

    private static Optional<Tie> between(Connector one, Connector other) {
        return one.at()
                .flatMap(from -> other.at().filter(to -> !to.equals(from)).map(to -> Tie.of(one, from, other, to)));
    }

    List<Tie> all() {
        return all;
    }

    List<Tie> at(BreakoutId breakout) {
        return byBreakout.getOrDefault(breakout, List.of());
    }

    /** Whether a connector is drawn as one half of a pair between two breakouts. */
    boolean pairs(Connector connector) {
        return paired.contains(connector.id());
    }
}
