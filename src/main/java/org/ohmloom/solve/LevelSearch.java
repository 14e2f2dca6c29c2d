package org.ohmloom.solve;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ohmloom.graph.Branch;
import org.ohmloom.graph.BranchId;

/**
 * Goes over all moments again and again until the levels of inductive loads and capacitors cause the voltages they follow
 * from.
 */
final class LevelSearch {

    private static final int MOST_PASSES = 60;

    /** Miss of the voltages at which the search ends, as a share of the highest voltage. */
    private static final double SETTLED_RATIO = 1e-10;

    /** Miss that is still a solution when the search gets no nearer. */
    private static final double NEARLY_SETTLED_RATIO = 1e-6;

    /** The same where a sample of the moments stands for all of them and moves with the levels. */
    private static final double SAMPLED_RATIO = 1e-4;

    private static final double SAMPLED_NEARLY_RATIO = 1e-2;

    private final Trial trial;
    private final List<Branch> stores;

    private LevelSearch(Trial trial) {
        this.trial = trial;
        stores = trial.branches().stream()
                .filter(branch -> Characteristics.isStore(branch.law()))
                .filter(branch -> trial.circuitOf(branch.id()).isPresent())
                .toList();
    }

    /**
     * Finds the levels and makes the trial use them.
     *
     * @return what the last pass showed; empty when nothing keeps energy from one moment to the next
     */
    static Optional<LevelReadings> run(Trial trial) {
        LevelSearch search = new LevelSearch(trial);
        if (search.stores.isEmpty() || trial.clocks().isEmpty()) {
            return Optional.empty();
        }
        trial.roughly(true);
        Optional<LevelReadings> again = search.again();
        Optional<LevelReadings> found = again.isPresent() ? again : search.afresh();
        trial.roughly(false);
        return found;
    }

    /** From the levels of a trial before with the same loads and clocks; empty where that leads nowhere. */
    private Optional<LevelReadings> again() {
        Optional<ChokeLevels> before = trial.remembered().filter(each -> each.isOf(stores, trial.clocks()));
        if (before.isEmpty()) {
            return Optional.empty();
        }
        ChokeLevels levels = before.get().begunAnew();
        trial.use(levels);
        Optional<LevelReadings> seen = settle(levels);
        if (seen.isEmpty() || trial.hasFailed()) {
            trial.forgive();
            trial.useNone();
            return Optional.empty();
        }
        return seen;
    }

    private Optional<LevelReadings> afresh() {
        ChokeLevels levels = new ChokeLevels(stores, resting(), trial.clocks());
        if (levels.isEmpty()) {
            return Optional.empty();
        }
        trial.use(levels);
        Optional<LevelReadings> seen = settle(levels);
        if (seen.isEmpty()) {
            giveUp(levels);
        }
        return seen.or(() -> Optional.of(levels.readings()));
    }

    private Map<BranchId, ClockReading> resting() {
        Map<BranchId, ClockReading> resting = new HashMap<>();
        stores.forEach(branch -> resting.put(branch.id(), new ClockReading(trial.clocks())));
        MomentPlan plan = new MomentPlan(trial.uncut(), trial.solvedBranches());
        for (int number = 0; number < plan.count(); number++) {
            List<Part> at = plan.at(number);
            double share = plan.weight(number);
            trial.solve(number, plan.count(), at);
            resting.forEach(
                    (branch, reading) -> trial.reading(branch).ifPresent(each -> reading.add(at, share, each.volts())));
        }
        // loads at rest draw more than behind an output that chops: what fails here may well have a solution
        trial.forgive();
        return resting;
    }

    /** What the last pass showed; empty when the search did not settle. */
    private Optional<LevelReadings> settle(ChokeLevels levels) {
        for (int pass = 1; ; pass++) {
            MomentPlan plan = new MomentPlan(levels.parts(), trial.solvedBranches());
            LevelReadings seen = levels.readings();
            for (int number = 0; number < plan.count(); number++) {
                List<Part> at = plan.at(number);
                trial.solve(number, plan.count(), at);
                read(levels, seen, at, plan.weight(number));
            }
            double miss = levels.move(seen) / levels.scaleVolts();
            if (miss <= (plan.isSampled() ? SAMPLED_RATIO : SETTLED_RATIO)) {
                return Optional.of(seen);
            }
            if (pass == MOST_PASSES) {
                return miss > (plan.isSampled() ? SAMPLED_NEARLY_RATIO : NEARLY_SETTLED_RATIO)
                        ? Optional.empty()
                        : Optional.of(seen);
            }
        }
    }

    private void read(ChokeLevels levels, LevelReadings seen, List<Part> at, double share) {
        for (int number = 0; number < seen.chokes().size(); number++) {
            ChokeReading reading = seen.chokes().get(number);
            trial.reading(levels.chokes().get(number).id())
                    .ifPresent(each -> reading.add(at, share, each.volts(), each.amps()));
        }
        for (int number = 0; number < seen.reservoirs().size(); number++) {
            ClockReading reading = seen.reservoirs().get(number);
            trial.reading(levels.reservoirs().get(number).id()).ifPresent(each -> reading.add(at, share, each.amps()));
        }
        for (int island = 0; island < trial.circuits().size(); island++) {
            for (RippleFlow ripple : trial.ripple(island, at)) {
                BranchId id = levels.chokes().get(ripple.choke()).id();
                int branch = trial.circuits().get(island).orElseThrow().number(id);
                seen.chokes().get(ripple.choke()).addRipple(at, share, ripple.volts()[branch]);
            }
        }
    }

    private void giveUp(ChokeLevels levels) {
        for (Choke choke : levels.chokes()) {
            Circuit circuit = trial.circuitOf(choke.id()).orElseThrow();
            Branch branch = circuit.branches().get(circuit.number(choke.id()));
            trial.fail(trial.islandOf(choke.id()).orElseThrow(), Failure.restless(branch));
        }
    }
}
