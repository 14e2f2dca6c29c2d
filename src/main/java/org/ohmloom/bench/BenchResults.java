package org.ohmloom.bench;

import java.util.Optional;

/**
 * The tests of a finished harness and what came of its readings, each worked out when it is first asked for and then kept: rules,
 * prints and panes all ask. Safe to share between threads.
 */
public final class BenchResults {
    private final BenchInput input;
    private Optional<TestPlan> plan = Optional.empty();
    private Optional<AsBuiltRecord> record = Optional.empty();

    /** Nothing worked out yet. */
    public BenchResults(BenchInput input) {
        this.input = input;
    }

    /** What they rest on. */
    public BenchInput input() {
        return input;
    }

    /** All tests. */
    public synchronized TestPlan plan() {
        TestPlan known = plan.orElseGet(() -> TestPlan.of(input));
        plan = Optional.of(known);
        return known;
    }

    /** The readings of the harness, judged; costs nothing where there are none. */
    public synchronized AsBuiltRecord record() {
        AsBuiltRecord known = record.orElseGet(
                () -> input.harness().readings().isEmpty() ? AsBuiltRecord.EMPTY : AsBuiltRecord.of(input, plan()));
        record = Optional.of(known);
        return known;
    }
}
