package org.ohmloom.review;

import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import org.ohmloom.bench.BenchInput;
import org.ohmloom.bench.BenchResults;
import org.ohmloom.bundle.length.CutLengths;
import org.ohmloom.bundle.section.BundleStudy;
import org.ohmloom.bundle.splice.SpliceAdvice;
import org.ohmloom.graph.Assumption;
import org.ohmloom.graph.BranchId;
import org.ohmloom.graph.Law;
import org.ohmloom.graph.Network;
import org.ohmloom.graph.Routes;
import org.ohmloom.graph.Upstream;
import org.ohmloom.ground.ReturnStudy;
import org.ohmloom.heat.WireRating;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.SpliceId;
import org.ohmloom.model.StateId;
import org.ohmloom.model.WireId;
import org.ohmloom.signal.study.SignalResults;
import org.ohmloom.signal.study.SignalStudy;
import org.ohmloom.size.ConductorChoice;
import org.ohmloom.size.DeviceChoice;
import org.ohmloom.size.JointChoice;
import org.ohmloom.size.protection.ProtectionResults;
import org.ohmloom.solve.Solution;
import org.ohmloom.solve.charge.ChargeStudy;
import org.ohmloom.solve.envelope.Envelope;
import org.ohmloom.solve.run.StartUps;
import org.ohmloom.tables.DesignBasis;
import org.ohmloom.tables.WireTables;

/**
 * Everything a rule may look at.
 *
 * @param harness         the harness under review
 * @param tables          published tables
 * @param basis           the design basis it is judged by
 * @param routes          ways of the wires over the physical harness
 * @param lengths         cut lengths of the wires, part by part
 * @param solutions       solution of every operating state in id order; its network has the laws of that state
 * @param wireCelsius     conductor temperature of every wire in every state, deg C
 * @param ratings         what each wire is, carries and may carry
 * @param conductors      smallest conductor for each wire, and why
 * @param joint           how the open sizes were chosen together, and how little they could cost
 * @param devices         rating for each protective device, and why
 * @param drawn           the network as drawn, with nothing switched on; the same points and branches as in every state
 * @param upstream        what stands between sources and conductors
 * @param studies         what the studies found, as far as they have come
 * @param tests           the tests of the finished harness and its readings, judged
 * @param signalling      channels, calibrations and data buses
 */
public record Evidence(
        Harness harness,
        WireTables tables,
        DesignBasis basis,
        Routes routes,
        CutLengths lengths,
        SortedMap<StateId, Solution> solutions,
        SortedMap<StateId, SortedMap<WireId, Double>> wireCelsius,
        SortedMap<WireId, WireRating> ratings,
        SortedMap<WireId, ConductorChoice> conductors,
        JointChoice joint,
        SortedMap<ComponentId, DeviceChoice> devices,
        Network drawn,
        Upstream upstream,
        StudyResults studies,
        BenchResults tests,
        SignalResults signalling) {

    /** Evidence whose tests and signals are not worked out yet. */
    public Evidence(
            Harness harness,
            WireTables tables,
            DesignBasis basis,
            Routes routes,
            CutLengths lengths,
            SortedMap<StateId, Solution> solutions,
            SortedMap<StateId, SortedMap<WireId, Double>> wireCelsius,
            SortedMap<WireId, WireRating> ratings,
            SortedMap<WireId, ConductorChoice> conductors,
            JointChoice joint,
            SortedMap<ComponentId, DeviceChoice> devices,
            Network drawn,
            Upstream upstream,
            StudyResults studies) {
        this(
                harness,
                tables,
                basis,
                routes,
                lengths,
                solutions,
                wireCelsius,
                ratings,
                conductors,
                joint,
                devices,
                drawn,
                upstream,
                studies,
                new BenchResults(new BenchInput(harness, tables, basis, routes, ratings, solutions)),
                new SignalResults(
                        () -> SignalStudy.of(harness, listed(drawn, ratings), lengths.metres(), tables.signals())));
    }

    /** The network as drawn with the resistance every wire is rated with. */
    private static Network listed(Network drawn, SortedMap<WireId, WireRating> ratings) {
        Map<BranchId, Law> laws = new HashMap<>();
        ratings.forEach((wire, rating) ->
                drawn.branch(wire).ifPresent(branch -> laws.put(branch.id(), new Law.Resistance(rating.ohms()))));
        return drawn.withLaws(laws);
    }

    /** Whether a rule can answer: what it needs is there, and no wire without a size may get another one yet. */
    public boolean isReadyFor(Rule rule) {
        return studies.has(rule.needs()) && isSized();
    }

    /** Whether every wire has the size it will have in the end, so that currents and temperatures will not change any more. */
    public boolean isSized() {
        return studies.has(Set.of(StudyPart.SIZES))
                || harness.wires().all().stream().allMatch(wire -> wire.gauge().isPresent());
    }

    /** The same with what the studies have found by now. */
    public Evidence with(StudyResults found) {
        return with(conductors, joint, devices, found);
    }

    /** The same with other sizes chosen. */
    public Evidence with(
            SortedMap<WireId, ConductorChoice> otherConductors,
            JointChoice otherJoint,
            SortedMap<ComponentId, DeviceChoice> otherDevices) {
        return with(otherConductors, otherJoint, otherDevices, studies);
    }

    private Evidence with(
            SortedMap<WireId, ConductorChoice> itsConductors,
            JointChoice itsJoint,
            SortedMap<ComponentId, DeviceChoice> itsDevices,
            StudyResults itsStudies) {
        return new Evidence(
                harness,
                tables,
                basis,
                routes,
                lengths,
                solutions,
                wireCelsius,
                ratings,
                itsConductors,
                itsJoint,
                itsDevices,
                drawn,
                upstream,
                itsStudies,
                tests,
                signalling);
    }

    /** How loads and control units start in every state, over time. */
    public StartUps startUps() {
        return studies.startUps();
    }

    /** What every protective device carries, protects and clears. */
    public ProtectionResults protection() {
        return studies.protection();
    }

    /** Worst currents and drops over all allowed combinations of loads. */
    public Envelope envelope() {
        return studies.envelope();
    }

    /** Charge balance of every state, timed sequences, load analysis. */
    public ChargeStudy charge() {
        return studies.charge();
    }

    /** Ground points, loops, offsets and what they do to sensors. */
    public ReturnStudy returns() {
        return studies.returns();
    }

    /** Cross-section, covering and supports of every segment, and where splices lie best. */
    public BundleStudy bundles() {
        return studies.bundles();
    }

    /** Where each splice lies best. */
    public SortedMap<SpliceId, SpliceAdvice> splices() {
        return studies.bundles().splices();
    }

    /** What the networks of all states take for granted, each once. */
    public List<Assumption> assumptions() {
        Set<Assumption> all = new LinkedHashSet<>(drawn.assumptions());
        solutions.values().forEach(solution -> all.addAll(solution.network().assumptions()));
        return List.copyOf(all);
    }

    /** What the tests of the finished harness rest on. */
    public BenchInput bench() {
        return tests.input();
    }

    /** Channels, calibrations and data buses. */
    public SignalStudy signals() {
        return signalling.study();
    }

    /** What a wire is, carries and may carry. */
    public Optional<WireRating> rating(WireId wire) {
        return Optional.ofNullable(ratings.get(wire));
    }
}
