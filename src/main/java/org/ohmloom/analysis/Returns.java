package org.ohmloom.analysis;

import java.util.List;
import java.util.SortedMap;
import java.util.stream.Stream;
import org.ohmloom.graph.Network;
import org.ohmloom.ground.LoopStudy;
import org.ohmloom.ground.LostReturns;
import org.ohmloom.ground.Offsets;
import org.ohmloom.ground.ReturnStudy;
import org.ohmloom.ground.coupling.CouplingInput;
import org.ohmloom.ground.coupling.CouplingStudy;
import org.ohmloom.ground.sensor.SensorStudy;
import org.ohmloom.heat.WireRating;
import org.ohmloom.model.WireId;

/** Runs the studies of the return paths one after the other. */
final class Returns {

    private Returns() {}

    static ReturnStudy study(
            Bench bench, Network drawn, HeatedSolutions heated, SortedMap<WireId, WireRating> ratings, Cancel cancel) {
        Offsets offsets = Offsets.of(bench.harness(), drawn, heated.solutions(), cancel::isRequested);
        LoopStudy loops = LoopStudies.of(bench, drawn, heated, ratings, cancel);
        SensorStudy sensors = SensorStudy.of(bench.harness(), drawn, heated.solutions(), cancel::isRequested);
        LostReturns lost =
                LostReturns.of(bench.harness(), drawn, heated.solutions(), heated.ampacities(), cancel::isRequested);
        CouplingStudy coupling = CouplingStudy.of(
                new CouplingInput(
                        bench.harness(), drawn, bench.routes(), LoopStudies.shapes(bench, ratings), sensors.signals()),
                heated.solutions());
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
                        .flatMap(List::stream)
                        .toList());
    }
}
