package org.ohmloom.size.joint;

import java.util.Arrays;
import java.util.Comparator;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Solves a problem as far as its effort goes. What cannot matter is left out, what hangs together is solved by itself:
 * bound by the {@link Relaxation}, sharpened by the {@link OptionDual}; a choice by {@link Descent}; few parts are searched
 * through by {@link Enumeration}; of more, the part most budgets pass is given each of its options in turn, after which the
 * rest often falls apart and is solved the same way.
 */
final class Search {
    /** Parts of a piece that are searched through at once. */
    private static final int MOST_ENUMERATED = 16;
    /** Parts of a piece that are branched on. */
    private static final int MOST_BRANCHED = 150;
    /** Parts of a piece exchanges are looked for in. */
    private static final int MOST_EXCHANGED = 120;

    private static final long ENUMERATION_STEPS = 200_000;

    /** Steps for each share that solving a piece takes, about. */
    private static final long PIECE_STEPS = 600;

    private final Effort effort;

    private Search(Effort effort) {
        this.effort = effort;
    }

    /**
     * How far a search got.
     *
     * @param choice an option for each part
     * @param cost   what it costs
     * @param bound  no choice costs less than this
     * @param continuous the same with sizes between the listed ones allowed
     */
    record Solved(int[] choice, double cost, double bound, double continuous) {

        /** Whether no choice costs less, but for rounding. */
        boolean isLeast() {
            return bound >= cost * (1 - 10 * JointProblem.SAME);
        }
    }

    /** The best choice found within about so many steps beyond the first; empty when none keeps all budgets. */
    static Optional<Solved> of(JointProblem problem, long steps) {
        return new Search(new Effort(steps)).solve(problem, true);
    }

    private Optional<Solved> solve(JointProblem whole, boolean outset) {
        Optional<Reduction> reduction = Reduction.of(whole);
        if (reduction.isEmpty()) {
            return Optional.empty();
        }
        JointProblem problem = reduction.get().problem();
        int[] choice = new int[problem.parts().size()];
        double alone = 0;
        for (int part = 0; part < choice.length; part++) {
            alone += problem.spentBy(part).isEmpty() ? problem.parts().get(part).cost(0) : 0;
        }
        double bound = alone;
        double continuous = alone;
        for (Division.Piece piece : Division.of(problem)) {
            Optional<Solved> solved = piece(piece.problem(), outset);
            if (solved.isEmpty()) {
                return Optional.empty();
            }
            bound += solved.get().bound();
            continuous += solved.get().continuous();
            for (int k = 0; k < piece.parts().length; k++) {
                choice[piece.parts()[k]] = solved.get().choice()[k];
            }
        }
        return Optional.of(new Solved(reduction.get().original(choice), problem.cost(choice), bound, continuous));
    }

    private Optional<Solved> piece(JointProblem problem, boolean outset) {
        int parts = problem.parts().size();
        effort.spend(PIECE_STEPS * problem.shares());
        DualAscent.Found dual = DualAscent.of(Relaxation.of(problem));
        OptionDual options = new OptionDual(problem);
        Descent descent = new Descent(problem, outset && parts <= MOST_EXCHANGED);
        OptionDual.Priced priced = options.at(dual.prices());
        Optional<int[]> first = descent.from(priced.best()).or(() -> descent.from(dearest(problem)));
        if (first.isEmpty()) {
            return Optional.empty();
        }
        int[] best = first.get();
        priced = options.improved(dual.prices(), problem.cost(best), outset ? 300 : 60);
        best = cheaper(problem, best, descent.from(priced.best()));
        Solved solved = new Solved(
                best,
                problem.cost(best),
                Math.min(problem.cost(best), Math.max(dual.value(), priced.value())),
                Math.min(problem.cost(best), dual.value()));
        if (solved.isLeast()) {
            return Optional.of(solved);
        }
        return Optional.of(
                parts <= MOST_ENUMERATED ? enumerate(problem, priced, solved) : branch(problem, priced, solved));
    }

    private Solved enumerate(JointProblem problem, OptionDual.Priced priced, Solved known) {
        Enumeration.Outcome outcome = Enumeration.below(problem, priced, known.cost(), new Effort(ENUMERATION_STEPS));
        effort.spend(outcome.steps());
        int[] best = outcome.choice().orElse(known.choice());
        Solved solved = new Solved(
                best, problem.cost(best), outcome.complete() ? problem.cost(best) : known.bound(), known.continuous());
        return outcome.complete() ? solved : branch(problem, priced, solved);
    }

    private Solved branch(JointProblem problem, OptionDual.Priced priced, Solved known) {
        if (problem.parts().size() > MOST_BRANCHED || effort.isSpent()) {
            return known;
        }
        int part = mostShared(problem, priced);
        Solved best = known;
        double bound = Double.POSITIVE_INFINITY;
        for (int option : byReducedCost(problem, priced, part)) {
            double least = priced.value() + priced.reduced()[part][option];
            if (least >= best.cost() * (1 - JointProblem.SAME)) {
                bound = Math.min(bound, least);
                continue;
            }
            if (!effort.spend(1)) {
                bound = Math.min(bound, least);
                continue;
            }
            Optional<Solved> rest = solve(Fixing.of(problem, part, option), false);
            if (rest.isPresent()) {
                double own = problem.parts().get(part).cost(option);
                bound = Math.min(bound, Math.max(least, own + rest.get().bound()));
                int[] choice = Fixing.whole(rest.get().choice(), part, option);
                double cost = problem.cost(choice);
                if (cost < best.cost() && problem.isKept(choice)) {
                    best = new Solved(choice, cost, known.bound(), known.continuous());
                }
            }
        }
        return new Solved(
                best.choice(), best.cost(), Math.min(best.cost(), Math.max(known.bound(), bound)), known.continuous());
    }

    /** The part that ties most budgets together; of equals the one that is hardest to decide otherwise. */
    private static int mostShared(JointProblem problem, OptionDual.Priced priced) {
        return IntStream.range(0, problem.parts().size())
                .filter(part -> problem.parts().get(part).options() > 1)
                .boxed()
                .max(Comparator.comparingInt(
                                (Integer part) -> problem.spentBy(part).size())
                        .thenComparingDouble(
                                part -> Arrays.stream(priced.reduced()[part]).sum()))
                .orElse(0);
    }

    private static int[] byReducedCost(JointProblem problem, OptionDual.Priced priced, int part) {
        return IntStream.range(0, problem.parts().get(part).options())
                .boxed()
                .sorted(Comparator.comparingDouble(option -> priced.reduced()[part][option]))
                .mapToInt(Integer::intValue)
                .toArray();
    }

    private static int[] cheaper(JointProblem problem, int[] known, Optional<int[]> other) {
        return other.filter(choice -> problem.cost(choice) < problem.cost(known))
                .orElse(known);
    }

    private static int[] dearest(JointProblem problem) {
        return problem.parts().stream().mapToInt(part -> part.options() - 1).toArray();
    }
}
