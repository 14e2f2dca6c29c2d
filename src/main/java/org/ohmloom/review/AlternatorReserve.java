package org.ohmloom.review;

import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.OperatingState;
import org.ohmloom.solve.charge.AlternatorBalance;
import org.ohmloom.solve.charge.LoadTabulation;

/**
 * Continuous loads take at most 80 % of what the alternators give in a state.
 * <p>A warning by aircraft practice, where the rule is from; a note by any other. States in which the battery must help are
 * left to {@link BatteryDischargesWhileRunning}. Reported once, with the state that takes the largest share.
 */
final class AlternatorReserve implements Rule {

    private static final String AIRCRAFT = "ac-43.13-1b";

    private static final RuleInfo INFO = new RuleInfo("alternator-reserve", Severity.WARNING);

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
        List<OperatingState> states = evidence.harness().states().all().stream()
                .filter(BatteryDischargesWhileRunning::lasts)
                .filter(state -> breaks(evidence, state))
                .toList();
        states.stream()
                .max(Comparator.comparingDouble(
                        state -> evidence.charge().tabulations().get(state.id()).shareFraction()))
                .ifPresent(worst -> report.accept(finding(evidence, worst, states)));
    }

    private static boolean breaks(Evidence evidence, OperatingState state) {
        LoadTabulation table = evidence.charge().tabulations().get(state.id());
        return table != null
                && table.limitAmps() > 0
                && evidence.charge().states().get(state.id()).dischargeAmps() == 0
                && Limits.exceeds(table.continuousAmps(), table.allowedAmps());
    }

    private static Finding finding(Evidence evidence, OperatingState worst, List<OperatingState> states) {
        LoadTabulation table = evidence.charge().tabulations().get(worst.id());
        List<ComponentId> alternators = evidence.charge().states().get(worst.id()).alternators().stream()
                .map(AlternatorBalance::alternator)
                .toList();
        boolean aircraft = evidence.basis().id().equals(AIRCRAFT);
        return new FindingDraft(INFO, "takes")
                .word("state", StateNames.worstOf(worst, states.size()))
                .word("alternators", Listing.of(alternators, 40))
                .amps("load", table.continuousAmps())
                .amps("limit", table.limitAmps())
                .amps("allowed", table.allowedAmps())
                .severity(aircraft ? Severity.WARNING : Severity.NOTE)
                .subjects(alternators)
                .highlight(states.stream().map(OperatingState::id).toList())
                .build();
    }
}
