package org.ohmloom.analysis;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import org.ohmloom.heat.ContinuousStates;
import org.ohmloom.model.Element;
import org.ohmloom.model.ElementId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.StateId;
import org.ohmloom.model.WireId;
import org.ohmloom.size.ProvisionalSizes;
import org.ohmloom.solve.Solution;
import org.ohmloom.solve.SourceMemory;

/**
 * An analysed harness solved again and again as it may be built: the sizes it was analysed with, other values in other air,
 * conductors at the temperature that brings. Every solution begins at the temperatures of the analysis.
 */
public final class VariedStates {

    private final Bench bench;
    private final ProvisionalSizes sizes;
    private final SortedMap<StateId, SortedMap<WireId, Double>> nominalCelsius = new TreeMap<>();

    /**
     * What came of one.
     *
     * @param solutions solution of each state
     * @param celsius   conductor temperature of each wire in each state, deg C
     */
    public record Varied(
            SortedMap<StateId, Solution> solutions, SortedMap<StateId, SortedMap<WireId, Double>> celsius) {}

    /**
     * Sets out.
     *
     * @param analysis the analysed harness
     * @param wanted   the states that matter; with a short one among them the lasting ones before it are solved too
     * @param cancel   asks to stop
     */
    public VariedStates(Analysis analysis, Set<StateId> wanted, Cancel cancel) {
        Harness drawn = analysis.harness();
        SortedSet<StateId> lasting = ContinuousStates.of(drawn);
        List<ElementId> gone = new ArrayList<>(drawn.sequences().ids());
        boolean all = !lasting.containsAll(wanted);
        drawn.states().ids().stream()
                .filter(state -> !wanted.contains(state) && !(all && lasting.contains(state)))
                .forEach(gone::add);
        List<Element> sized = new ArrayList<>();
        analysis.ratings().values().stream()
                .filter(rating -> rating.provisional())
                .forEach(rating -> sized.add(rating.wire().withGauge(Optional.of(rating.gauge()))));
        bench = Bench.of(
                drawn.withoutAll(gone).withAll(sized), analysis.evidence().tables(), cancel);
        sizes = ProvisionalSizes.minimum(bench.harness(), bench.tables(), bench.basis());
        bench.harness()
                .states()
                .ids()
                .forEach(state -> nominalCelsius.put(
                        state, analysis.evidence().wireCelsius().get(state)));
    }

    /** What solutions that follow each other on one thread leave behind for the next. */
    public SortedMap<StateId, SourceMemory> memories() {
        SortedMap<StateId, SourceMemory> memories = new TreeMap<>();
        bench.harness().states().ids().forEach(state -> memories.put(state, new SourceMemory()));
        return memories;
    }

    /**
     * Solves all states.
     *
     * @param variation how it is built
     * @param memories  what was left of the solution before; takes down what is left of this one
     * @throws java.util.concurrent.CancellationException when asked to stop
     */
    public Varied solve(Variation variation, SortedMap<StateId, SourceMemory> memories) {
        bench.cancel().check();
        HeatedStates states = HeatedStates.solve(bench.varied(variation), sizes, nominalCelsius, memories);
        return new Varied(states.solutions(), states.wireCelsius());
    }
}
