package org.ohmloom.analysis;

import org.ohmloom.graph.Network;
import org.ohmloom.ground.ReturnStudy;

/** Runs the studies of the return paths one after the other. */
final class Returns {

    private Returns() {}

    static ReturnStudy study(Bench bench, Network drawn, HeatedSolutions heated) {
        return ReturnStudy.NONE;
    }
}
