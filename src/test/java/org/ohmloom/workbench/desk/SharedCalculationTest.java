package org.ohmloom.workbench.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.ohmloom.AnalysedExamples;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.model.WireId;
import org.ohmloom.workbench.OnEventThread;
import org.ohmloom.workbench.Stage;
import org.ohmloom.workbench.words.TypedEdits;

/** Two windows on one harness: it is worked out once. */
class SharedCalculationTest {

    private final Analysis results = AnalysedExamples.of("teaching");
    private final Calculation.Question question = new Calculation.Question(results.harness(), Optional.empty());
    private final ExecutorService threads = Executors.newCachedThreadPool();
    private final AtomicInteger runs = new AtomicInteger();
    private final CountDownLatch go = new CountDownLatch(1);
    private final AtomicBoolean stopped = new AtomicBoolean();

    /** Tells results at once, and ends when it is let go or nobody wants it any more. */
    private final SharedCalculation shared = new SharedCalculation(
            (asked, cancel, soFar) -> {
                runs.incrementAndGet();
                soFar.accept(results);
                while (go.getCount() > 0) {
                    if (cancel.isRequested()) {
                        stopped.set(true);
                        cancel.check();
                    }
                    Thread.onSpinWait();
                }
                return results;
            },
            threads);

    @AfterEach
    void end() {
        threads.shutdownNow();
    }

    /** Somebody who asks. */
    private final class Window {
        private final AtomicBoolean cancelled = new AtomicBoolean();
        private final List<Analysis> told = new CopyOnWriteArrayList<>();
        private final CompletableFuture<Analysis> result =
                CompletableFuture.supplyAsync(() -> shared.of(question, cancelled::get, told::add), threads);

        void awaitTold() {
            while (told.isEmpty()) {
                Thread.onSpinWait();
            }
        }
    }

    @Test
    void whoAsksWhileItIsWorkedOutGetsTheSameAndWhatIsThereAlready() {
        Window one = new Window();
        one.awaitTold();
        Window other = new Window();
        other.awaitTold();
        go.countDown();
        assertSame(results, one.result.join());
        assertSame(results, other.result.join());
        assertEquals(1, runs.get());
    }

    @Test
    void oneWhoNoLongerWantsItLeavesItToTheOtherAndWithTheLastItStops() {
        Window one = new Window();
        Window other = new Window();
        one.awaitTold();
        other.awaitTold();
        one.cancelled.set(true);
        CompletionException left = assertThrows(CompletionException.class, one.result::join);
        assertTrue(left.getCause() instanceof CancellationException);
        assertTrue(!stopped.get() && !other.result.isDone(), "the other still wants it");
        other.cancelled.set(true);
        assertThrows(CompletionException.class, other.result::join);
        while (!stopped.get()) {
            Thread.onSpinWait();
        }
        Window later = new Window();
        later.awaitTold();
        go.countDown();
        assertSame(results, later.result.join(), "what was stopped is not joined");
        assertEquals(2, runs.get());
    }

    @Test
    void twoWindowsOnOneHarnessShowOneAnalysisOfEveryEdit() {
        AtomicInteger analyses = new AtomicInteger();
        OpenDocuments documents = new OpenDocuments();
        Stage first = Stage.builtOn(own -> counting(own, documents, analyses));
        Stage second = Stage.builtOn(any -> first.services());
        first.openExample("teaching");
        Document document = OnEventThread.get(() -> first.desk().document().orElseThrow());
        OnEventThread.run(() -> second.view.filing().share(document));
        assertTrue(OnEventThread.get(() -> second.desk().isWhole()), "what the first window knows is there at once");
        assertEquals(1, analyses.get());
        OnEventThread.run(() -> first.desk().apply(TypedEdits.conductor(List.of(new WireId("W4")), "6")));
        first.awaitResults();
        second.awaitResults();
        assertEquals(2, analyses.get());
        assertSame(
                OnEventThread.get(() -> first.desk().analysis().orElseThrow()),
                OnEventThread.get(() -> second.desk().analysis().orElseThrow()));
        OnEventThread.run(() -> second.desk().calculateAnew());
        OnEventThread.await("the same worked out again", () -> analyses.get() == 3);
    }

    private Services counting(Services own, OpenDocuments documents, AtomicInteger analyses) {
        Calculation counted = (asked, cancel, soFar) -> {
            analyses.incrementAndGet();
            return own.calculation().of(asked, cancel, soFar);
        };
        return new Services(
                new SharedCalculation(counted, threads),
                own.layout(),
                own.painter(),
                own.preferences(),
                own.prompts(),
                own.reader(),
                own.eventThread(),
                documents,
                own.saves());
    }
}
