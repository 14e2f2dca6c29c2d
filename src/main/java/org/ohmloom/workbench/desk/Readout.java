package org.ohmloom.workbench.desk;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.analysis.DutyStep;
import org.ohmloom.graph.BranchId;
import org.ohmloom.graph.PointId;
import org.ohmloom.heat.WireRating;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.StateId;
import org.ohmloom.model.WireId;
import org.ohmloom.review.StudyPart;
import org.ohmloom.size.ConductorChoice;
import org.ohmloom.size.DeviceChoice;
import org.ohmloom.solve.BranchFlow;
import org.ohmloom.solve.LoadVolts;
import org.ohmloom.solve.Solution;
import org.ohmloom.units.ShownUnits;

/**
 * Numbers as the views ask for them: in one operating state, or the worst of all.
 *
 * @param harness  the harness as it is
 * @param results  the latest results, maybe of an earlier harness
 * @param state    the state asked for; empty for the worst of all
 * @param dutySteps loads over the range of their duties; empty until somebody asked for them and they are there
 * @param units    the units in which numbers are written
 */
public record Readout(
        Harness harness,
        Results results,
        Optional<StateId> state,
        Optional<List<DutyStep>> dutySteps,
        ShownUnits units) {

    /** With loads over the range of their duties. */
    public Readout(
            Harness harness, Optional<Analysis> analysis, Optional<StateId> state, Optional<List<DutyStep>> dutySteps) {
        this(harness, Results.of(analysis), state, dutySteps, ShownUnits.USUAL);
    }

    /** Without loads over the range of their duties. */
    public Readout(Harness harness, Optional<Analysis> analysis, Optional<StateId> state) {
        this(harness, analysis, state, Optional.empty());
    }

    /** What a desk shows now; empty without a document. */
    public static Optional<Readout> of(Desk desk) {
        return desk.harness()
                .map(harness ->
                        new Readout(harness, desk.results(), desk.view().state(), Optional.empty(), desk.units()));
    }

    /** The latest results. */
    public Optional<Analysis> analysis() {
        return results.latest();
    }

    /** The same by the latest results that have some studies, maybe of an earlier harness. */
    public Readout having(Set<StudyPart> parts) {
        return new Readout(harness, results.having(parts), state, dutySteps).in(units);
    }

    /** The same written in other units. */
    public Readout in(ShownUnits changed) {
        return new Readout(harness, results, state, dutySteps, changed);
    }

    private static final double DRAWS_AMPS = 1e-9;
    private static final Set<StudyPart> SIZES = Set.of(StudyPart.SIZES);

    /** Whether the results are those of the harness, and no size is still being chosen. */
    public boolean isCurrent() {
        return analysis()
                .filter(latest -> latest.harness() == harness)
                .filter(latest -> latest.evidence().isSized())
                .isPresent();
    }

    /** The solutions that count: of the state asked for, or all of them. */
    Stream<Solution> solutions() {
        return analysis().stream()
                .flatMap(results -> results.evidence().solutions().entrySet().stream())
                .filter(entry -> state.isEmpty() || state.get().equals(entry.getKey()))
                .map(Map.Entry::getValue);
    }

    public Optional<WireRating> rating(WireId wire) {
        return analysis().map(results -> results.ratings().get(wire));
    }

    /** The conductor a wire needs. */
    public Optional<ConductorChoice> choice(WireId wire) {
        return having(SIZES).analysis().map(known -> known.conductors().get(wire));
    }

    /** The rating a protective device needs. */
    public Optional<DeviceChoice> device(ComponentId component) {
        return having(SIZES).analysis().map(known -> known.devices().get(component));
    }

    /** The flow of a branch where its heating current is largest. */
    public Optional<BranchFlow> flow(BranchId branch) {
        return solutions()
                .flatMap(solution -> solution.flow(branch).stream())
                .max(Comparator.comparingDouble(BranchFlow::rmsAmps));
    }

    /** A load where it draws and loses most volts, with the state that is in; where it never draws, any state. */
    public Optional<Fed> load(ComponentId load) {
        return solutions()
                .flatMap(solution -> Optional.ofNullable(solution.loads().get(load)).stream()
                        .map(volts -> new Fed(solution.network().state(), volts)))
                .max(Comparator.comparing((Fed fed) -> Math.abs(fed.volts().amps()) > DRAWS_AMPS)
                        .thenComparingDouble(fed -> fed.volts().onDropVolts()));
    }

    /** The voltage of a point farthest from the datum, V. */
    public Optional<Double> volts(PointId point) {
        return solutions()
                .flatMap(solution -> solution.volts(point).stream().boxed())
                .max(Comparator.comparingDouble(Math::abs));
    }

    /** Name of a state. */
    public String stateName(StateId id) {
        return harness.states().find(id).map(found -> found.name()).orElse(id.value());
    }

    /**
     * A load in a state.
     *
     * @param state the state
     * @param volts what reaches it
     */
    public record Fed(StateId state, LoadVolts volts) {}
}
