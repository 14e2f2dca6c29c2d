package org.ohmloom.solve.envelope;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import org.ohmloom.graph.BranchId;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.OperatingState.EngineMode;
import org.ohmloom.words.Text;

/**
 * The envelope while the sources are found in one way.
 *
 * @param named        what people call it: {@code engine running with BT1, GEN1}
 * @param mode         what the engine does
 * @param sources      sources that are on
 * @param combinations combinations that were solved in full
 * @param branches     worst currents of every branch that carries something
 * @param loads        worst drop of every load
 * @param steps        how it was computed, in sentences
 */
public record SituationEnvelope(
        Text named,
        EngineMode mode,
        SortedSet<ComponentId> sources,
        List<Combination> combinations,
        SortedMap<BranchId, BranchEnvelope> branches,
        SortedMap<ComponentId, LoadEnvelope> loads,
        List<Text> steps) {
    public SituationEnvelope {
        sources = Collections.unmodifiableSortedSet(new TreeSet<>(sources));
        combinations = List.copyOf(combinations);
        branches = Collections.unmodifiableSortedMap(new TreeMap<>(branches));
        loads = Collections.unmodifiableSortedMap(new TreeMap<>(loads));
        steps = List.copyOf(steps);
    }

    /** What people call it, in English. */
    public String name() {
        return named.english();
    }

    /** The combination of that identity. */
    public Optional<Combination> combination(String id) {
        return combinations.stream().filter(each -> each.id().equals(id)).findFirst();
    }
}
