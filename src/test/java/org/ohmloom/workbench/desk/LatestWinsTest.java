package org.ohmloom.workbench.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.List;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;

class LatestWinsTest {

    private final BlockingQueue<Runnable> owner = new LinkedBlockingQueue<>();
    private final List<String> started = new CopyOnWriteArrayList<>();
    private final List<String> received = new CopyOnWriteArrayList<>();

    @Test
    void requestsWithinThePauseCountAsOne() throws InterruptedException {
        LatestWins<String, String> runner = runner(Duration.ofMillis(200), question -> {});
        runner.ask("a");
        runner.ask("b");
        runner.ask("c");
        next().run();
        assertEquals(List.of("c"), started);
        assertEquals(List.of("c done"), received);
    }

    @Test
    void aResultThatIsNoLongerWantedIsNotDelivered() throws InterruptedException {
        CountDownLatch running = new CountDownLatch(1);
        CountDownLatch mayEnd = new CountDownLatch(1);
        LatestWins<String, String> runner = runner(Duration.ZERO, question -> {
            if (question.equals("slow")) {
                running.countDown();
                awaitLatch(mayEnd);
            }
        });
        runner.ask("slow");
        assertTrue(running.await(10, TimeUnit.SECONDS));
        runner.ask("quick");
        mayEnd.countDown();
        next().run();
        next().run();
        assertEquals(List.of("quick done"), received);
    }

    @Test
    void aResultThatArrivesAfterStoppingIsNotDelivered() throws InterruptedException {
        LatestWins<String, String> runner = runner(Duration.ZERO, question -> {});
        runner.ask("a");
        Runnable delivery = next();
        runner.stop();
        delivery.run();
        assertEquals(List.of(), received);
        assertTrue(!runner.isBusy());
    }

    @Test
    void aFailureIsDeliveredWithItsReason() throws InterruptedException {
        LatestWins<String, String> runner = runner(Duration.ZERO, question -> {
            throw new IllegalStateException("no such table");
        });
        runner.ask("a");
        next().run();
        assertEquals(List.of("no such table"), received);
        assertNull(owner.poll(100, TimeUnit.MILLISECONDS));
    }

    private Runnable next() throws InterruptedException {
        Runnable task = owner.poll(10, TimeUnit.SECONDS);
        assertTrue(task != null, "nothing was delivered");
        return task;
    }

    private LatestWins<String, String> runner(Duration pause, Consumer<String> work) {
        return new LatestWins<>(
                "test",
                (question, cancel, soFar) -> {
                    started.add(question);
                    work.accept(question);
                    return question + " done";
                },
                pause,
                owner::add,
                outcome -> received.add(outcome.answer()
                        .orElseGet(() -> outcome.failure().orElseThrow().getMessage())));
    }

    private static void awaitLatch(CountDownLatch latch) {
        try {
            latch.await(10, TimeUnit.SECONDS);
        } catch (InterruptedException interrupted) {
            throw new AssertionError(interrupted);
        }
    }
}
