package org.ohmloom.review;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ohmloom.graph.Branch;
import org.ohmloom.graph.BranchId;
import org.ohmloom.heat.ContinuousStates;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.StateId;
import org.ohmloom.solve.BranchFlow;
import org.ohmloom.solve.LoadVolts;
import org.ohmloom.solve.Solution;
import org.ohmloom.solve.envelope.BranchEnvelope;
import org.ohmloom.solve.envelope.Combination;
import org.ohmloom.solve.envelope.LoadEnvelope;
import org.ohmloom.solve.envelope.SituationEnvelope;

/** The envelope beside the worst of the named states that last. */
public final class EnvelopeComparison {

    private EnvelopeComparison() {}

    /**
     * The largest RMS current of a branch.
     *
     * @param branch      the branch
     * @param namedAmps   in the named states that last, A
     * @param namedState  the state of that current; empty when it carries nothing in any
     * @param worst       over all allowed combinations
     * @param situation   the situation of that
     * @param combination the combination of that
     * @param limit       what it may carry; empty where nothing states a limit
     */
    public record Current(
            Branch branch,
            double namedAmps,
            Optional<StateId> namedState,
            BranchEnvelope worst,
            SituationEnvelope situation,
            Combination combination,
            Optional<BranchLimit> limit) {

        /** Whether only the envelope shows more than the limit. */
        public boolean isOverLimitUnnamed() {
            return limit.filter(each ->
                            Limits.exceeds(worst.rmsAmps(), each.amps()) && !Limits.exceeds(namedAmps, each.amps()))
                    .isPresent();
        }
    }

    /**
     * The largest drop of a load.
     *
     * @param load        the load
     * @param namedVolts  in the named states that last and ask it on, V; empty when none does
     * @param worst       over all allowed combinations
     * @param situation   the situation of that
     * @param combination the combination of that
     */
    public record Drop(
            ComponentId load,
            OptionalDouble namedVolts,
            LoadEnvelope worst,
            SituationEnvelope situation,
            Combination combination) {}

    /** The currents of all branches that carry something in some combination, in the order of branches. */
    public static List<Current> currents(Evidence evidence) {
        Map<BranchId, BranchLimit> limits = BranchLimit.of(evidence);
        Map<BranchId, BranchFlow> named = new HashMap<>();
        Map<BranchId, StateId> namedStates = new HashMap<>();
        for (StateId state : ContinuousStates.of(evidence.harness())) {
            Solution solution = evidence.solutions().get(state);
            for (BranchFlow flow : solution.flows().values()) {
                BranchFlow before = named.get(flow.branch().id());
                if (before == null ? flow.rmsAmps() > 0 : flow.rmsAmps() > before.rmsAmps()) {
                    named.put(flow.branch().id(), flow);
                    namedStates.put(flow.branch().id(), state);
                }
            }
        }
        List<Current> currents = new ArrayList<>();
        for (Branch branch : evidence.drawn().branches().values()) {
            evidence.envelope().hottest(branch.id()).ifPresent(situation -> {
                BranchEnvelope worst = situation.branches().get(branch.id());
                BranchFlow flow = named.get(branch.id());
                currents.add(new Current(
                        branch,
                        flow == null ? 0 : flow.rmsAmps(),
                        Optional.ofNullable(namedStates.get(branch.id())),
                        worst,
                        situation,
                        situation.combination(worst.rmsCombination()).orElseThrow(),
                        Optional.ofNullable(limits.get(branch.id()))));
            });
        }
        return List.copyOf(currents);
    }

    /** The drops of all loads that run in some combination, in the order of loads. */
    public static List<Drop> drops(Evidence evidence) {
        List<Drop> drops = new ArrayList<>();
        for (ComponentId load : evidence.harness().components().ids()) {
            evidence.envelope().worstDrop(load).ifPresent(situation -> {
                LoadEnvelope worst = situation.loads().get(load);
                drops.add(new Drop(
                        load,
                        named(evidence, load),
                        worst,
                        situation,
                        situation.combination(worst.combination()).orElseThrow()));
            });
        }
        return List.copyOf(drops);
    }

    private static OptionalDouble named(Evidence evidence, ComponentId load) {
        return ContinuousStates.of(evidence.harness()).stream()
                .filter(state -> evidence.harness().states().get(state).asksOn(load))
                .flatMap(state -> Optional.ofNullable(
                        evidence.solutions().get(state).loads().get(load))
                        .stream())
                .mapToDouble(LoadVolts::onDropVolts)
                .max();
    }
}
