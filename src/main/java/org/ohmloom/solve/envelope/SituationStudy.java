package org.ohmloom.solve.envelope;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import org.ohmloom.graph.Branch;
import org.ohmloom.graph.BranchId;
import org.ohmloom.graph.Law;
import org.ohmloom.graph.Network;
import org.ohmloom.graph.Sensing;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.NaturalOrder;
import org.ohmloom.model.OperatingState;
import org.ohmloom.model.OutputPin;
import org.ohmloom.model.Setting;
import org.ohmloom.solve.Solution;

/**
 * The envelope of one situation: model, search, full solution of the winners, and what came of it.
 *
 * <ol>
 *   <li>The network with every control closed; its models, one for each mode of its sources.
 *   <li>For each different sum among the branch currents and load drops the largest value and a bound.
 *   <li>Of the combinations that win somewhere those solved in full that add most ({@link Candidates}), at most {@link
 *       #MOST_SOLUTIONS}, and the named states.
 *   <li>Of every branch and load the worst of these solutions, beside its bound.
 * </ol>
 */
final class SituationStudy {
    /** Most combinations of one situation that are solved in full. */
    static final int MOST_SOLUTIONS = 10;

    /** Most consumers of one situation: their transfer resistances fill a square. */
    static final int MOST_TAKERS = 1000;

    /** Share of the work that currents may take; what they leave is for drops. */
    private static final double CURRENTS_SHARE = 0.7;

    private final EnvelopeInput input;
    private final Situation situation;
    private final Takers takers;
    private final List<String> steps = new ArrayList<>();
    private Optional<Solution> last = Optional.empty();
    private int searchSteps;
    private int unsearched;

    SituationStudy(EnvelopeInput input, Situation situation, Takers takers) {
        this.input = input;
        this.situation = situation;
        this.takers = takers;
    }

    /** Studies; adds what could not be done to the notes. */
    Optional<SituationEnvelope> study(List<String> notes) {
        Network network = input.networks().apply(allOn());
        ClosedNetwork closed = ClosedNetwork.of(network, input.harness(), takers.all());
        List<Taker> fed = closed.fed(takers.all(), input.cancelled());
        Blocks blocks = Blocks.of(fed, input.harness().loadGroups().all());
        notes.addAll(blocks.notes());
        if (blocks.count() > Allowed.MOST_BLOCKS) {
            notes.add(situation.name() + ": " + blocks.count() + " loads are switched separately, more than the "
                    + Allowed.MOST_BLOCKS + " this study combines; no envelope.");
            return Optional.empty();
        }
        if (fed.size() > MOST_TAKERS) {
            notes.add(situation.name() + ": " + fed.size() + " consumers, more than the " + MOST_TAKERS
                    + " this study combines; no envelope.");
            return Optional.empty();
        }
        Models models = Models.of(closed, blocks, input.cancelled());
        if (blocks.count() == 0 || models.searched().isEmpty()) {
            String why = models.doubts().isEmpty() ? "nothing takes current" : String.join("; ", models.doubts());
            notes.add(situation.name() + ": no envelope, " + why + ".");
            return Optional.empty();
        }
        return Optional.of(envelope(closed, blocks, models, notes));
    }

    private OperatingState allOn() {
        SortedMap<ComponentId, Setting> components = new TreeMap<>();
        SortedMap<OutputPin, Setting> outputs = new TreeMap<>();
        for (Taker taker : takers.all()) {
            for (Control control : taker.needs().controls()) {
                if (control.isPin()) {
                    outputs.put(control.pin(), Setting.ON);
                } else if (control.part().isEmpty()) {
                    components.put(control.component(), Setting.ON);
                } else {
                    components.put(control.component(), Setting.at(control.part()));
                }
            }
        }
        return situation.state(situation.id(), components, outputs);
    }

    private SituationEnvelope envelope(ClosedNetwork closed, Blocks blocks, Models models, List<String> notes) {
        TargetSearch search = new TargetSearch(blocks, models.searched(), input.cancelled());
        Bounds bounds = new Bounds(models, blocks);
        Candidates candidates = new Candidates(models.searched());
        currents(closed, blocks, models, search, bounds, candidates);
        drops(closed, blocks, models, search, bounds, candidates);
        List<Combination> combinations = combinations(blocks, candidates.chosen(MOST_SOLUTIONS));
        combinations.addAll(named(blocks, notes));
        Harvest harvest = new Harvest(combinations);
        describe(blocks, models, combinations);
        if (unsearched > 0) {
            String left =
                    unsearched + " branches and loads were not searched, to keep the calculation quick: theirs is the"
                            + " worst of the combinations solved in full, and no bound is claimed.";
            steps.add(left);
            notes.add(situation.name() + ": " + left);
        }
        return new SituationEnvelope(
                situation.name(),
                situation.mode(),
                situation.on(),
                combinations,
                harvest.branches(bounds),
                harvest.loads(bounds),
                steps);
    }

    private void currents(
            ClosedNetwork closed,
            Blocks blocks,
            Models models,
            TargetSearch search,
            Bounds bounds,
            Candidates candidates) {
        Targets<BranchId> targets = new Targets<>();
        for (Branch branch : closed.network().all()) {
            targets.add(branch.id(), models.linear(), model -> model.amps(branch), true);
        }
        double[] ratios = blocks.takers().stream().mapToDouble(Taker::rmsRatio).toArray();
        for (Targets.Target<BranchId> target : targets.all()) {
            if (target.sums().stream().allMatch(Optional::isEmpty)) {
                continue;
            }
            if (search.isSpent(CURRENTS_SHARE)) {
                unsearched += target.members().size();
                continue;
            }
            TargetSearch.Result on = search.largestSize(target.sums());
            searchSteps += on.steps();
            candidates.add(target.sums(), true, 0, target.members().size(), on);
            bounds.on(target, on.bound());
            if (!models.isPulsed()) {
                continue;
            }
            List<Optional<Functional>> sizes = target.sums().stream()
                    .map(sum -> sum.map(each -> each.sizes(ratios)))
                    .toList();
            TargetSearch.Result rms = search.largest(sizes, 0);
            searchSteps += rms.steps();
            candidates.add(sizes, false, 0, target.members().size(), rms);
            bounds.rms(target, rms.bound());
        }
    }

    private void drops(
            ClosedNetwork closed,
            Blocks blocks,
            Models models,
            TargetSearch search,
            Bounds bounds,
            Candidates candidates) {
        for (int number = 0; number < blocks.takers().size(); number++) {
            Taker taker = blocks.takers().get(number);
            if (taker.load().isEmpty()) {
                continue;
            }
            if (search.isSpent(1)) {
                unsearched++;
                continue;
            }
            for (Branch source : closed.sources()) {
                Targets<ComponentId> targets = new Targets<>();
                targets.add(
                        taker.load().get(),
                        models.linear(),
                        model -> Optional.of(
                                model.volts(source.to(), source.from()).minus(model.volts(taker.from(), taker.to()))),
                        false);
                Targets.Target<ComponentId> target = targets.all().get(0);
                long required = 1L << blocks.blockOf()[number];
                TargetSearch.Result drop = search.largest(target.sums(), required);
                searchSteps += drop.steps();
                candidates.add(target.sums(), false, required, 1, drop);
                bounds.drop(target, drop.bound());
            }
        }
    }

    /** A state solved in full; a regulator begins with what it ended at in the combination before. */
    private Solution solved(OperatingState state) {
        Network network = input.networks().apply(state);
        Map<BranchId, Law> laws = new HashMap<>();
        for (Sensing sensing : network.sensings()) {
            last.flatMap(before -> before.network().branch(sensing.source()))
                    .ifPresent(branch -> laws.put(branch.id(), branch.law()));
        }
        Solution solution = input.solver().apply(network.withLaws(laws));
        last = Optional.of(solution);
        return solution;
    }

    /** The winners solved in full. */
    private List<Combination> combinations(Blocks blocks, List<Long> order) {
        List<Combination> combinations = new ArrayList<>();
        for (long on : order) {
            String id = situation.id() + "-" + (combinations.size() + 1);
            SortedSet<Control> controls = blocks.controls(on);
            SortedSet<ComponentId> loads = blocks.loads(on);
            OperatingState state = situation.state(id, controls, loads, takers.settings());
            combinations.add(new Combination(id, loads, texts(controls), state, solved(state)));
        }
        return combinations;
    }

    /**
     * The named states of this situation that the load groups allow: each as it was solved, so that the envelope is never less,
     * and with every conductor as warm as any state makes it, as the other combinations are.
     */
    private List<Combination> named(Blocks blocks, List<String> notes) {
        List<Combination> named = new ArrayList<>();
        for (OperatingState state : input.lasting()) {
            if (!situation.holds(state)) {
                continue;
            }
            long on = blocks.running(input.solutions().get(state.id()));
            if (!blocks.allowed().keepsGroups(on)) {
                notes.add("State " + state.name()
                        + " runs loads together that the load groups do not allow; it is not in" + " the envelope.");
                continue;
            }
            Combination itself = new Combination(
                    "state " + state.id(),
                    blocks.loads(on),
                    texts(blocks.controls(on)),
                    state,
                    input.solutions().get(state.id()));
            named.add(itself);
            named.add(new Combination(
                    itself.id() + " with every conductor at its warmest",
                    itself.loads(),
                    itself.controls(),
                    state,
                    solved(state)));
        }
        return named;
    }

    private static SortedSet<String> texts(SortedSet<Control> controls) {
        SortedSet<String> texts = new TreeSet<>(NaturalOrder.INSTANCE);
        controls.forEach(control -> texts.add(control.text()));
        return texts;
    }

    private void describe(Blocks blocks, Models models, List<Combination> combinations) {
        boolean linear = TargetSearch.isLinear(blocks);
        steps.add(blocks.takers().size() + " consumers in " + blocks.count() + " groups that can only run as a whole; "
                + models.searched().size() + " modes of the sources; " + searchSteps + " search steps; "
                + combinations.size() + " combinations solved in full, the named states among them.");
        steps.add(
                linear
                        ? "All currents are constant: each branch current is the sum of load currents times transfer ratios"
                                + " (superposition), its maximum found by branch and bound over the load groups: exact."
                        : "Bound: each current lies between its values at the highest and lowest voltage it can have, the"
                                + " voltage falling by transfer resistance times the other currents; the sum of the largest"
                                + " shares over the load groups is maximised by branch and bound, at most "
                                + TargetSearch.BOUNDED_STEPS + " steps each.");
        if (models.isPulsed()) {
            steps.add("Switched outputs count with their on-state current; the RMS bound adds RMS currents"
                    + " (triangle inequality), with the root of the duty where nothing freewheels.");
        }
        if (blocks.takers().stream().anyMatch(Taker::isSeen)) {
            steps.add("Inductive loads on outputs that switch count with the largest current a named state shows; where"
                    + " their current passes no bound is claimed.");
        }
        models.doubts().forEach(doubt -> steps.add("No bound is claimed: " + doubt + "."));
    }
}
