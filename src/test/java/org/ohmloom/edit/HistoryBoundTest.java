package org.ohmloom.edit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.ohmloom.model.Harness;
import org.ohmloom.model.SignalClass;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireEnd;
import org.ohmloom.units.Gauge;
import org.ohmloom.words.Text;

/** However long one edits, what can be undone has a bound: the oldest steps are dropped, and told. */
class HistoryBoundTest {

    @Test
    void ofManyStepsTheOldestAreDropped() {
        List<Harness> harnesses = new ArrayList<>(List.of(wires(1)));
        History history = History.from(harnesses.get(0));
        for (int step = 1; step <= History.MOST_STEPS + 70; step++) {
            history = history.after(size(harnesses.get(0), step), true);
            harnesses.add(history.current());
        }
        assertEquals(70, history.dropped());
        assertEquals(History.MOST_STEPS, history.labels().size());
        assertSame(harnesses.get(70), history.at(0).current(), "the oldest that is kept");
        assertSame(harnesses.get(71), history.at(1).current());
        assertSame(harnesses.get(harnesses.size() - 1), history.current());
    }

    @Test
    void ofALargeHarnessFewerStepsAreKept() {
        int count = 30_000;
        Harness start = wires(count);
        History history = History.from(start);
        for (int step = 1; step <= 100; step++) {
            history = history.after(size(start, step), true);
        }
        assertEquals(History.MOST_ELEMENTS / count, history.labels().size());
        assertEquals(100 - History.MOST_ELEMENTS / count, history.dropped());
    }

    @Test
    void someStepsAreKeptOfAnyHarness() {
        Harness start = wires(3 * History.MOST_ELEMENTS / History.LEAST_STEPS / 2);
        History history = History.from(start);
        for (int step = 1; step <= History.LEAST_STEPS + 3; step++) {
            history = history.after(size(start, step), true);
        }
        assertEquals(3, history.dropped());
    }

    private static Harness wires(int count) {
        return SessionTest.harness()
                .withAll(IntStream.range(0, count)
                        .mapToObj(k -> Wire.of("W" + k, new WireEnd.Loose(), new WireEnd.Loose(), SignalClass.FEED))
                        .toList());
    }

    private static Edit size(Harness start, int step) {
        Wire wire = start.wires().all().iterator().next();
        return new PutElements(
                Text.of("Size " + step), List.of(wire.withGauge(Optional.of(Gauge.metric(1 + step / 100.0)))));
    }
}
