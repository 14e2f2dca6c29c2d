package org.ohmloom.workbench.inspect;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.ohmloom.graph.Branch;
import org.ohmloom.graph.BranchId;
import org.ohmloom.graph.BranchKind;
import org.ohmloom.graph.PointId;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.OperatingState;
import org.ohmloom.solve.BranchFlow;
import org.ohmloom.solve.LoadVolts;
import org.ohmloom.solve.Solution;
import org.ohmloom.units.Formats;
import org.ohmloom.workbench.desk.Readout;
import org.ohmloom.workbench.words.Words;

/** The numbers of a thing in every operating state, as small tables. */
final class StateGrids {
    private static final Words WORDS = Words.of("inspector");

    private static final String OFF = "–";

    private StateGrids() {}

    /** Currents and drop of a wire or another branch. */
    static Inspection.Grid branch(Readout readout, BranchId branch) {
        return grid(
                readout,
                List.of(
                        WORDS.get("state-grids.state"),
                        WORDS.get("state-grids.mean-a"),
                        WORDS.get("state-grids.rms-a"),
                        WORDS.get("state-grids.on-a"),
                        WORDS.get("state-grids.drop-v"),
                        WORDS.get("state-grids.heat-w")),
                solution -> solution.flow(branch).map(flow -> flow(flow, 1)));
    }

    /** What reaches a load. */
    static Inspection.Grid load(Readout readout, ComponentId load) {
        return grid(
                readout,
                List.of(
                        WORDS.get("state-grids.state"),
                        WORDS.get("state-grids.on-a"),
                        WORDS.get("state-grids.on-v"),
                        WORDS.get("state-grids.feed-drop-v"),
                        WORDS.get("state-grids.return-drop-v"),
                        WORDS.get("state-grids.drop-v")),
                solution -> Optional.ofNullable(solution.loads().get(load)).map(StateGrids::fed));
    }

    /** What passes through a component, on the one of its branches that carries the most in any state. */
    static Inspection.Grid component(Readout readout, ComponentId component) {
        Optional<Branch> most = solutions(readout)
                .flatMap(solution -> solution.network().of(component).stream()
                        .flatMap(branch -> solution.flow(branch.id()).stream()))
                .max(Comparator.comparingDouble(flow -> Math.abs(flow.onAmps())))
                .map(BranchFlow::branch);
        boolean gives =
                most.filter(branch -> branch.kind() == BranchKind.SOURCE).isPresent();
        boolean oneOfSeveral = solutions(readout)
                .anyMatch(solution -> solution.network().of(component).size() > 1);
        Inspection.Grid grid = grid(
                readout,
                List.of(
                        WORDS.get("state-grids.state"),
                        WORDS.get("state-grids.mean-a"),
                        WORDS.get("state-grids.rms-a"),
                        WORDS.get("state-grids.on-a"),
                        WORDS.get(gives ? "state-grids.volts-v" : "state-grids.drop-v"),
                        WORDS.get(gives ? "state-grids.gives-w" : "state-grids.heat-w")),
                solution -> most.flatMap(branch -> solution.flow(branch.id())).map(flow -> flow(flow, gives ? -1 : 1)));
        return oneOfSeveral && most.isPresent()
                ? new Inspection.Grid(
                        WORDS.get(
                                "state-grids.in-every-state-along",
                                most.get().from().value(),
                                most.get().to().value()),
                        grid.heads(),
                        grid.rows())
                : grid;
    }

    /** Voltage of a point. */
    static Inspection.Grid point(Readout readout, PointId point) {
        return grid(
                readout,
                List.of(WORDS.get("state-grids.state"), WORDS.get("state-grids.volts-v")),
                solution -> solution.volts(point).stream()
                        .mapToObj(volts -> List.of(Formats.cell(volts)))
                        .findFirst());
    }

    /** @param sign -1 for a source, whose branch takes less than nothing */
    private static List<String> flow(BranchFlow flow, int sign) {
        return List.of(
                Formats.cell(flow.amps()),
                Formats.cell(flow.rmsAmps()),
                Formats.cell(flow.onAmps()),
                Formats.cell(sign * flow.onDropVolts()),
                Formats.cell(sign * flow.watts()));
    }

    private static List<String> fed(LoadVolts volts) {
        if (volts.on().amps() == 0) {
            // what lies between an open switch and a load is no drop of its feed
            return List.of(Formats.cell(0), OFF, OFF, OFF, OFF);
        }
        return List.of(
                Formats.cell(volts.on().amps()),
                Formats.cell(volts.on().volts()),
                Formats.cell(volts.on().feedDropVolts()),
                Formats.cell(volts.on().returnDropVolts()),
                Formats.cell(volts.onDropVolts()));
    }

    private static Inspection.Grid grid(
            Readout readout, List<String> heads, Function<Solution, Optional<List<String>>> cells) {
        List<List<String>> rows = new ArrayList<>();
        for (OperatingState state : readout.harness().states().all()) {
            readout.analysis()
                    .flatMap(results -> results.solution(state.id()))
                    .flatMap(cells)
                    .ifPresent(numbers -> {
                        List<String> row = new ArrayList<>(List.of(state.name()));
                        row.addAll(numbers);
                        rows.add(row);
                    });
        }
        return new Inspection.Grid(title(), heads, rows);
    }

    private static Stream<Solution> solutions(Readout readout) {
        return readout.harness().states().all().stream()
                .flatMap(state -> readout.analysis().flatMap(results -> results.solution(state.id())).stream());
    }

    private static String title() {
        return WORDS.get("state-grids.in-every-state");
    }
}
