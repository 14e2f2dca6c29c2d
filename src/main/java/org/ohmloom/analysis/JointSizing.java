package org.ohmloom.analysis;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireId;
import org.ohmloom.size.ConductorChoice;
import org.ohmloom.size.ConductorChooser;
import org.ohmloom.size.JointModel;
import org.ohmloom.size.JointScope;
import org.ohmloom.size.LoadBudget;
import org.ohmloom.size.ProvisionalSizes;
import org.ohmloom.size.SizeFreedom;
import org.ohmloom.units.Gauge;
import org.ohmloom.words.Text;

/**
 * Chooses the open sizes together and has each choice verified by the full analysis.
 *
 * <p>Open are wires without a size, wires that need a larger one by themselves, and, where a load cannot keep its budget
 * otherwise, all wires on its way that may grow; if even that does not do, sizes their contacts do not take. At the
 * currents of one solution the best sizes are chosen; with them the states are solved anew; where a budget is overspent
 * after all, since currents and temperatures moved, something is withheld from it and the choice repeated at the new
 * currents. What each wire needs by itself is where it begins and what it falls back to, so the result is never worse.
 */
final class JointSizing {
    private static final int MOST_ROUNDS = 6;
    /** Rounds when many wires are open. */
    private static final int FEW_ROUNDS = 1;

    private static final int MANY_OPEN = 1000;
    /** Share of what a budget was overspent by that is withheld from it next time. */
    private static final double WITHHELD_SHARE = 0.5;

    /** Share of a budget the model may be out by. */
    private static final double NEARLY_SHARE = 0.001;

    private static final double SAME = 1e-9;

    private final Bench bench;
    private final Protection protection;
    private final SizesByWire entered;
    private final ConductorChooser enteredChooser;
    private final SortedMap<WireId, ConductorChoice> byThemselves;
    private final List<Text> steps = new ArrayList<>();

    private JointSizing(Bench bench, Protection protection, SizesByWire entered) {
        this.bench = bench;
        this.protection = protection;
        this.entered = entered;
        this.enteredChooser = chooser(entered);
        this.byThemselves = entered.choices(bench, protection);
    }

    /** Chooses, beginning with the sizes entered and, for wires without one, what each needs by itself. */
    static JointSized of(Bench bench, Protection protection, SizesByWire entered) {
        return new JointSizing(bench, protection, entered).run();
    }

    private ConductorChooser chooser(SizesByWire solved) {
        return solved.chooser(bench, protection);
    }

    private JointSized run() {
        SizesByWire alone = EachByItself.of(bench, protection, entered, byThemselves);
        ConductorChooser chooser = alone == entered ? enteredChooser : chooser(alone);
        Set<WireId> open = open(alone);
        JointScope scope = new JointScope(open, true, Set.of());
        JointTrial first = JointTrial.of(alone, chooser, scope);
        Optional<JointModel.Chosen> chosen = chosen(first);
        List<String> stuck = stuck(first, chosen);
        if (!stuck.isEmpty()) {
            Set<WireId> all = mayChange();
            Set<WireId> onWays = new JointModel(chooser, alone.sizes(), new JointScope(all, true, all)).wiresOf(stuck);
            if (open.addAll(onWays)) {
                scope = new JointScope(open, true, Set.of());
                first = JointTrial.of(alone, chooser, scope);
                chosen = chosen(first);
            }
            if (!stuck(first, chosen).isEmpty() && !onWays.isEmpty()) {
                scope = new JointScope(open, true, onWays);
                first = JointTrial.of(alone, chooser, scope);
                chosen = chosen(first);
            }
        }
        return rounds(alone, first, chosen, scope);
    }

    private static Optional<JointModel.Chosen> chosen(JointTrial trial) {
        return trial.model().isOpen() ? Optional.of(trial.model().choose(Map.of())) : Optional.empty();
    }

    private static List<String> stuck(JointTrial trial, Optional<JointModel.Chosen> chosen) {
        return chosen.map(each -> each.answer().unmet())
                .orElseGet(() ->
                        trial.overspent(List.of()).stream().map(LoadBudget::id).toList());
    }

    private Set<WireId> mayChange() {
        Set<WireId> all = new TreeSet<>();
        bench.harness().wires().all().stream().filter(SizeFreedom::mayChange).forEach(wire -> all.add(wire.id()));
        return all;
    }

    /** Wires without a size, and those that need a larger one by themselves. */
    private Set<WireId> open(SizesByWire alone) {
        Set<WireId> open = mayChange();
        open.removeIf(id -> {
            Wire wire = bench.harness().wires().get(id);
            return wire.gauge().isPresent()
                    && alone.sizes().gauge(wire).equals(wire.gauge().get());
        });
        return open;
    }

    private JointSized rounds(
            SizesByWire alone, JointTrial first, Optional<JointModel.Chosen> start, JointScope scope) {
        JointReport report =
                new JointReport(bench, entered, alone, steps, first.model().isPrice());
        if (start.isEmpty()) {
            return new JointSized(entered.sizes(), entered.heated(), report.nothingOpen(first), byThemselves);
        }
        JointModel.Chosen chosen = start.get();
        List<String> unmet = chosen.answer().unmet();
        Map<String, Double> withheld = new HashMap<>();
        Optional<JointTrial> best =
                first.objections(unmet, alone.heated()).isEmpty() ? Optional.of(first) : Optional.empty();
        JointModel.Chosen bestChosen = chosen;
        boolean probing = false;
        int most = first.model().present().size() > MANY_OPEN ? FEW_ROUNDS : MOST_ROUNDS;
        for (int round = 1; round <= most; round++) {
            bench.cancel().check();
            double cost = first.model().cost(chosen.sizes());
            if (best.isPresent() && cost >= costOf(first, best.get()) * (1 - SAME)) {
                steps.add(report.nothingLess(round, chosen, withheld.isEmpty()));
                Optional<JointModel.Chosen> near =
                        probing || most == FEW_ROUNDS ? Optional.empty() : nearlyKept(best.get());
                if (near.isEmpty()
                        || first.model().cost(near.get().sizes()) >= costOf(first, best.get()) * (1 - SAME)) {
                    break;
                }
                probing = true;
                chosen = near.get();
            }
            JointTrial trial = tried(alone, chosen.sizes(), scope);
            List<Text> objections = trial.objections(unmet, alone.heated());
            steps.add(report.round(round, chosen, objections, probing));
            if (objections.isEmpty()) {
                best = Optional.of(trial);
                probing = false;
                withheld.clear();
            } else if (probing) {
                break;
            } else {
                trial.overspent(unmet)
                        .forEach(budget ->
                                withheld.merge(budget.id(), -budget.leftVolts() * WITHHELD_SHARE, Double::sum));
            }
            chosen = trial.model().choose(withheld);
            if (objections.isEmpty()) {
                bestChosen = chosen;
            }
        }
        return report.finished(best, first, bestChosen, unmet, byThemselves, this::solvedAsEntered);
    }

    /** The best sizes with every budget a little larger: what the model takes for just too much may do after all. */
    private static Optional<JointModel.Chosen> nearlyKept(JointTrial best) {
        Map<String, Double> added = new HashMap<>();
        best.model().budgets().forEach(budget -> added.put(budget.id(), -budget.limitVolts() * NEARLY_SHARE));
        return Optional.of(best.model().choose(added));
    }

    private static double costOf(JointTrial first, JointTrial trial) {
        return first.model().cost(trial.model().present());
    }

    private JointTrial tried(SizesByWire alone, SortedMap<WireId, Gauge> sizes, JointScope scope) {
        ProvisionalSizes changed = alone.sizes().with(sizes);
        SizesByWire solved = new SizesByWire(changed, HeatedSolutions.solve(bench, changed));
        return JointTrial.of(solved, chooser(solved), scope);
    }

    /** The harness as it is entered, with the sizes chosen for the wires that have none. */
    private SizesByWire solvedAsEntered(JointTrial best) {
        SortedMap<WireId, Gauge> unsized = new TreeMap<>(best.model().present());
        boolean grown = unsized.keySet()
                .removeIf(id -> bench.harness().wires().get(id).gauge().isPresent());
        if (!grown) {
            return new SizesByWire(best.sizes(), best.heated());
        }
        ProvisionalSizes sizes = entered.sizes().with(unsized);
        return unsized.isEmpty() ? entered : new SizesByWire(sizes, HeatedSolutions.solve(bench, sizes));
    }
}
