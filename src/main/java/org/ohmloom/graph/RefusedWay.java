package org.ohmloom.graph;

import java.util.List;
import java.util.Optional;
import org.ohmloom.model.RoutingRule;
import org.ohmloom.model.WireId;

/**
 * A wire that has no way that is permitted.
 *
 * @param wire  the wire, both ends of which have a place
 * @param rules the routing rules that ask something of it; none where no segments join its ends
 * @param taken the shortest way without those rules, which its length is reckoned with; empty where there is none
 */
public record RefusedWay(WireId wire, List<RoutingRule> rules, Optional<Route> taken) {

    public RefusedWay {
        rules = List.copyOf(rules);
    }
}
