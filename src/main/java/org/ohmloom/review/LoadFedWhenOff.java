package org.ohmloom.review;

import java.util.OptionalDouble;
import java.util.function.Consumer;
import org.ohmloom.model.Component;
import org.ohmloom.model.Load;
import org.ohmloom.model.OperatingState;
import org.ohmloom.solve.Solution;

/**
 * A load that a state does not ask on gets no voltage.
 * <p>Only for loads that draw whenever they are fed; reported once for a load, with its worst state, above {@link
 * #OFF_SHARE} of the rated voltage between its terminals: the live feed of a load that is switched in its return is no
 * breach. A load with a command input may be fed all the time.
 */
final class LoadFedWhenOff implements Rule {

    /** Share of the rated voltage above which a load counts as fed. Common practice, no source. */
    static final double OFF_SHARE = 0.1;

    private static final RuleInfo INFO = new RuleInfo("load-fed-when-off", Severity.WARNING);

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public void review(Evidence evidence, Consumer<Finding> report) {
        for (Component component : evidence.harness().components().all()) {
            if (component.device() instanceof Load load && load.control() == Load.Control.FEED) {
                LoadStates cases = cases(evidence, component, load);
                if (!cases.isEmpty()) {
                    report.accept(cases.draft(INFO, "fed", true).build());
                }
            }
        }
    }

    private static LoadStates cases(Evidence evidence, Component component, Load load) {
        LoadStates cases = new LoadStates(component);
        for (OperatingState state : evidence.harness().states().all()) {
            Solution solution = evidence.solutions().get(state.id());
            if (solution == null || LoadNotFed.asked(state, component.id()).isPresent()) {
                continue;
            }
            OptionalDouble volts = LoadStates.volts(solution, component.id());
            if (volts.isPresent()
                    && volts.getAsDouble() > OFF_SHARE * load.draw().ratedVolts()) {
                cases.add(state, volts.getAsDouble());
            }
        }
        return cases;
    }
}
