package org.ohmloom.signal.wiring;

import java.util.List;
import org.ohmloom.model.DataBus;
import org.ohmloom.model.Harness;
import org.ohmloom.signal.way.Ways;

/** Which nodes of a data bus lie furthest apart: there its trunk ends, and there its terminations belong. */
public final class TrunkEnds {

    private TrunkEnds() {}

    /**
     * The two nodes furthest apart along the bundle segments; the first and the last where no way joins any of them. Fewer where there
     * are fewer.
     *
     * @param harness the harness
     * @param nodes   nodes of a bus, in their order
     */
    public static List<DataBus.Node> of(Harness harness, List<DataBus.Node> nodes) {
        if (nodes.size() < 2) {
            return List.copyOf(nodes);
        }
        Places places = new Places(harness);
        Ways ways = new Ways(harness, connector -> true);
        BusTrunk trunk = BusTrunk.of(
                nodes.stream()
                        .map(node -> places.at(places.end(node.unit(), node.high())))
                        .toList(),
                ways,
                0);
        return List.of(nodes.get(trunk.first()), nodes.get(trunk.last()));
    }
}
