package org.ohmloom.size.protection;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.ohmloom.graph.BranchId;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.ControlUnit;
import org.ohmloom.model.Harness;
import org.ohmloom.model.StateId;
import org.ohmloom.solve.Solution;
import org.ohmloom.solve.run.DeviceSurge;
import org.ohmloom.solve.run.StartUp;
import org.ohmloom.solve.run.StartUps;

/**
 * The starts through a device as they were followed over time: of one load or control unit, in every state where the run came
 * to an end and nothing behind the device is switched at a duty (the run takes that as on, which heats more than it does).
 */
public final class FollowedStarts {

    private static final double SAME = 1e-6;

    private final Harness harness;
    private final Map<StateId, Solution> solutions;
    private final StartUps startUps;
    private final Map<ComponentId, SortedMap<ComponentId, List<FollowedStart>>> known = new HashMap<>();

    /**
     * The starts of a harness.
     *
     * @param harness   the harness
     * @param solutions solution of every operating state
     * @param startUps  starts followed over time
     */
    public FollowedStarts(Harness harness, Map<StateId, Solution> solutions, StartUps startUps) {
        this.harness = harness;
        this.solutions = solutions;
        this.startUps = startUps;
    }

    /** The runs through a protective device, by what starts; nothing for what was not followed. */
    public SortedMap<ComponentId, List<FollowedStart>> through(ComponentId device) {
        return known.computeIfAbsent(device, this::find);
    }

    private SortedMap<ComponentId, List<FollowedStart>> find(ComponentId device) {
        SortedMap<ComponentId, List<FollowedStart>> found = new TreeMap<>();
        for (StartUp run : startUps.runs()) {
            Optional<DeviceSurge> surge = run.surge(device);
            if (run.starter().isPresent() && surge.isPresent() && isWhole(run) && !isSwitched(run, device)) {
                found.computeIfAbsent(run.starter().get(), id -> new ArrayList<>())
                        .add(new FollowedStart(
                                run.state(),
                                run.seconds(),
                                surge.get().amps().stream().map(Math::abs).toList(),
                                run.starters().get(0).timeConstantSeconds()));
            }
        }
        return found;
    }

    private static boolean isWhole(StartUp run) {
        return run.seconds().size() > 1
                && (run.outcome() == StartUp.Outcome.SETTLED || run.outcome() == StartUp.Outcome.STALLED);
    }

    private boolean isSwitched(StartUp run, ComponentId device) {
        return Optional.ofNullable(solutions.get(run.state()))
                .flatMap(solution -> solution.flow(new BranchId(device.value())))
                .filter(flow -> Math.abs(flow.onAmps()) - Math.abs(flow.rmsAmps()) <= SAME * Math.abs(flow.onAmps()))
                .isEmpty();
    }

    /** Whether something is a control unit: it starts with its input capacitor, which is stated. */
    public boolean isUnit(ComponentId starter) {
        return harness.components().get(starter).device() instanceof ControlUnit;
    }
}
