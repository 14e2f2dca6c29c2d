package org.ohmloom.analysis;

import java.util.List;
import java.util.SortedMap;
import java.util.function.BiConsumer;
import java.util.function.BooleanSupplier;
import java.util.stream.Stream;
import org.ohmloom.graph.Network;
import org.ohmloom.ground.LoopStudy;
import org.ohmloom.ground.LostReturns;
import org.ohmloom.ground.Offsets;
import org.ohmloom.ground.ReturnStudy;
import org.ohmloom.ground.coupling.CouplingInput;
import org.ohmloom.ground.coupling.CouplingStudy;
import org.ohmloom.ground.sensor.SensorStudy;
import org.ohmloom.ground.sensor.Unjudged;
import org.ohmloom.heat.WireRating;
import org.ohmloom.model.WireId;
import org.ohmloom.review.StudyPart;
import org.ohmloom.size.ProvisionalSizes;

/** Runs the studies of the return paths one after the other. */
final class Returns {

    private Offsets offsets = new Offsets(List.of(), List.of());
    private LoopStudy loops = new LoopStudy(List.of(), List.of(), List.of());
    private SensorStudy sensors = new SensorStudy(List.of(), List.of(), List.of());
    private LostReturns lost = new LostReturns(List.of(), List.of());
    private CouplingStudy coupling = new CouplingStudy(List.of(), List.of());

    private Returns() {}

    /**
     * Studies them all.
     *
     * @param sizes sizes of wires that have none
     * @param soFar told of each part as soon as it is there, with what is there by then
     */
    static ReturnStudy study(
            Bench bench,
            ProvisionalSizes sizes,
            Network drawn,
            HeatedSolutions heated,
            SortedMap<WireId, WireRating> ratings,
            BiConsumer<ReturnStudy, StudyPart> soFar) {
        BooleanSupplier stopped = bench.cancel()::isRequested;
        Returns now = new Returns();
        now.offsets = Offsets.of(bench.harness(), drawn, heated.solutions(), stopped);
        soFar.accept(now.found(), StudyPart.OFFSETS);
        now.loops = LoopStudies.of(bench, drawn, heated, ratings);
        soFar.accept(now.found(), StudyPart.LOOPS);
        now.sensors = SensorStudy.of(bench.harness(), drawn, heated.solutions(), stopped);
        soFar.accept(now.found(), StudyPart.SENSORS);
        OpenableGrounds openable = OpenableGrounds.of(bench, sizes, drawn, heated);
        now.lost = LostReturns.of(
                openable.harness(), openable.drawn(), openable.solutions(), heated.ampacities(), stopped);
        soFar.accept(now.found(), StudyPart.LOST_RETURNS);
        now.coupling = CouplingStudy.of(
                new CouplingInput(
                        bench.harness(),
                        drawn,
                        bench.routes(),
                        LoopStudies.shapes(bench, ratings),
                        now.sensors.signals()),
                heated.solutions(),
                stopped);
        soFar.accept(now.found(), StudyPart.COUPLINGS);
        return now.found();
    }

    private ReturnStudy found() {
        return new ReturnStudy(
                loops.grounds(),
                loops.loops(),
                offsets.offsets(),
                sensors.budgets(),
                coupling.couplings(),
                lost.losses(),
                Stream.of(
                                offsets.unjudged(),
                                loops.unjudged(),
                                sensors.unjudged(),
                                coupling.unjudged(),
                                lost.unjudged())
                        .<Unjudged>flatMap(List::stream)
                        .toList());
    }
}
