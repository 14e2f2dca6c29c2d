package org.ohmloom.workbench;

import static org.junit.jupiter.api.Assertions.fail;

import java.awt.EventQueue;
import java.lang.reflect.InvocationTargetException;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;

/** Runs what belongs to the event thread there. */
public final class OnEventThread {

    private static final int PATIENCE_MILLIS = 300_000;
    private static final int LOOK_AGAIN_MILLIS = 20;

    private OnEventThread() {}

    public static <T> T get(Callable<T> task) {
        FutureTask<T> future = new FutureTask<>(task);
        try {
            EventQueue.invokeAndWait(future);
            return future.get();
        } catch (InterruptedException | InvocationTargetException failed) {
            throw new AssertionError(failed);
        } catch (ExecutionException failed) {
            throw new AssertionError(failed.getCause());
        }
    }

    public static void run(Runnable task) {
        get(() -> {
            task.run();
            return true;
        });
    }

    /** Waits until a condition holds, asking on the event thread. */
    public static void await(String what, Callable<Boolean> condition) {
        for (int waited = 0; waited < PATIENCE_MILLIS; waited += LOOK_AGAIN_MILLIS) {
            if (get(condition)) {
                return;
            }
            try {
                Thread.sleep(LOOK_AGAIN_MILLIS);
            } catch (InterruptedException interrupted) {
                throw new AssertionError(interrupted);
            }
        }
        fail("waited " + PATIENCE_MILLIS / 1000 + " s in vain: " + what);
    }
}
