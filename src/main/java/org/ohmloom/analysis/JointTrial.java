package org.ohmloom.analysis;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import org.ohmloom.model.StateId;
import org.ohmloom.model.WireId;
import org.ohmloom.size.ConductorChooser;
import org.ohmloom.size.JointModel;
import org.ohmloom.size.JointScope;
import org.ohmloom.size.LoadBudget;
import org.ohmloom.size.ProvisionalSizes;
import org.ohmloom.solve.IslandStatus;
import org.ohmloom.solve.Solution;
import org.ohmloom.units.Formats;
import org.ohmloom.words.Text;

/**
 * Sizes for all open wires, tried by the full analysis: the states solved with them, conductors at temperature.
 *
 * @param sizes   the sizes
 * @param heated  the states solved with them
 * @param chooser what each wire needs at their currents
 * @param model   the problem at their currents
 */
record JointTrial(ProvisionalSizes sizes, HeatedSolutions heated, ConductorChooser chooser, JointModel model) {

    /** The trial of some sizes. */
    static JointTrial of(SizesByWire solved, ConductorChooser chooser, JointScope scope) {
        return new JointTrial(solved.sizes(), solved.heated(), chooser, new JointModel(chooser, solved.sizes(), scope));
    }

    /** Budgets that are overspent though they need not be. */
    List<LoadBudget> overspent(List<String> unmet) {
        return model.budgets().stream()
                .filter(budget -> !budget.isKept() && !unmet.contains(budget.id()))
                .sorted(Comparator.comparingDouble(LoadBudget::leftVolts))
                .toList();
    }

    /** What speaks against these sizes, in words; nothing when they are verified. */
    List<Text> objections(List<String> unmet, HeatedSolutions before) {
        List<Text> objections = new ArrayList<>();
        List<LoadBudget> overspent = overspent(unmet);
        if (!overspent.isEmpty()) {
            objections.add(JointTexts.text(
                    "overspent",
                    overspent.size(),
                    overspent.get(0).id(),
                    Formats.volts(-overspent.get(0).leftVolts())));
        }
        List<WireId> unfit = model.unfit();
        if (!unfit.isEmpty()) {
            objections.add(JointTexts.text("unfit", unfit.size(), unfit.get(0)));
        }
        if (worse(heated.solutions(), before.solutions())) {
            objections.add(JointTexts.text("unsolved"));
        }
        return objections;
    }

    private static boolean worse(SortedMap<StateId, Solution> now, Map<StateId, Solution> before) {
        return now.entrySet().stream().anyMatch(entry -> {
            IslandStatus was = before.get(entry.getKey()).status();
            return entry.getValue().status().compareTo(was) > 0;
        });
    }
}
