package org.ohmloom.solve;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ohmloom.graph.BranchId;

/** A trial solved through all its moments, and what they add up to. */
final class FullTrial {

    private final Trial trial;
    private final Optional<LevelReadings> readings;
    private final MomentPlan plan;
    private final List<Optional<Tally>> tallies = new ArrayList<>();
    private final List<Optional<LoadMoments>> loadMoments = new ArrayList<>();
    private final List<Optional<MomentRecorder>> recorders = new ArrayList<>();

    /** Solves a trial. */
    FullTrial(Trial trial) {
        this.trial = trial;
        trial.forgive();
        readings = LevelSearch.run(trial);
        plan = new MomentPlan(parts(), trial.solvedBranches());
        int moments = plan.count() + (plan.isSampled() ? 1 : 0);
        for (Optional<Circuit> circuit : trial.circuits()) {
            tallies.add(circuit.map(each -> new Tally(each, trial.clocks(), plan)));
            loadMoments.add(circuit.map(each -> new LoadMoments(each, moments)));
            recorders.add(circuit.map(each -> new MomentRecorder(each, trial.watched(), trial.clocks(), moments)));
        }
        for (int number = 0; number < moments; number++) {
            add(number, moments);
        }
    }

    private List<List<Part>> parts() {
        return trial.levels().map(ChokeLevels::parts).orElseGet(trial::uncut);
    }

    private List<Part> at(int number) {
        return number < plan.count() ? plan.at(number) : coincidence();
    }

    private void add(int number, int moments) {
        List<Part> at = at(number);
        boolean counts = number < plan.count();
        double share = counts ? plan.weight(number) : 0;
        int replicate = counts ? plan.replicate(number) : 0;
        trial.solve(number, moments, at);
        for (int each = 0; each < tallies.size(); each++) {
            int island = each;
            trial.good(island).ifPresent(moment -> {
                tallies.get(island).orElseThrow().add(at, share, replicate, moment);
                loadMoments.get(island).orElseThrow().add(number, moment);
                recorders.get(island).orElseThrow().add(number, at, share, moment);
                List<RippleFlow> ripple = trial.ripple(island, at);
                if (!ripple.isEmpty()) {
                    List<RippleFlow> byClock = RippleFlow.byClock(
                            ripple, trial.levels().orElseThrow().chokes());
                    tallies.get(island).orElseThrow().addRipple(at, share, replicate, byClock);
                }
            });
        }
    }

    /** Every clock where most of its outputs are on: a sample may have missed that they all are. */
    private List<Part> coincidence() {
        List<List<Part>> parts = parts();
        List<Part> at = new ArrayList<>();
        for (int clock = 0; clock < parts.size(); clock++) {
            List<Stretch> stretches = trial.clocks().get(clock).stretches();
            Part most = parts.get(clock).get(0);
            for (Part part : parts.get(clock)) {
                if (stretches.get(part.stretch()).on().size()
                        > stretches.get(most.stretch()).on().size()) {
                    most = part;
                }
            }
            at.add(most);
        }
        return at;
    }

    /** What was taken down of an island moment by moment; empty without power or solution. */
    Optional<MomentRecorder> recorded(int island) {
        return trial.failure(island).isPresent() ? Optional.empty() : recorders.get(island);
    }

    /** The trial. */
    Trial trial() {
        return trial;
    }

    /** The plan of its moments. */
    MomentPlan plan() {
        return plan;
    }

    /** What the last pass of the search for levels showed. */
    Optional<LevelReadings> readings() {
        return readings;
    }

    /** What the moments of a powered island add up to. */
    Optional<Tally> tally(int island) {
        return tallies.get(island);
    }

    /** The moment by which the drop of each load of an island is judged. */
    Map<BranchId, OnMoment> onMoments(int island) {
        Circuit circuit = trial.circuits().get(island).orElseThrow();
        Tally tally = tallies.get(island).orElseThrow();
        LoadMoments moments = loadMoments.get(island).orElseThrow();
        Map<Integer, OnMoment> solved = new HashMap<>();
        Map<BranchId, OnMoment> byLoad = new HashMap<>();
        for (int load = 0; load < moments.loads().size(); load++) {
            int branch = moments.loads().get(load);
            int worst = moments.worst(load, tally.meanAmps(branch).value() < 0 ? -1 : 1);
            OnMoment moment = solved.computeIfAbsent(worst, number -> {
                trial.solveAgain(number, at(number));
                return trial.good(island)
                        .map(result -> OnMoment.of(circuit, result))
                        .orElse(new OnMoment(Map.of(), Map.of()));
            });
            byLoad.put(circuit.branches().get(branch).id(), moment);
        }
        return byLoad;
    }

    /**
     * Mean of V(from) - V(to) of a branch, V; 0 without power.
     *
     * @return empty where the island could not be solved
     */
    OptionalDouble meanVolts(BranchId branch) {
        Optional<Integer> island = trial.islandOf(branch);
        if (island.isEmpty() || tallies.get(island.get()).isEmpty()) {
            return OptionalDouble.of(0);
        }
        if (trial.failure(island.get()).isPresent()) {
            return OptionalDouble.empty();
        }
        Tally tally = tallies.get(island.get()).orElseThrow();
        int number = tally.circuit().number(branch);
        return OptionalDouble.of(
                tally.circuit().along(number, tally.meanVolts()).value());
    }
}
