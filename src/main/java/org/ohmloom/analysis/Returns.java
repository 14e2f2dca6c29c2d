package org.ohmloom.analysis;

import java.util.List;
import java.util.SortedMap;
import java.util.stream.Stream;
import org.ohmloom.graph.Network;
import org.ohmloom.ground.LoopStudy;
import org.ohmloom.ground.Offsets;
import org.ohmloom.ground.ReturnStudy;
import org.ohmloom.heat.WireRating;
import org.ohmloom.model.WireId;

/** Runs the studies of the return paths one after the other. */
final class Returns {

    private Returns() {}

    static ReturnStudy study(
            Bench bench,
            Network drawn,
            HeatedSolutions heated,
            SortedMap<WireId, WireRating> ratings,
            Cancel cancel) {
        Offsets offsets = Offsets.of(bench.harness(), drawn, heated.solutions(), cancel::isRequested);
        LoopStudy loops = LoopStudies.of(bench, drawn, heated, ratings, cancel);
        return new ReturnStudy(
                loops.grounds(),
                loops.loops(),
                offsets.offsets(),
                List.of(),
                List.of(),
                List.of(),
                Stream.of(offsets.unjudged(), loops.unjudged())
                        .flatMap(List::stream)
                        .toList());
    }
}
