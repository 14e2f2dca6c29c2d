package org.ohmloom.solve.run;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.ohmloom.graph.Assumption;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.StateId;

/**
 * The starts of a harness in all its operating states.
 *
 * @param runs        runs in the order of states, single starts before the common one
 * @param skipped     starts that were not followed, and why
 * @param assumptions what was taken for granted because the harness does not say it
 */
public record StartUps(List<StartUp> runs, List<SkippedStart> skipped, List<Assumption> assumptions) {

    /** No start at all. */
    public static final StartUps NONE = new StartUps(List.of(), List.of(), List.of());

    public StartUps {
        runs = List.copyOf(runs);
        skipped = List.copyOf(skipped);
        assumptions = List.copyOf(assumptions);
    }

    /** The runs of a state. */
    public List<StartUp> in(StateId state) {
        return runs.stream().filter(run -> run.state().equals(state)).toList();
    }

    /** The run of one starter alone in a state. */
    public Optional<StartUp> run(StateId state, ComponentId starter) {
        return in(state).stream()
                .filter(run -> run.starter().equals(Optional.of(starter)))
                .findFirst();
    }

    /** The surges of a protective device in all runs. */
    public Stream<DeviceSurge> surges(ComponentId device) {
        return runs.stream().flatMap(run -> run.surge(device).stream());
    }
}
