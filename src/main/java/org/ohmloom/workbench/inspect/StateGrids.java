package org.ohmloom.workbench.inspect;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.ohmloom.graph.BranchId;
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
                solution -> solution.flow(branch).map(StateGrids::flow));
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

    /** What passes through a component, on its branch with the largest current. */
    static Inspection.Grid component(Readout readout, ComponentId component) {
        return grid(
                readout,
                List.of(
                        WORDS.get("state-grids.state"),
                        WORDS.get("state-grids.mean-a"),
                        WORDS.get("state-grids.rms-a"),
                        WORDS.get("state-grids.on-a"),
                        WORDS.get("state-grids.drop-v"),
                        WORDS.get("state-grids.heat-w")),
                solution -> solution.network().of(component).stream()
                        .flatMap(branch -> solution.flow(branch.id()).stream())
                        .max(Comparator.comparingDouble(flow -> Math.abs(flow.onAmps())))
                        .map(StateGrids::flow));
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

    private static List<String> flow(BranchFlow flow) {
        return List.of(
                Formats.cell(flow.amps()),
                Formats.cell(flow.rmsAmps()),
                Formats.cell(flow.onAmps()),
                Formats.cell(flow.onDropVolts()),
                Formats.cell(flow.watts()));
    }

    private static List<String> fed(LoadVolts volts) {
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

    private static String title() {
        return WORDS.get("state-grids.in-every-state");
    }
}
