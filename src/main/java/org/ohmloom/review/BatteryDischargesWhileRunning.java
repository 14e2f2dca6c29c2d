package org.ohmloom.review;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.OperatingState;
import org.ohmloom.model.OperatingState.EngineMode;
import org.ohmloom.solve.charge.AlternatorBalance;
import org.ohmloom.solve.charge.BatteryBalance;
import org.ohmloom.solve.charge.StateCharge;
import org.ohmloom.units.Unit;

/**
 * With the engine running in a state that lasts, the alternators feed everything.
 * <p>A state lasts when it states no duration or one of at least {@link #LASTING_SECONDS}. States without an alternator that
 * is on are left alone: then the battery is meant to feed. Reported once, with the state that takes the most.
 */
final class BatteryDischargesWhileRunning implements Rule {

    /** A state this long is meant to last, s: 5 min, the middle window of a load analysis. */
    static final double LASTING_SECONDS = 300;

    private static final RuleInfo INFO = new RuleInfo("battery-discharges-while-running", Severity.WARNING);

    /** A state in which batteries give. */
    private record Case(OperatingState state, StateCharge charge) {}

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public Set<StudyPart> needs() {
        return Set.of(StudyPart.CHARGE);
    }

    @Override
    public void review(Evidence evidence, Consumer<Finding> report) {
        List<Case> cases = new ArrayList<>();
        for (OperatingState state : evidence.harness().states().all()) {
            StateCharge charge = evidence.charge().states().get(state.id());
            if (charge != null
                    && lasts(state)
                    && charge.dischargeAmps() > 0
                    && !charge.alternators().isEmpty()) {
                cases.add(new Case(state, charge));
            }
        }
        cases.stream()
                .max(Comparator.comparingDouble(each -> each.charge().dischargeAmps()))
                .ifPresent(worst -> report.accept(finding(worst, cases)));
    }

    /** Whether a state with the engine running is meant to last. */
    static boolean lasts(OperatingState state) {
        boolean turns = state.mode() == EngineMode.IDLING || state.mode() == EngineMode.RUNNING;
        return turns && state.durationSeconds().orElse(LASTING_SECONDS) >= LASTING_SECONDS;
    }

    private static Finding finding(Case worst, List<Case> cases) {
        List<ComponentId> alternators = worst.charge().alternators().stream()
                .map(AlternatorBalance::alternator)
                .toList();
        List<ComponentId> batteries = worst.charge().batteries().stream()
                .filter(BatteryBalance::discharges)
                .map(BatteryBalance::battery)
                .toList();
        double given = worst.charge().alternators().stream()
                .mapToDouble(AlternatorBalance::amps)
                .sum();
        return new FindingDraft(INFO, "gives")
                .word("state", StateNames.worstOf(worst.state(), cases.size()))
                .word("alternators", Listing.of(alternators, 40))
                .word("batteries", Listing.of(batteries, 40))
                .amps("given", given)
                .amps("limit", worst.charge().limitAmps())
                .value("rest", worst.charge().dischargeAmps(), Unit.AMP)
                .subjects(alternators)
                .subjects(batteries)
                .highlight(cases.stream().map(each -> each.state().id()).toList())
                .build();
    }
}
