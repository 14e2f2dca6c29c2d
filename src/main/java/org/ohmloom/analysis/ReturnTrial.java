package org.ohmloom.analysis;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.BooleanSupplier;
import java.util.function.Function;
import org.ohmloom.graph.Network;
import org.ohmloom.graph.NetworkBuilder;
import org.ohmloom.heat.WireRating;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.StateId;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireId;
import org.ohmloom.review.Evidence;
import org.ohmloom.review.Finding;
import org.ohmloom.review.StudyResults;
import org.ohmloom.size.ConductorChoice;
import org.ohmloom.size.ConductorChooser;
import org.ohmloom.size.DeviceChoice;
import org.ohmloom.size.DeviceChooser;
import org.ohmloom.size.JointChoice;
import org.ohmloom.size.ProvisionalSizes;
import org.ohmloom.size.Settling;
import org.ohmloom.size.SizingInput;
import org.ohmloom.solve.Solution;
import org.ohmloom.solve.SourceMemory;
import org.ohmloom.solve.charge.ChargeStudy;
import org.ohmloom.solve.envelope.Envelope;
import org.ohmloom.solve.run.StartUpStudy;
import org.ohmloom.solve.run.StartUps;
import org.ohmloom.tables.WireTables;
import org.ohmloom.units.Gauge;

/**
 * The part of an analysis that a change of the returns can be judged by, for trying many: the operating states solved and heated,
 * and the study of the returns.
 * <p>Left out are the choice of all sizes together, starts, protective devices, the envelope and the charge balance; what rules
 * find in those is missing, so findings are compared with those of another trial and never with those of an {@link Analysis}.
 * {@link #wholeFindings} makes up for what was left out.
 */
public final class ReturnTrial {

    private final Evidence evidence;
    private final List<Finding> findings;
    private final Totals totals;
    private final Function<Cancel, List<Finding>> whole;

    private ReturnTrial(Evidence evidence, Totals totals, Function<Cancel, List<Finding>> whole, Cancel cancel) {
        this.evidence = evidence;
        this.findings = List.copyOf(FindingOrder.of(evidence, cancel));
        this.totals = totals;
        this.whole = whole;
    }

    /** The results; what was left out is empty in them. */
    public Evidence evidence() {
        return evidence;
    }

    /** What the rules find in them, in the order of the report. */
    public List<Finding> findings() {
        return findings;
    }

    /** Sums over the whole harness. */
    public Totals totals() {
        return totals;
    }

    /**
     * What the rules find with nothing left out but the choice of all sizes together: starts, protective devices, the envelope and
     * the charge balance are studied now, with each conductor's size by itself. To be compared with those of another trial.
     *
     * @param cancel asks to stop
     * @throws java.util.concurrent.CancellationException when asked to stop
     */
    public List<Finding> wholeFindings(Cancel cancel) {
        return whole.apply(cancel);
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
        Bench bench = Bench.of(harness, tables, cancel);
        Protection protection = Protection.of(bench);
        return of(bench, protection, SizesByWire.of(bench, protection));
    }

    /**
     * What an analysis holds, as a trial; nothing is solved anew.
     *
     * @param analysis a whole analysis
     * @param cancel   asks to stop
     */
    public static ReturnTrial of(Analysis analysis, Cancel cancel) {
        Evidence whole = analysis.evidence();
        Bench bench = Bench.of(whole.harness(), whole.tables(), cancel);
        SizingInput input = new SizingInput(
                bench.harness(),
                bench.tables(),
                bench.basis(),
                bench.routes(),
                whole.solutions(),
                new Protection(whole.drawn(), whole.upstream(), bench).devices(),
                Optional.of(new Settling(
                        bench.bundleHeat(),
                        wire -> whole.ratings().get(wire.id()).gauge())));
        SortedMap<WireId, ConductorChoice> byThemselves = new ConductorChooser(input).chooseAll();
        Evidence found = whole.with(byThemselves, JointChoice.NOT_ASKED, whole.devices());
        return new ReturnTrial(
                withoutStudies(found), analysis.totals(), asked -> FindingOrder.of(found, asked), cancel);
    }

    private static Evidence withoutStudies(Evidence whole) {
        return whole.with(whole.conductors(), JointChoice.NOT_ASKED, new TreeMap<>())
                .with(StudyResults.ofReturnsAlone(whole.returns()));
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
        Bench near = Bench.of(changed, evidence.tables(), cancel);
        ProvisionalSizes known = sizes(near, evidence.ratings());
        SortedMap<StateId, SortedMap<WireId, Double>> warm = new TreeMap<>();
        SortedMap<StateId, SourceMemory> memories = new TreeMap<>();
        for (StateId state : changed.states().ids()) {
            SortedMap<WireId, Double> celsius = new TreeMap<>();
            changed.wires().all().forEach(wire -> celsius.put(wire.id(), celsius(near, wire, state)));
            warm.put(state, celsius);
            memories.put(state, new SourceMemory());
        }
        HeatedSolutions heated = HeatedSolutions.solve(near, known, warm, memories);
        return of(near, Protection.of(near), new SizesByWire(known, heated));
    }

    /**
     * The networks of a harness that differs little from this one's, conductors as warm as they are here: what it takes to
     * tell beforehand what a change will do.
     *
     * @param changed a harness with the same operating states
     * @return the network of each state, built when asked for
     * @throws AnalysisRefusedException when the harness names a table entry that is not there
     */
    public Function<StateId, Network> networks(Harness changed) {
        Bench near = Bench.of(changed, evidence.tables(), Cancel.NEVER);
        ProvisionalSizes known = sizes(near, evidence.ratings());
        return state -> NetworkBuilder.build(
                changed,
                changed.states().get(state),
                wire -> near.ohms(
                        wire, known.gauge(wire), HeatedSolutions.held(near, wire, celsius(near, wire, state))),
                near.tables());
    }

    private double celsius(Bench near, Wire wire, StateId state) {
        Map<WireId, Double> known = evidence.wireCelsius().getOrDefault(state, new TreeMap<>());
        Double here = known.get(wire.id());
        return here == null ? near.ampacities().ambientCelsius(wire) : here;
    }

    private static ProvisionalSizes sizes(Bench bench, SortedMap<WireId, WireRating> ratings) {
        Map<WireId, Gauge> open = new TreeMap<>();
        bench.harness().wires().all().stream()
                .filter(wire -> wire.gauge().isEmpty() && ratings.containsKey(wire.id()))
                .forEach(wire -> open.put(wire.id(), ratings.get(wire.id()).gauge()));
        return ProvisionalSizes.minimum(bench.harness(), bench.tables(), bench.basis())
                .with(open);
    }

    private static ReturnTrial of(Bench bench, Protection protection, SizesByWire sized) {
        HeatedSolutions heated = sized.heated();
        SortedMap<WireId, WireRating> ratings = Ratings.of(bench, sized.sizes(), heated);
        SizingInput input = SizesByWire.input(bench, protection, heated, sized.sizes());
        Evidence evidence = new Evidence(
                bench.harness(),
                bench.tables(),
                bench.basis(),
                bench.routes(),
                bench.lengths(),
                Collections.unmodifiableSortedMap(heated.solutions()),
                Collections.unmodifiableSortedMap(heated.wireCelsius()),
                Collections.unmodifiableSortedMap(ratings),
                new ConductorChooser(input).chooseAll(),
                JointChoice.NOT_ASKED,
                new TreeMap<>(),
                protection.drawn(),
                protection.upstream(),
                StudyResults.ofReturnsAlone(
                        Returns.study(bench, sized.sizes(), protection.drawn(), heated, ratings, (soFar, part) -> {})));
        return new ReturnTrial(
                evidence,
                Totals.of(evidence),
                asked -> FindingOrder.of(completed(bench.under(asked), protection, sized, input, evidence), asked),
                bench.cancel());
    }

    /** The same evidence with the studies that were left out. */
    private static Evidence completed(
            Bench bench, Protection protection, SizesByWire sized, SizingInput input, Evidence evidence) {
        SortedMap<StateId, Solution> solutions = sized.heated().solutions();
        BooleanSupplier stopped = bench.cancel()::isRequested;
        Envelope envelope = Envelopes.of(bench, sized.sizes(), sized.heated());
        StartUps startUps = StartUpStudy.of(bench.harness(), solutions, bench.tables(), stopped);
        StudyResults studies = evidence.studies()
                .with(envelope)
                .with(startUps)
                .with(ChargeStudy.of(bench.harness(), bench.tables(), solutions, stopped))
                .with(protection.study(input, evidence.ratings(), startUps, bench.cancel()));
        SortedMap<ComponentId, DeviceChoice> devices =
                new DeviceChooser(EnvelopeSizing.widened(input, envelope)).chooseAll();
        return evidence.with(evidence.conductors(), JointChoice.NOT_ASKED, devices)
                .with(studies);
    }
}
