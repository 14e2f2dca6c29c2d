package org.ohmloom.analysis;

import java.util.List;
import org.ohmloom.graph.Network;
import org.ohmloom.ground.Offsets;
import org.ohmloom.ground.ReturnStudy;

/** Runs the studies of the return paths one after the other. */
final class Returns {

    private Returns() {}

    static ReturnStudy study(Bench bench, Network drawn, HeatedSolutions heated, Cancel cancel) {
        Offsets offsets = Offsets.of(bench.harness(), drawn, heated.solutions(), cancel::isRequested);
        return new ReturnStudy(
                List.of(), List.of(), offsets.offsets(), List.of(), List.of(), List.of(), offsets.unjudged());
    }
}
