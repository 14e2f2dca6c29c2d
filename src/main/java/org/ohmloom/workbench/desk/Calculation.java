package org.ohmloom.workbench.desk;

import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.analysis.Cancel;
import org.ohmloom.model.Harness;

/** Turns a harness into its results; called off the event thread. */
@FunctionalInterface
public interface Calculation {

    /**
     * The results of a harness.
     *
     * @param soFar gets what is there on the way, on any thread
     * @throws java.util.concurrent.CancellationException when asked to stop
     */
    Analysis of(Question question, Cancel cancel, Consumer<Analysis> soFar);

    /**
     * What is to be calculated.
     *
     * @param harness the harness
     * @param file    the file it lives in, beside which tables of the builder's own may lie
     * @param anew    whether results that are known do not count: such a table may have changed
     */
    record Question(Harness harness, Optional<Path> file, boolean anew) {

        /** Known results will do. */
        public Question(Harness harness, Optional<Path> file) {
            this(harness, file, false);
        }
    }
}
