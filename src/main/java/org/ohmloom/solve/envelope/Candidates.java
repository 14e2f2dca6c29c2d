package org.ohmloom.solve.envelope;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Chooses which of the combinations that win somewhere are worth a full solution.
 *
 * <p>The models say what every current and drop is in every one of them. One after another the combination is taken that
 * makes up most of what the worst found so far still lacks, summed over all branches and loads as a share of their own
 * worst; until nothing lacks more than {@link #LACK_RATIO}, or the number is up.
 */
final class Candidates {
    /** A worst that lacks a smaller share of what the models expect is good enough. */
    static final double LACK_RATIO = 1e-4;

    private final List<TargetSearch.Model> models;
    private final List<Wanted> wanted = new ArrayList<>();
    private final Set<Long> combinations = new LinkedHashSet<>();

    /** A sum that is to be large, with how many branches share it. */
    private record Wanted(List<Optional<Functional>> sums, boolean eitherWay, long required, int members) {}

    Candidates(List<TargetSearch.Model> models) {
        this.models = models;
    }

    /** Adds what a search found for a sum. */
    void add(
            List<Optional<Functional>> sums, boolean eitherWay, long required, int members, TargetSearch.Result found) {
        List<Long> best = List.copyOf(found.best());
        if (!best.isEmpty()) {
            combinations.add(best.get(best.size() - 1));
            wanted.add(new Wanted(sums, eitherWay, required, members));
        }
    }

    /** The combinations to solve, the most useful first. */
    List<Long> chosen(int most) {
        List<Long> all = List.copyOf(combinations);
        double[][] values = new double[wanted.size()][all.size()];
        for (int combination = 0; combination < all.size(); combination++) {
            evaluate(all.get(combination), combination, values);
        }
        double[] best = new double[wanted.size()];
        for (int target = 0; target < best.length; target++) {
            for (double value : values[target]) {
                best[target] = Math.max(best[target], value);
            }
        }
        double[] reached = new double[wanted.size()];
        List<Long> chosen = new ArrayList<>();
        while (chosen.size() < most) {
            int next = -1;
            double nextGain = 0;
            for (int combination = 0; combination < all.size(); combination++) {
                double gain = 0;
                for (int target = 0; target < best.length; target++) {
                    double more = Math.min(best[target], values[target][combination]) - reached[target];
                    if (more > LACK_RATIO * best[target]) {
                        gain += wanted.get(target).members * more / best[target];
                    }
                }
                if (gain > nextGain) {
                    next = combination;
                    nextGain = gain;
                }
            }
            if (next < 0) {
                break;
            }
            for (int target = 0; target < best.length; target++) {
                reached[target] = Math.max(reached[target], values[target][next]);
            }
            chosen.add(all.get(next));
        }
        return chosen;
    }

    /** What the models say of one combination; 0 where none of them holds for it. */
    private void evaluate(long on, int combination, double[][] values) {
        for (int number = 0; number < models.size(); number++) {
            TargetSearch.Model model = models.get(number);
            double[] amps = model.box().amps(on);
            if (!model.conditions().stream().allMatch(condition -> condition.at(amps) >= -ModelObjective.KEPT)) {
                continue;
            }
            for (int target = 0; target < wanted.size(); target++) {
                Wanted each = wanted.get(target);
                Optional<Functional> sum = each.sums.get(number);
                if (sum.isPresent() && (each.required & on) == each.required) {
                    double value = sum.get().at(amps);
                    values[target][combination] =
                            Math.max(values[target][combination], each.eitherWay ? Math.abs(value) : value);
                }
            }
        }
    }
}
