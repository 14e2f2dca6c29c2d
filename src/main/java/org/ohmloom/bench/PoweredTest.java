package org.ohmloom.bench;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.ohmloom.model.OperatingState;
import org.ohmloom.solve.LoadVolts;
import org.ohmloom.solve.Solution;

/**
 * What a load must see with the harness under power.
 *
 * @param state the state it is tested in
 * @param load  what is calculated for it there
 */
public record PoweredTest(OperatingState state, LoadVolts load) {

    /** Less current than that is none, A. */
    private static final double LEAST_AMPS = 1e-6;

    /** Those of the state that lasts with the most loads on; none when nothing runs. */
    public static List<PoweredTest> of(BenchInput input) {
        Optional<OperatingState> state = input.harness().states().all().stream()
                .filter(each -> each.mode() != OperatingState.EngineMode.CRANKING)
                .max(Comparator.comparingInt(
                                (OperatingState each) -> in(input, each).size())
                        .thenComparing(OperatingState::id, Comparator.reverseOrder()));
        return state.map(each -> in(input, each)).orElse(List.of());
    }

    /** Those of the loads that are asked for in a state and get current. */
    static List<PoweredTest> in(BenchInput input, OperatingState state) {
        Solution solution = input.solutions().get(state.id());
        return solution == null
                ? List.of()
                : solution.loads().values().stream()
                        .filter(volts -> state.asksOn(volts.load()) && Math.abs(volts.amps()) > LEAST_AMPS)
                        .map(volts -> new PoweredTest(state, volts))
                        .toList();
    }

    /** The voltage its drop is measured from, in its on-state, V. */
    public double sourceVolts() {
        return load.onVolts() + load.onDropVolts();
    }
}
