package org.ohmloom.workbench.lists;

import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.ohmloom.graph.BranchKind;
import org.ohmloom.model.ElementId;
import org.ohmloom.model.OperatingState;
import org.ohmloom.model.Setting;
import org.ohmloom.solve.BranchFlow;
import org.ohmloom.solve.EnergyBalance;
import org.ohmloom.solve.IslandStatus;
import org.ohmloom.solve.LoadVolts;
import org.ohmloom.solve.Solution;
import org.ohmloom.workbench.desk.Readout;
import org.ohmloom.workbench.sheet.CellText;
import org.ohmloom.workbench.sheet.Column;
import org.ohmloom.workbench.sheet.ElementSheet;
import org.ohmloom.workbench.widget.Tone;
import org.ohmloom.workbench.words.TradeWords;

/** The operating states as a list. */
final class StateSheet implements ElementSheet<StateSheet.Row> {

    /**
     * One operating state.
     *
     * @param state    the state
     * @param solution its solution
     */
    record Row(OperatingState state, Optional<Solution> solution) {

        long on() {
            return state.components().values().stream().filter(Setting::on).count()
                    + state.outputs().values().stream().filter(Setting::on).count();
        }

        CellText status() {
            return solution.map(Solution::status)
                    .map(status -> CellText.of(TradeWords.named(status))
                            .in(status == IslandStatus.SOLVED ? Tone.PLAIN : Tone.WARNING))
                    .orElse(CellText.EMPTY);
        }

        CellText given() {
            return solution.map(found -> CellText.of(found.flows().values().stream()
                            .filter(flow -> flow.branch().kind() == BranchKind.SOURCE && flow.amps() > 0)
                            .mapToDouble(BranchFlow::amps)
                            .sum()))
                    .orElse(CellText.EMPTY);
        }

        CellText watts(ToDoubleFunction<EnergyBalance> part) {
            return solution.map(found -> CellText.of(part.applyAsDouble(EnergyBalance.of(found))))
                    .orElse(CellText.EMPTY);
        }

        CellText worstDrop() {
            return solution.flatMap(found -> found.loads().values().stream()
                            .filter(load -> state.asksOn(load.load()))
                            .map(LoadVolts::onDropVolts)
                            .max(Double::compare))
                    .map(CellText::of)
                    .orElse(CellText.EMPTY);
        }
    }

    @Override
    public String title() {
        return "States";
    }

    @Override
    public List<Column<Row>> columns() {
        return List.of(
                Column.<Row>text("State", "Identity of the operating state", 12, row -> row.state()
                        .id()
                        .value()),
                Column.text(
                        "Name", "What people call it", 30, row -> row.state().name()),
                Column.text(
                        "Engine",
                        "What the engine does",
                        10,
                        row -> TradeWords.engine(row.state().mode())),
                Column.<Row>number("Set on", "", "Switches, outputs and loads set on", row -> CellText.of(row.on())),
                new Column<Row>("Solution", "", "How far the solution got", 14, Row::status, Optional.empty()),
                Column.number("From sources", "A", "Current the sources give together, mean", Row::given),
                Column.number(
                        "Worst drop",
                        "V",
                        "Largest drop of any load the state asks on, everything at a duty switched on",
                        Row::worstDrop),
                Column.<Row>number(
                        "Imbalance", "A", "Largest sum of currents at a point, computed anew", row -> row.solution()
                                .map(found -> CellText.of(found.residualAmps()))
                                .orElse(CellText.EMPTY)),
                Column.number(
                        "Sources give",
                        "W",
                        "Mean power the sources give",
                        row -> row.watts(EnergyBalance::givenWatts)),
                Column.number(
                        "Batteries take",
                        "W",
                        "Mean power that charges batteries",
                        row -> row.watts(EnergyBalance::chargingWatts)),
                Column.number(
                        "Loads take", "W", "Mean power the loads take", row -> row.watts(EnergyBalance::loadsWatts)),
                Column.number(
                        "In conductors",
                        "W",
                        "Mean power lost in wires, contacts, straps and chassis",
                        row -> row.watts(EnergyBalance::conductorsWatts)),
                Column.number(
                        "In devices",
                        "W",
                        "Mean power lost in fuses, switches, relays, outputs and diodes",
                        row -> row.watts(EnergyBalance::devicesWatts)),
                Column.number(
                        "Unaccounted",
                        "W",
                        "Power given less power taken and lost: rounding",
                        row -> row.watts(EnergyBalance::missWatts)));
    }

    @Override
    public List<Row> rows(Readout readout) {
        return readout.harness().states().all().stream()
                .map(state -> new Row(state, readout.analysis().flatMap(results -> results.solution(state.id()))))
                .toList();
    }

    @Override
    public ElementId id(Row row) {
        return row.state().id();
    }
}
