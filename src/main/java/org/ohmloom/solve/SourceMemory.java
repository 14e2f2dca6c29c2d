package org.ohmloom.solve;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.ohmloom.graph.BranchId;

/**
 * What a search for the electromotive forces of slow sources found, for the next search in much the same network: with it the
 * next takes one to three solutions. Belongs to one state and one thread; a search without one begins anew.
 */
public final class SourceMemory {

    private final Map<BranchId, Double> emfVolts = new TreeMap<>();
    private final RestMemory rest;
    private List<BranchId> order = new ArrayList<>();
    private Optional<StraightModel> model = Optional.empty();

    /** Remembers nothing yet. */
    public SourceMemory() {
        this(new RestMemory());
    }

    private SourceMemory(RestMemory rest) {
        this.rest = rest;
    }

    /**
     * For another search from the beginning, in the network after an edit: it takes the steps of one that remembers nothing, each
     * from voltages near those it will find. This one is of no use after that.
     */
    public SourceMemory begunAnew() {
        return new SourceMemory(rest.forSearches());
    }

    /** Where the last solution came to rest. */
    RestMemory rest() {
        return rest;
    }

    /** The electromotive force a source had, V, or the one given where it is not known. */
    double emfVolts(BranchId source, double otherwiseVolts) {
        return emfVolts.getOrDefault(source, otherwiseVolts);
    }

    /** What was learnt of these sources in this order; empty when it was of others. */
    Optional<StraightModel> model(List<BranchId> sources) {
        return sources.equals(order) ? model : Optional.empty();
    }

    void keep(List<BranchId> sources, double[] found, Optional<StraightModel> learnt) {
        order = List.copyOf(sources);
        model = learnt;
        for (int k = 0; k < found.length; k++) {
            emfVolts.put(sources.get(k), found[k]);
        }
    }
}
