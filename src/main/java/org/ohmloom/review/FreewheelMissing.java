package org.ohmloom.review;

import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Consumer;
import org.ohmloom.graph.BranchId;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.OperatingState;
import org.ohmloom.solve.Ripple;
import org.ohmloom.solve.Solution;
import org.ohmloom.units.Unit;

/**
 * An inductive load that is switched at a duty has a way for its current while its output is off.
 * <p>Its current is then taken to break off. Silent for a load whose inductance is not entered; the assumptions of the analysis say so.
 */
final class FreewheelMissing implements Rule {

    private static final RuleInfo INFO = new RuleInfo("freewheel-missing", Severity.ERROR);

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public void review(Evidence evidence, Consumer<Finding> report) {
        SortedMap<BranchId, Ripple> worst = new TreeMap<>();
        SortedMap<BranchId, OperatingState> states = new TreeMap<>();
        for (OperatingState state : evidence.harness().states().all()) {
            Solution solution = evidence.solutions().get(state.id());
            if (solution != null) {
                solution.duty().ripples().forEach((load, ripple) -> {
                    Ripple before = worst.get(load);
                    if (!ripple.hasFreewheel() && (before == null || ripple.peakAmps() > before.peakAmps())) {
                        worst.put(load, ripple);
                        states.put(load, state);
                    }
                });
            }
        }
        worst.forEach((load, ripple) -> report.accept(new FindingDraft(INFO, "breaks-off")
                .word("load", load.value())
                .word("state", StateNames.quoted(states.get(load)))
                .amps("current", ripple.peakAmps())
                .value("energy", ripple.brokenJoules(), Unit.JOULE)
                .subject(new ComponentId(load.value()))
                .build()));
    }
}
