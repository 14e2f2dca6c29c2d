package org.ohmloom.ground;

import java.util.List;
import org.ohmloom.ground.coupling.Coupling;
import org.ohmloom.ground.sensor.SensorBudget;
import org.ohmloom.ground.sensor.Unjudged;

/**
 * What the study of the return paths found.
 *
 * @param grounds   every ground point
 * @param loops     every loop of the return network
 * @param offsets   every reference point in every state that was solved
 * @param sensors   error budget of every sensor that can be judged
 * @param couplings wires beside one another of which one disturbs the other
 * @param losses    what each ground, ground wire, strap or fuse does when it opens, where that is not harmless
 * @param unjudged  what could not be judged, and what would have to be entered
 */
public record ReturnStudy(
        List<GroundReading> grounds,
        List<LoopReading> loops,
        List<Offset> offsets,
        List<SensorBudget> sensors,
        List<Coupling> couplings,
        List<LostReturn> losses,
        List<Unjudged> unjudged) {

    /** Nothing studied. */
    public static final ReturnStudy NONE =
            new ReturnStudy(List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of());

    public ReturnStudy {
        grounds = List.copyOf(grounds);
        loops = List.copyOf(loops);
        offsets = List.copyOf(offsets);
        sensors = List.copyOf(sensors);
        couplings = List.copyOf(couplings);
        losses = List.copyOf(losses);
        unjudged = List.copyOf(unjudged);
    }
}
