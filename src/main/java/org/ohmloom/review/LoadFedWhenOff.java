package org.ohmloom.review;

import java.util.List;
import java.util.function.Consumer;
import org.ohmloom.model.Component;
import org.ohmloom.model.Load;
import org.ohmloom.model.OperatingState;
import org.ohmloom.model.Setting;
import org.ohmloom.solve.Solution;

/**
 * A load that a state does not ask on gets no voltage.
 * <p>Only for loads that draw whenever they are fed; reported above {@link #OFF_SHARE} of the rated voltage. A load with a
 * command input may be fed all the time.
 */
final class LoadFedWhenOff implements Rule {

    /** Share of the rated voltage above which a load counts as fed. Common practice, no source. */
    static final double OFF_SHARE = 0.1;

    private static final RuleInfo INFO = new RuleInfo(
            "load-fed-when-off",
            "A load is fed in a state that does not ask it on",
            Severity.WARNING,
            "Operating states of this harness; a tenth of the rated voltage as the limit is common practice, no source",
            "It runs when nobody expects it: it drains the battery, or starts by itself.",
            "Set it on in that state, or put a switch, relay or output on its feed.");

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public void review(Evidence evidence, Consumer<Finding> report) {
        for (OperatingState state : evidence.harness().states().all()) {
            Solution solution = evidence.solutions().get(state.id());
            for (Component component : evidence.harness().components().all()) {
                if (solution == null
                        || !(component.device() instanceof Load load)
                        || load.control() == Load.Control.COMMAND
                        || state.setting(component.id()).filter(Setting::on).isPresent()) {
                    continue;
                }
                double volts = LoadNotFed.voltsAt(solution, component);
                if (volts > OFF_SHARE * load.draw().ratedVolts()) {
                    report.accept(new FindingDraft(INFO, "{name} ({load}) is not asked on in {state} but gets {volts}.")
                            .word("name", component.name())
                            .word("load", component.id())
                            .word("state", StateNames.quoted(state))
                            .volts("volts", volts)
                            .subject(component.id())
                            .highlight(List.of(state.id()))
                            .build());
                }
            }
        }
    }
}
