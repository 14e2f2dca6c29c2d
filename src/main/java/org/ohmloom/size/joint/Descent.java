package org.ohmloom.size.joint;

import java.util.Arrays;
import java.util.Comparator;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * A good choice without proof: from the best options at some prices, budgets that are overspent are relieved where it
 * costs least; then every part gives back what it can, largest saving first; then one part a size up lets others go down.
 */
final class Descent {
    private final JointProblem problem;
    private final boolean exchange;

    /** A descent; exchanges are looked for when it is asked for them, which takes the square of the parts of a budget. */
    Descent(JointProblem problem, boolean exchange) {
        this.problem = problem;
        this.exchange = exchange;
    }

    /** A choice that keeps all budgets, from a start; empty when the dearest options do not keep them either. */
    Optional<int[]> from(int[] start) {
        Ledger ledger = new Ledger(problem, start);
        if (!relieve(ledger)) {
            return Optional.empty();
        }
        giveBack(ledger, -1);
        for (int round = 0; exchange && round < 10 && exchange(ledger); round++) {
            giveBack(ledger, -1);
        }
        return Optional.of(ledger.choice());
    }

    private boolean relieve(Ledger ledger) {
        for (int budget = 0; budget < problem.budgets().size(); budget++) {
            while (ledger.excess(budget) > 0) {
                int part = -1;
                int option = -1;
                double best = 0;
                for (Share share : problem.budgets().get(budget).shares()) {
                    Part each = problem.parts().get(share.part());
                    int present = ledger.option(share.part());
                    for (int next = present + 1; next < each.options(); next++) {
                        double extra = each.cost(next) - each.cost(present);
                        double worth = ledger.relief(share.part(), next) / Math.max(extra, Double.MIN_NORMAL);
                        if (worth > best) {
                            best = worth;
                            part = share.part();
                            option = next;
                        }
                    }
                }
                if (part < 0) {
                    return false;
                }
                ledger.set(part, option);
            }
        }
        return true;
    }

    /** Takes the cheapest option each part can have with the others as they are; that part not. */
    private double giveBack(Ledger ledger, int notThis) {
        return giveBack(ledger, IntStream.range(0, problem.parts().size()).toArray(), notThis);
    }

    private double giveBack(Ledger ledger, int[] parts, int notThis) {
        Integer[] order = Arrays.stream(parts).boxed().toArray(Integer[]::new);
        Arrays.sort(order, Comparator.comparingDouble(part -> -stepCost(ledger, part)));
        double saved = 0;
        for (int part : order) {
            Part each = problem.parts().get(part);
            int present = ledger.option(part);
            for (int option = 0; part != notThis && option < present; option++) {
                if (each.cost(option) < each.cost(present) && ledger.allows(part, option)) {
                    saved += each.cost(present) - each.cost(option);
                    ledger.set(part, option);
                    break;
                }
            }
        }
        return saved;
    }

    private double stepCost(Ledger ledger, int part) {
        int option = ledger.option(part);
        Part each = problem.parts().get(part);
        return option == 0 ? 0 : each.cost(option) - each.cost(option - 1);
    }

    /** One part dearer where others then save more than it costs; whether there was one. */
    private boolean exchange(Ledger ledger) {
        boolean found = false;
        for (int part = 0; part < problem.parts().size(); part++) {
            Part each = problem.parts().get(part);
            int[] others = neighbours(part);
            for (int option = ledger.option(part) + 1; option < each.options(); option++) {
                int before = ledger.option(part);
                int[] old = IntStream.of(others).map(ledger::option).toArray();
                ledger.set(part, option);
                double saved = giveBack(ledger, others, part);
                if (saved > (each.cost(option) - each.cost(before)) * (1 + JointProblem.SAME)) {
                    found = true;
                } else {
                    for (int k = 0; k < others.length; k++) {
                        ledger.set(others[k], old[k]);
                    }
                    ledger.set(part, before);
                }
            }
        }
        return found;
    }

    private int[] neighbours(int part) {
        return problem.spentBy(part).stream()
                .flatMap(each -> problem.budgets().get(each.budget()).shares().stream())
                .mapToInt(Share::part)
                .filter(other -> other != part)
                .distinct()
                .sorted()
                .toArray();
    }
}
