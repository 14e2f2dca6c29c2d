package org.ohmloom.draw;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ohmloom.model.BreakoutId;
import org.ohmloom.model.BundleSegment;
import org.ohmloom.model.Connector;
import org.ohmloom.model.Harness;

/** All ties of a harness in a fixed order, and which of them meet where. */
final class Ties {

    private final List<Tie> all = new ArrayList<>();

    Ties(Harness harness) {
        for (BundleSegment segment : harness.segments().all()) {
            all.add(Tie.of(segment));
        }
        for (Connector connector : harness.connectors().all()) {
            connector
                    .mate()
                    .flatMap(mate -> harness.connectors().find(mate))
                    .filter(mate -> connector.id().compareTo(mate.id()) < 0)
                    .flatMap(mate -> between(connector, mate))
                    .ifPresent(all::add);
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
        return all.stream().filter(tie -> tie.touches(breakout)).toList();
    }

    /** Whether a connector is drawn as one half of a pair between two breakouts. */
    boolean pairs(Connector connector) {
        return all.stream().anyMatch(tie -> tie.pair().contains(connector));
    }
}
