package org.ohmloom.draw.study;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.graph.BranchId;
import org.ohmloom.heat.WireRating;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.ElementId;
import org.ohmloom.model.OperatingState;
import org.ohmloom.solve.LoadVolts;
import org.ohmloom.solve.envelope.BranchEnvelope;
import org.ohmloom.solve.envelope.Combination;
import org.ohmloom.solve.envelope.LoadEnvelope;
import org.ohmloom.solve.envelope.SituationEnvelope;
import org.ohmloom.words.Text;

/**
 * The worst current of a wire or drop of a load over all allowed combinations, beside that of the named states.
 *
 * @param element   the wire or load
 * @param label     it with a word of what it is
 * @param isDrop    whether it is a drop, V; otherwise a heating current, A RMS
 * @param worst     the worst of any combination, A or V
 * @param named     the worst of the named states that last, A or V
 * @param allowed   what is allowed, A or V, if known
 * @param bound     no combination is worse than this, A or V, where a bound is claimed
 * @param proven    whether the bound proves the worst
 * @param loads     loads that run in that combination
 * @param situated  how the sources are found in it
 */
public record WorstCase(
        ElementId element,
        String label,
        boolean isDrop,
        double worst,
        double named,
        OptionalDouble allowed,
        OptionalDouble bound,
        boolean proven,
        List<ComponentId> loads,
        Text situated) {

    private static final double NOTHING_AMPS = 1e-6;

    /** The worst as a share of what is allowed; 0 where nothing is known. */
    public double useRatio() {
        return allowed.isPresent() && allowed.getAsDouble() > 0 ? worst / allowed.getAsDouble() : 0;
    }

    /** How much worse it is than in the named states, as a share of them. */
    public double moreRatio() {
        return named > 0 ? worst / named - 1 : worst > 0 ? Double.POSITIVE_INFINITY : 0;
    }

    /** Whether a combination goes beyond what is allowed. */
    public boolean isTooMuch() {
        return allowed.isPresent() && worst > allowed.getAsDouble() * (1 + 1e-9);
    }

    /** The heating currents of the wires that carry something. */
    public static List<WorstCase> currents(Analysis analysis) {
        List<WorstCase> cases = new ArrayList<>();
        for (WireRating rating : analysis.ratings().values()) {
            BranchId branch = new BranchId(rating.wire().id().value());
            analysis.evidence()
                    .envelope()
                    .hottest(branch)
                    .filter(situation -> situation.branches().get(branch).rmsAmps() > NOTHING_AMPS)
                    .ifPresent(situation -> cases.add(
                            current(rating, situation, situation.branches().get(branch))));
        }
        return cases;
    }

    private static WorstCase current(WireRating rating, SituationEnvelope situation, BranchEnvelope found) {
        return new WorstCase(
                rating.wire().id(),
                rating.wire().id().value(),
                false,
                found.rmsAmps(),
                rating.worstAmps(),
                rating.ampacity()
                        .map(limit -> OptionalDouble.of(limit.limitAmps()))
                        .orElse(OptionalDouble.empty()),
                found.rmsBoundAmps(),
                found.rmsProven(),
                loads(situation, found.rmsCombination()),
                situation.named());
    }

    /** The drops of the loads that run. */
    public static List<WorstCase> drops(Analysis analysis) {
        List<WorstCase> cases = new ArrayList<>();
        analysis.harness().components().all().forEach(component -> analysis.evidence()
                .envelope()
                .worstDrop(component.id())
                .ifPresent(situation -> cases.add(drop(
                        analysis,
                        component.id(),
                        component.name(),
                        situation,
                        situation.loads().get(component.id())))));
        return cases;
    }

    private static WorstCase drop(
            Analysis analysis, ComponentId load, String name, SituationEnvelope situation, LoadEnvelope found) {
        double named = 0;
        for (OperatingState state : analysis.states()) {
            Optional<LoadVolts> volts = analysis.solution(state.id())
                    .flatMap(solution -> Optional.ofNullable(solution.loads().get(load)));
            if (state.asksOn(load) && volts.isPresent() && state.mode() != OperatingState.EngineMode.CRANKING) {
                named = Math.max(named, volts.get().onDropVolts());
            }
        }
        return new WorstCase(
                load,
                load + " " + name,
                true,
                found.dropVolts(),
                named,
                OptionalDouble.of(found.limitVolts()),
                found.boundVolts(),
                found.isProven(),
                loads(situation, found.combination()),
                situation.named());
    }

    private static List<ComponentId> loads(SituationEnvelope situation, String combination) {
        return situation.combination(combination).map(Combination::loads).stream()
                .flatMap(Collection::stream)
                .toList();
    }

    /** How the sources are found in it, in English. */
    public String situation() {
        return situated.english();
    }

    /** The loads that run in it, as text. */
    public String loadsText() {
        return loads.stream().map(ComponentId::value).collect(Collectors.joining(", "));
    }
}
