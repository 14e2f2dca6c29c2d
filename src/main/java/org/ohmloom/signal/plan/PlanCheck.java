package org.ohmloom.signal.plan;

import java.util.ArrayList;
import java.util.List;
import org.ohmloom.model.Harness;
import org.ohmloom.signal.channel.SensorChannel;

/** Looks for what is wrong with the plans of all units. O(channels x pins). */
public final class PlanCheck {

    private PlanCheck() {}

    /**
     * What is wrong, kind by kind.
     *
     * @param harness  the harness
     * @param channels its sensors and the inputs that read them, by plan and by wires
     */
    public static List<PlanProblem> of(Harness harness, List<SensorChannel> channels) {
        PlanMending mending = new PlanMending(harness);
        List<PlanProblem> problems = new ArrayList<>(new PlanAgainstWires(harness, mending, channels).problems());
        problems.addAll(new PlanNames(harness, mending).problems());
        problems.addAll(new PinClashes(harness, mending, channels).problems());
        problems.addAll(new PlanCurrents(harness, mending, channels).problems());
        return problems;
    }
}
