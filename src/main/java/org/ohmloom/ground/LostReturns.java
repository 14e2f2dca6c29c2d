package org.ohmloom.ground;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.BooleanSupplier;
import java.util.stream.Collectors;
import org.ohmloom.graph.Branch;
import org.ohmloom.graph.BranchId;
import org.ohmloom.graph.BranchKind;
import org.ohmloom.graph.Network;
import org.ohmloom.graph.ReturnNetwork;
import org.ohmloom.ground.sensor.Unjudged;
import org.ohmloom.heat.Ampacity;
import org.ohmloom.model.ElementId;
import org.ohmloom.model.GroundPoint;
import org.ohmloom.model.Harness;
import org.ohmloom.model.SignalClass;
import org.ohmloom.model.StateId;
import org.ohmloom.model.Strap;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireEnd;
import org.ohmloom.model.WireId;
import org.ohmloom.solve.BranchFlow;
import org.ohmloom.solve.Solution;

/**
 * Opens each ground point, ground wire, strap and protective device in turn, in every state, and sees where the current goes
 * instead.
 *
 * <p>Only what carries at least {@link #LEAST_AMPS} in the state is opened: a conductor without current changes nothing when it
 * opens. Each opening is a full solution of the moment in which all outputs are on ({@link OpenedNetwork}); overloads are then
 * judged by the RMS currents at the duties of the state ({@link OpenedDuties}). Solutions are bounded by {@link #MOST_SOLUTIONS} and by {@link #MOST_WORK} branches solved in all; the largest currents come first, and what
 * was left out is told.
 *
 * @param losses   the openings that overload something or feed a load backwards, by element, then by state
 * @param unjudged what was not tried
 */
public record LostReturns(List<LostReturn> losses, List<Unjudged> unjudged) {

    /** Least current for which an opening is tried, A. */
    static final double LEAST_AMPS = 0.05;

    /** Most solutions of one study. */
    static final int MOST_SOLUTIONS = 600;

    /** Most branches times solutions of one study. */
    static final int MOST_WORK = 1_000_000;

    /** Most openings of one state whose overloads are judged by RMS currents at the duties. */
    public static final int MOST_AT_DUTIES = OpenedDuties.MOST_SOLUTIONS;

    private static final int LEAST_SOLUTIONS = 20;

    public LostReturns {
        losses = List.copyOf(losses);
        unjudged = List.copyOf(unjudged);
    }

    /** Something to open in one state. */
    private record Opening(StateId state, ElementId element, BranchId branch, double amps) {}

    /**
     * Runs the study.
     *
     * @param harness    the harness; a joint of 0 ohm is one point with its body and is not opened
     * @param drawn      its network with nothing switched on
     * @param solutions  solution of every state
     * @param ampacities ampacity of each wire, where known
     * @param cancelled  asked now and then; true stops the work
     * @throws java.util.concurrent.CancellationException when asked to stop
     */
    public static LostReturns of(
            Harness harness,
            Network drawn,
            SortedMap<StateId, Solution> solutions,
            Map<WireId, Ampacity> ampacities,
            BooleanSupplier cancelled) {
        SortedMap<BranchId, ElementId> members = members(harness, drawn);
        List<Opening> openings = new ArrayList<>();
        solutions.forEach((state, solution) -> members.forEach((branch, element) -> solution.flow(branch)
                .map(BranchFlow::onAmps)
                .filter(amps -> Math.abs(amps) >= LEAST_AMPS)
                .ifPresent(amps -> openings.add(new Opening(state, element, branch, Math.abs(amps))))));
        openings.sort(Comparator.comparingDouble((Opening opening) -> -opening.amps())
                .thenComparing(Opening::branch)
                .thenComparing(Opening::state));
        int most = Math.max(
                LEAST_SOLUTIONS,
                Math.min(
                        MOST_SOLUTIONS, MOST_WORK / Math.max(1, drawn.branches().size())));
        List<Opening> tried = openings.subList(0, Math.min(most, openings.size()));
        List<Unjudged> unjudged = new ArrayList<>();
        if (openings.size() > most) {
            unjudged.add(Unjudged.of(
                    Unjudged.Study.LOST_RETURNS,
                    Unjudged.Reason.TOO_MUCH_WORK,
                    ReturnTexts.text("lost.openings", openings.size(), most),
                    List.of()));
        }
        List<CarryLimits.Limit> limits = CarryLimits.of(harness, drawn, ampacities);
        Map<StateId, List<Opening>> byState = tried.stream().collect(Collectors.groupingBy(Opening::state));
        List<StateLosses> found = byState.entrySet().parallelStream()
                .map(state -> losses(harness, solutions.get(state.getKey()), state.getValue(), limits, cancelled))
                .toList();
        int untried = found.stream().mapToInt(StateLosses::untried).sum();
        if (untried > 0) {
            unjudged.add(Unjudged.of(
                    Unjudged.Study.LOST_RETURNS,
                    Unjudged.Reason.TOO_MUCH_WORK,
                    ReturnTexts.text("lost.untried", untried),
                    List.of()));
        }
        List<LostReturn> losses = found.stream()
                .flatMap(state -> state.losses().stream())
                .sorted(Comparator.comparing((LostReturn loss) -> loss.opened().value())
                        .thenComparing(LostReturn::state))
                .toList();
        return new LostReturns(losses, List.copyOf(unjudged));
    }

    /** What the openings of one state do, and how many of them were judged with all outputs on at once. */
    private record StateLosses(List<LostReturn> losses, int untried) {}

    /** What can be lost, by its branch. */
    private static SortedMap<BranchId, ElementId> members(Harness harness, Network drawn) {
        SortedMap<BranchId, ElementId> members = new TreeMap<>();
        for (GroundPoint ground : harness.grounds().all()) {
            members.put(new BranchId(ground.id() + ".joint"), ground.id());
        }
        for (Strap strap : harness.straps().all()) {
            members.put(new BranchId(strap.id().value()), strap.id());
        }
        ReturnNetwork returns = ReturnNetwork.of(drawn);
        for (Wire wire : harness.wires().all()) {
            boolean grounded = wire.ends().stream().anyMatch(WireEnd.AtGround.class::isInstance);
            BranchId branch = new BranchId(wire.id().value());
            if (returns.branches().containsKey(branch) && (grounded || wire.signalClass() == SignalClass.RETURN)) {
                members.put(branch, wire.id());
            }
        }
        for (Branch branch : drawn.branches().values()) {
            if (branch.kind() == BranchKind.FUSE || branch.kind() == BranchKind.BREAKER) {
                branch.element().ifPresent(element -> members.put(branch.id(), element));
            }
        }
        return members;
    }

    private static StateLosses losses(
            Harness harness,
            Solution solution,
            List<Opening> openings,
            List<CarryLimits.Limit> limits,
            BooleanSupplier cancelled) {
        OpenedNetwork network = new OpenedNetwork(solution, cancelled);
        List<LostReturn> losses = new ArrayList<>();
        Optional<Map<BranchId, Double>> whole = network.whole();
        if (whole.isEmpty()) {
            return new StateLosses(losses, 0);
        }
        OpenedDuties duties = new OpenedDuties(harness, solution, cancelled);
        LossReading reading = new LossReading(solution, whole.get(), limits, duties);
        for (Opening opening : openings) {
            network.with(List.of(opening.branch()))
                    .map(after -> reading.of(opening.element(), opening.branch(), after))
                    .filter(LostReturn::isHarmful)
                    .ifPresent(losses::add);
        }
        return new StateLosses(losses, duties.untried());
    }
}
