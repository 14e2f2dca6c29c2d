package org.ohmloom.review;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.ohmloom.graph.Branch;
import org.ohmloom.graph.BranchKind;
import org.ohmloom.model.Component;
import org.ohmloom.model.Load;
import org.ohmloom.model.OperatingState;
import org.ohmloom.model.Setting;
import org.ohmloom.solve.BranchFlow;
import org.ohmloom.solve.Solution;

/**
 * A load that a state asks on gets its voltage.
 * <p>Reported when less than {@link #FED_SHARE} of the rated voltage is at its terminals while every output is on.
 */
final class LoadNotFed implements Rule {

    /** Share of the rated voltage below which a load counts as not fed. Common practice, no source. */
    static final double FED_SHARE = 0.5;

    private static final RuleInfo INFO = new RuleInfo(
            "load-not-fed",
            "A load is asked on but not fed",
            Severity.ERROR,
            "Operating states of this harness; half the rated voltage as the limit is common practice, no source",
            "A switch, fuse, relay or output on its way is off in that state, or a wire is missing.",
            "Set on what feeds it in that state, or join what is missing.");

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public void review(Evidence evidence, Consumer<Finding> report) {
        for (OperatingState state : evidence.harness().states().all()) {
            Solution solution = evidence.solutions().get(state.id());
            for (Component component : evidence.harness().components().all()) {
                Optional<Setting> setting = state.setting(component.id()).filter(Setting::on);
                if (solution == null || setting.isEmpty() || !(component.device() instanceof Load load)) {
                    continue;
                }
                double volts = voltsAt(solution, component);
                boolean fed = setting.get().starting()
                        ? volts > 0
                        : volts >= FED_SHARE * load.draw().ratedVolts();
                if (!fed) {
                    report.accept(new FindingDraft(
                                    INFO, "{name} ({load}) is asked on in {state} but gets {volts} of its {rated}.")
                            .word("name", component.name())
                            .word("load", component.id())
                            .word("state", StateNames.quoted(state))
                            .volts("volts", volts)
                            .volts("rated", load.draw().ratedVolts())
                            .subject(component.id())
                            .highlight(List.of(state.id()))
                            .build());
                }
            }
        }
    }

    /** On-state voltage at a load's terminals, V; 0 where it is undefined. */
    static double voltsAt(Solution solution, Component component) {
        for (Branch branch : solution.network().of(component.id())) {
            if (branch.kind() == BranchKind.LOAD && solution.islandOf().containsKey(branch.from())) {
                boolean known = solution.volts(branch.from()).isPresent()
                        && solution.volts(branch.to()).isPresent();
                return known
                        ? solution.flow(branch.id())
                                .map(BranchFlow::onDropVolts)
                                .orElse(0.0)
                        : 0;
            }
        }
        return 0;
    }
}
