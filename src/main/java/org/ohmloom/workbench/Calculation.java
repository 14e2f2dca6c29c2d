package org.ohmloom.workbench;

import org.ohmloom.analysis.Analysis;
import org.ohmloom.analysis.Cancel;
import org.ohmloom.model.Harness;

/** Turns a harness into its results; called off the event thread. */
@FunctionalInterface
interface Calculation {

    /**
     * The results of a harness.
     *
     * @throws java.util.concurrent.CancellationException when asked to stop
     */
    Analysis of(Harness harness, Cancel cancel);
}
