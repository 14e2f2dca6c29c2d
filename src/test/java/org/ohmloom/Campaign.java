package org.ohmloom;

import java.util.List;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.ForkJoinTask;
import java.util.function.IntFunction;
import java.util.stream.IntStream;

/**
 * How much of the long campaigns a build runs: a sample by a fixed seed, or every count in full with the system property
 * {@code ohmloom.campaign=full}.
 */
public final class Campaign {

    /** Whether everything runs in full. */
    public static final boolean FULL = "full".equals(System.getProperty("ohmloom.campaign"));

    private static final int SIDE_BY_SIDE = 2;

    private Campaign() {}

    /** A count, of the sample or in full. */
    public static int count(int sample, int full) {
        return FULL ? full : sample;
    }

    /**
     * Works through many, two at a time, on threads of its own: the common ones belong to the calculations a window waits for.
     *
     * @return what came of each, in order
     */
    public static <R> List<R> each(int count, IntFunction<R> work) {
        ForkJoinPool threads = new ForkJoinPool(SIDE_BY_SIDE);
        try {
            return threads.invoke(ForkJoinTask.adapt(
                    () -> IntStream.range(0, count).parallel().mapToObj(work).toList()));
        } finally {
            threads.shutdown();
        }
    }
}
