package org.ohmloom.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Collections;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.ForkJoinTask;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.ohmloom.Campaign;
import org.ohmloom.model.Harness;
import org.ohmloom.size.ConductorChooser;
import org.ohmloom.tables.WireTables;

/**
 * An analysis that is not wanted any more ends soon: it looks before each wire, cross-section and device, so that no more than the
 * work on one of them is done after it was asked to stop. Counted, not timed.
 */
class StopsSoonTest {

    private static final Harness COACH = CoachHarness.ofWires(Campaign.count(50, 100));
    /** How often it is asked to stop, each time later. */
    private static final int SHARES = Campaign.count(3, 8);

    private static final WireTables TABLES = WireTables.bundled();

    /** Studies that run beside each other, each on a thread that may look once more before it ends. */
    private static final int SIDE_BY_SIDE = 12;

    /** Asks to stop at a look of a number, and counts. */
    private static final class Countdown implements Cancel {
        private final AtomicInteger looks = new AtomicInteger();
        private final int last;

        Countdown(int last) {
            this.last = last;
        }

        @Override
        public boolean isRequested() {
            return looks.incrementAndGet() >= last;
        }

        int count() {
            return looks.get();
        }
    }

    private static Countdown never() {
        return new Countdown(Integer.MAX_VALUE);
    }

    @Test
    void whereverItIsAskedToStopNothingGoesOn() {
        // Threads of its own: other tests keep the common ones at work.
        ForkJoinPool threads = new ForkJoinPool(2);
        try {
            Countdown whole = never();
            threads.invoke(analysis(whole));
            int all = whole.count();
            for (int share = 0; share < SHARES; share++) {
                Countdown asked = new Countdown(1 + all * share / SHARES);
                assertThrows(CancellationException.class, () -> threads.invoke(analysis(asked)));
                assertTrue(threads.awaitQuiescence(5, TimeUnit.MINUTES));
                int after = asked.count() - asked.last;
                assertTrue(after <= SIDE_BY_SIDE, "looked " + after + " times more, asked to stop at " + asked.last);
            }
        } finally {
            threads.shutdownNow();
        }
    }

    private static ForkJoinTask<Analysis> analysis(Cancel cancel) {
        return ForkJoinTask.adapt(() -> Analyst.analyse(COACH, TABLES, cancel, soFar -> {}));
    }

    @Test
    void everythingThatGoesThroughAllWiresLooksForEachOfThem() {
        int wires = COACH.wires().all().size();
        Bench calm = Bench.of(COACH, TABLES, Cancel.NEVER);
        Protection protection = Protection.of(calm);
        SizesByWire entered = SizesByWire.of(calm, protection);

        Countdown choosing = never();
        Bench chosen = calm.under(choosing);
        new ConductorChooser(SizesByWire.input(chosen, protection, entered.heated(), entered.sizes())).chooseAll();
        assertTrue(choosing.count() >= wires, "sizes: " + choosing.count());

        Countdown rating = never();
        Ratings.of(calm.under(rating), entered.sizes(), entered.heated());
        assertEquals(wires, rating.count());

        Countdown warming = never();
        new WireTemperatures(calm.under(warming), entered.sizes())
                .of(entered.heated().solutions(), entered.heated().wireCelsius());
        int states = COACH.states().all().size();
        assertTrue(warming.count() >= wires * states, "temperatures: " + warming.count());

        Countdown bundling = never();
        Bundles.study(calm.under(bundling), entered.sizes(), Collections.emptySortedMap());
        assertTrue(bundling.count() >= wires, "bundles: " + bundling.count());
    }
}
