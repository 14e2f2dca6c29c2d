package org.ohmloom.ground;

import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.function.BooleanSupplier;
import org.ohmloom.ground.sensor.Unjudged;
import org.ohmloom.model.StateId;
import org.ohmloom.solve.Solution;

/**
 * Ground points and loops of the return network with what flows in them.
 *
 * @param grounds  every ground point
 * @param loops    every loop
 * @param unjudged what could not be told
 */
public record LoopStudy(List<GroundReading> grounds, List<LoopReading> loops, List<Unjudged> unjudged) {

    public LoopStudy {
        grounds = List.copyOf(grounds);
        loops = List.copyOf(loops);
        unjudged = List.copyOf(unjudged);
    }

    /**
     * Reads them off the solutions of all states.
     *
     * @param input     the harness and its loops
     * @param solutions solution of every state
     * @param cancelled asked now and then; true stops the work
     * @throws java.util.concurrent.CancellationException when asked to stop
     */
    public static LoopStudy of(LoopInput input, SortedMap<StateId, Solution> solutions, BooleanSupplier cancelled) {
        SortedMap<StateId, DividedState> states = DividedState.all(input.drawn(), solutions, cancelled);
        List<LoopReading> loops = LoopReadings.of(input, states, cancelled);
        List<Unjudged> unjudged = new ArrayList<>();
        if (!input.found().shortest()) {
            unjudged.add(Unjudged.of(
                    Unjudged.Study.LOOPS,
                    Unjudged.Reason.TOO_MUCH_WORK,
                    ReturnTexts.text("loops.entangled"),
                    List.of()));
        }
        boolean asked = input.harness().rules().returnRules().fieldTesla().isPresent();
        long dark = loops.stream().filter(loop -> loop.enclosed().isEmpty()).count();
        if (asked && dark > 0) {
            unjudged.add(Unjudged.of(
                    Unjudged.Study.LOOPS,
                    Unjudged.Reason.NOT_ENTERED,
                    ReturnTexts.text("loops.no-area", dark, loops.size()),
                    List.of()));
        }
        return new LoopStudy(GroundReadings.of(input.harness(), input.drawn(), states), loops, unjudged);
    }
}
