package org.ohmloom.review;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import org.ohmloom.model.Component;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.Load;
import org.ohmloom.model.OperatingState;
import org.ohmloom.model.Setting;
import org.ohmloom.solve.Solution;

/**
 * A load that a state asks on gets its voltage.
 * <p>Reported once for a load, with its worst state, when less than {@link #FED_SHARE} of the rated voltage is at its
 * terminals in its own on-state; for a motor at standstill, which pulls its own voltage down, less than {@link
 * #STARTING_SHARE}. Silent where another rule tells more: for a load without a return ({@link NoReturnPath}), where the
 * network has no solution ({@link SolutionIncomplete}), and without any source ({@link NotChecked}).
 */
final class LoadNotFed implements Rule {

    /** Share of the rated voltage below which a load counts as not fed. Common practice, no source. */
    static final double FED_SHARE = 0.5;

    /** The same for a motor at standstill. Common practice, no source. */
    static final double STARTING_SHARE = 0.1;

    private static final RuleInfo INFO = new RuleInfo("load-not-fed", Severity.ERROR);

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public void review(Evidence evidence, Consumer<Finding> report) {
        if (evidence.harness().components().all().stream()
                .noneMatch(each -> each.device().isSource())) {
            return;
        }
        ReturnWays ways = ReturnWays.of(evidence.drawn());
        for (Component component : evidence.harness().components().all()) {
            if (component.device() instanceof Load load && !ways.isStranded(component.id())) {
                LoadStates cases = cases(evidence, component, load);
                if (!cases.isEmpty()) {
                    report.accept(cases.draft(INFO, "gets", false)
                            .volts("rated", load.draw().ratedVolts())
                            .build());
                }
            }
        }
    }

    private static LoadStates cases(Evidence evidence, Component component, Load load) {
        LoadStates cases = new LoadStates(component);
        for (OperatingState state : evidence.harness().states().all()) {
            Optional<Setting> setting = asked(state, component.id());
            Solution solution = evidence.solutions().get(state.id());
            if (setting.isEmpty() || solution == null) {
                continue;
            }
            double share = setting.get().starting() ? STARTING_SHARE : FED_SHARE;
            OptionalDouble volts = LoadStates.volts(solution, component.id());
            if (volts.isPresent() && volts.getAsDouble() < share * load.draw().ratedVolts()) {
                cases.add(state, volts.getAsDouble());
            }
        }
        return cases;
    }

    /** The setting of a component that a state asks on. */
    static Optional<Setting> asked(OperatingState state, ComponentId component) {
        return state.setting(component).filter(Setting::on);
    }
}
