package org.ohmloom.review;

import java.util.OptionalDouble;
import java.util.function.Consumer;
import org.ohmloom.graph.BranchKind;
import org.ohmloom.model.Component;
import org.ohmloom.model.ControlUnit;
import org.ohmloom.model.Load;
import org.ohmloom.model.OperatingState;
import org.ohmloom.solve.BranchFlow;
import org.ohmloom.solve.Solution;

/**
 * Every control unit and every load that is asked on gets the least voltage it works at, in every state.
 * <p>On-state voltage. What gets next to nothing is not fed at all, which {@link LoadNotFed} and the states decide; a motor at
 * standstill is not judged.
 */
final class BelowMinimumVolts implements Rule {

    /** What gets less than this share of its least voltage counts as switched off; common practice. */
    private static final double FED_SHARE = 0.1;

    private static final RuleInfo INFO = new RuleInfo("below-minimum-volts", Severity.ERROR);

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public void review(Evidence evidence, Consumer<Finding> report) {
        for (Component component : evidence.harness().components().all()) {
            OptionalDouble least = minimumVolts(component);
            if (least.isPresent()) {
                LoadStates cases = cases(evidence, component, least.getAsDouble());
                if (!cases.isEmpty()) {
                    report.accept(cases.draft(INFO, "gets", false)
                            .volts("least", least.getAsDouble())
                            .build());
                }
            }
        }
    }

    private static OptionalDouble minimumVolts(Component component) {
        if (component.device() instanceof Load load) {
            return load.minimumVolts();
        }
        return component.device() instanceof ControlUnit unit ? unit.minimumVolts() : OptionalDouble.empty();
    }

    private static LoadStates cases(Evidence evidence, Component component, double least) {
        LoadStates cases = new LoadStates(component);
        for (OperatingState state : evidence.harness().states().all()) {
            Solution solution = evidence.solutions().get(state.id());
            if (solution == null || component.device() instanceof Load && !isAsked(state, component)) {
                continue;
            }
            OptionalDouble volts = volts(solution, component);
            if (volts.isPresent()
                    && volts.getAsDouble() >= FED_SHARE * least
                    && Limits.exceeds(least, volts.getAsDouble())) {
                cases.add(state, volts.getAsDouble());
            }
        }
        return cases;
    }

    private static boolean isAsked(OperatingState state, Component component) {
        return state.setting(component.id())
                .filter(setting -> setting.on() && !setting.starting())
                .isPresent();
    }

    private static OptionalDouble volts(Solution solution, Component component) {
        return component.device() instanceof Load
                ? LoadStates.volts(solution, component.id())
                : solution.network().of(component.id()).stream()
                        .filter(branch -> branch.kind() == BranchKind.CONTROL_UNIT)
                        .flatMap(branch -> solution.flow(branch.id()).stream())
                        .mapToDouble(BranchFlow::onDropVolts)
                        .findFirst();
    }
}
