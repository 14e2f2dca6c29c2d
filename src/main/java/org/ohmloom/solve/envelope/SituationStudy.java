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
import org.ohmloom.solve.SolveTexts;
import org.ohmloom.words.Text;

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
    private final List<Text> steps = new ArrayList<>();
    private Optional<Solution> last = Optional.empty();
    private int searchSteps;
    private int unsearched;

    SituationStudy(EnvelopeInput input, Situation situation, Takers takers) {
        this.input = input;
        this.situation = situation;
        this.takers = takers;
    }

    /** Studies; adds what could not be done to the notes. */
    Optional<SituationEnvelope> study(List<Text> notes) {
        Network network = input.networks().apply(allOn());
        ClosedNetwork closed = ClosedNetwork.of(network, input.harness(), takers.all());
        List<Taker> fed = closed.fed(takers.all(), input.cancelled());
        Blocks blocks = Blocks.of(fed, input.harness().loadGroups().all());
        notes.addAll(blocks.notes());
        if (blocks.count() > Allowed.MOST_BLOCKS) {
            notes.add(here(SolveTexts.text("envelope.many-blocks", blocks.count(), Allowed.MOST_BLOCKS)));
            return Optional.empty();
        }
        if (fed.size() > MOST_TAKERS) {
            notes.add(here(SolveTexts.text("envelope.many-consumers", fed.size(), MOST_TAKERS)));
            return Optional.empty();
        }
        Models models = Models.of(closed, blocks, input.cancelled());
        if (blocks.count() == 0 || models.searched().isEmpty()) {
            Text why = models.doubts().isEmpty()
                    ? SolveTexts.text("envelope.nothing-taken")
                    : Text.joined("; ", models.doubts());
            notes.add(here(SolveTexts.text("envelope.none", why)));
            return Optional.empty();
        }
        return Optional.of(envelope(closed, blocks, models, notes));
    }

    /** Said of this situation alone. */
    private Text here(Text note) {
        return Text.joined(": ", List.of(situation.name(), note));
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

    private SituationEnvelope envelope(ClosedNetwork closed, Blocks blocks, Models models, List<Text> notes) {
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
            Text left = SolveTexts.text("envelope.unsearched", unsearched);
            steps.add(left);
            notes.add(here(left));
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
    private List<Combination> named(Blocks blocks, List<Text> notes) {
        List<Combination> named = new ArrayList<>();
        for (OperatingState state : input.lasting()) {
            if (!situation.holds(state)) {
                continue;
            }
            long on = blocks.running(input.solutions().get(state.id()));
            if (!blocks.allowed().keepsGroups(on)) {
                notes.add(SolveTexts.text("envelope.not-allowed", state.name()));
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
        steps.add(SolveTexts.text(
                "envelope.counts",
                blocks.takers().size(),
                blocks.count(),
                models.searched().size(),
                searchSteps,
                combinations.size()));
        steps.add(
                linear
                        ? SolveTexts.text("envelope.exact")
                        : SolveTexts.text("envelope.bounded", TargetSearch.BOUNDED_STEPS));
        if (models.isPulsed()) {
            steps.add(SolveTexts.text("envelope.pulsed"));
        }
        if (blocks.takers().stream().anyMatch(Taker::isSeen)) {
            steps.add(SolveTexts.text("envelope.inductive"));
        }
        models.doubts().forEach(doubt -> steps.add(SolveTexts.text("envelope.no-bound", doubt)));
    }
}
