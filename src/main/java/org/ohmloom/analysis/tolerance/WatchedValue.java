package org.ohmloom.analysis.tolerance;

import java.util.Optional;
import java.util.OptionalDouble;
import org.ohmloom.analysis.VariedStates.Varied;
import org.ohmloom.graph.BranchId;
import org.ohmloom.solve.BranchFlow;
import org.ohmloom.solve.Island;
import org.ohmloom.solve.IslandStatus;
import org.ohmloom.solve.LoadVolts;
import org.ohmloom.solve.Solution;

/** Reads what is followed off a solution. */
final class WatchedValue {

    private WatchedValue() {}

    /** The value; empty where its island has no solution. */
    static OptionalDouble of(Watch watch, Varied varied) {
        Solution solution = varied.solutions().get(watch.state());
        Optional<Double> value =
                switch (watch.measure()) {
                    case LOAD_DROP -> load(watch, solution).map(LoadVolts::onDropVolts);
                    case LOAD_VOLTS -> load(watch, solution).map(LoadVolts::onVolts);
                    case WIRE_AMPS, DEVICE_AMPS -> amps(watch, solution);
                    case WIRE_CELSIUS -> amps(watch, solution)
                            .map(amps -> varied.celsius().get(watch.state()).get(watch.subject()));
                };
        return value.filter(Double::isFinite).map(OptionalDouble::of).orElse(OptionalDouble.empty());
    }

    private static Optional<LoadVolts> load(Watch watch, Solution solution) {
        return Optional.ofNullable(solution.loads().get(watch.subject()));
    }

    private static Optional<Double> amps(Watch watch, Solution solution) {
        return solution.flow(new BranchId(watch.subject().value()))
                .filter(flow -> isSolved(solution, flow))
                .map(flow -> Math.abs(flow.rmsAmps()));
    }

    private static boolean isSolved(Solution solution, BranchFlow flow) {
        return solution.islands().stream()
                .filter(island -> island.id().equals(flow.island()))
                .map(Island::status)
                .anyMatch(status -> status == IslandStatus.SOLVED || status == IslandStatus.FLOATING);
    }
}
