package org.ohmloom.analysis;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import org.ohmloom.heat.WireRating;
import org.ohmloom.model.Harness;
import org.ohmloom.model.StateId;
import org.ohmloom.model.WireId;
import org.ohmloom.review.Evidence;
import org.ohmloom.review.Finding;
import org.ohmloom.review.StudyResults;
import org.ohmloom.size.ConductorChooser;
import org.ohmloom.size.JointChoice;
import org.ohmloom.size.ProvisionalSizes;
import org.ohmloom.solve.SourceMemory;
import org.ohmloom.tables.WireTables;
import org.ohmloom.units.Gauge;

/**
 * The part of an analysis that a change of the returns can be judged by, for trying many: the operating states solved and heated,
 * and the study of the returns.
 * <p>Left out are the choice of all sizes together, starts, protective devices, the envelope and the charge balance; what rules
 * find in those is missing, so findings are compared with those of another trial and never with those of an {@link Analysis}.
 *
 * @param evidence the results; what was left out is empty in them
 * @param findings what the rules find in them, in the order of the report
 * @param totals   sums over the whole harness
 */
public record ReturnTrial(Evidence evidence, List<Finding> findings, Totals totals) {

    public ReturnTrial {
        findings = List.copyOf(findings);
    }

    /**
     * Tries a harness. Safe on any thread.
     *
     * @param harness the harness
     * @param tables  published tables
     * @param cancel  asks to stop
     * @throws AnalysisRefusedException when the harness names a table entry that is not there
     * @throws java.util.concurrent.CancellationException when asked to stop
     */
    public static ReturnTrial of(Harness harness, WireTables tables, Cancel cancel) {
        Bench bench = Bench.of(harness, tables);
        Protection protection = Protection.of(bench);
        return of(bench, protection, SizesByWire.of(bench, protection, cancel), cancel);
    }

    /**
     * Tries a harness that differs little from this one's: wires without a size keep the size they had here, and conductors begin
     * as warm as they were.
     *
     * @param changed a harness with the same operating states
     * @param cancel  asks to stop
     * @throws AnalysisRefusedException when the harness names a table entry that is not there
     * @throws java.util.concurrent.CancellationException when asked to stop
     */
    public ReturnTrial changed(Harness changed, Cancel cancel) {
        Bench bench = Bench.of(changed, evidence.tables());
        Map<WireId, Gauge> open = new TreeMap<>();
        changed.wires().all().stream().filter(wire -> wire.gauge().isEmpty()).forEach(wire -> evidence.rating(wire.id())
                .ifPresent(rating -> open.put(wire.id(), rating.gauge())));
        ProvisionalSizes sizes = ProvisionalSizes.minimum(changed, evidence.tables(), bench.basis())
                .with(open);
        SortedMap<StateId, SortedMap<WireId, Double>> warm = new TreeMap<>();
        SortedMap<StateId, SourceMemory> memories = new TreeMap<>();
        for (StateId state : changed.states().ids()) {
            SortedMap<WireId, Double> celsius = new TreeMap<>();
            Map<WireId, Double> known = evidence.wireCelsius().getOrDefault(state, new TreeMap<>());
            changed.wires()
                    .all()
                    .forEach(wire -> celsius.put(
                            wire.id(),
                            known.getOrDefault(wire.id(), bench.ampacities().ambientCelsius(wire))));
            warm.put(state, celsius);
            memories.put(state, new SourceMemory());
        }
        HeatedSolutions heated = HeatedSolutions.solve(bench, sizes, warm, memories, cancel);
        return of(bench, Protection.of(bench), new SizesByWire(sizes, heated), cancel);
    }

    private static ReturnTrial of(Bench bench, Protection protection, SizesByWire sized, Cancel cancel) {
        HeatedSolutions heated = sized.heated();
        SortedMap<WireId, WireRating> ratings = Ratings.of(bench, sized.sizes(), heated);
        Evidence evidence = new Evidence(
                bench.harness(),
                bench.tables(),
                bench.basis(),
                bench.routes(),
                bench.lengths(),
                Collections.unmodifiableSortedMap(heated.solutions()),
                Collections.unmodifiableSortedMap(heated.wireCelsius()),
                Collections.unmodifiableSortedMap(ratings),
                new ConductorChooser(SizesByWire.input(bench, protection, heated, sized.sizes())).chooseAll(),
                JointChoice.NOT_ASKED,
                new TreeMap<>(),
                protection.drawn(),
                protection.upstream(),
                StudyResults.ofReturnsAlone(
                        Returns.study(bench, protection.drawn(), heated, ratings, cancel, (soFar, part) -> {})));
        return new ReturnTrial(evidence, FindingOrder.of(evidence, cancel), Summing.of(bench, ratings, heated));
    }
}
