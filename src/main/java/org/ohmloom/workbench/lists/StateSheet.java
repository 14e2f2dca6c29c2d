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
import org.ohmloom.workbench.words.Words;

/** The operating states as a list. */
final class StateSheet implements ElementSheet<StateSheet.Row> {
    private static final Words WORDS = Words.of("lists");

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
        return WORDS.get("state.states");
    }

    @Override
    public List<Column<Row>> columns() {
        return List.of(
                Column.<Row>text(WORDS.term("state.state"), WORDS.get("state.state.about"), 12, row -> row.state()
                        .id()
                        .value()),
                Column.text(WORDS.term("state.name"), WORDS.get("state.name.about"), 30, row -> row.state()
                        .name()),
                Column.text(
                        WORDS.term("state.engine"),
                        WORDS.get("state.engine.about"),
                        10,
                        row -> TradeWords.engine(row.state().mode())),
                Column.<Row>number(
                        WORDS.term("state.set-on"), "", WORDS.get("state.set-on.about"), row -> CellText.of(row.on())),
                new Column<Row>(
                        WORDS.term("state.solution"),
                        "",
                        WORDS.get("state.solution.about"),
                        14,
                        Row::status,
                        Optional.empty()),
                Column.number(WORDS.term("state.from-sources"), "A", WORDS.get("state.from-sources.about"), Row::given),
                Column.number(WORDS.term("state.worst-drop"), "V", WORDS.get("state.worst-drop.about"), Row::worstDrop),
                Column.<Row>number(
                        WORDS.term("state.imbalance"), "A", WORDS.get("state.imbalance.about"), row -> row.solution()
                                .map(found -> CellText.of(found.residualAmps()))
                                .orElse(CellText.EMPTY)),
                Column.number(
                        WORDS.term("state.sources-give"),
                        "W",
                        WORDS.get("state.sources-give.about"),
                        row -> row.watts(EnergyBalance::givenWatts)),
                Column.number(
                        WORDS.term("state.batteries-take"),
                        "W",
                        WORDS.get("state.batteries-take.about"),
                        row -> row.watts(EnergyBalance::chargingWatts)),
                Column.number(
                        WORDS.term("state.loads-take"),
                        "W",
                        WORDS.get("state.loads-take.about"),
                        row -> row.watts(EnergyBalance::loadsWatts)),
                Column.number(
                        WORDS.term("state.in-conductors"),
                        "W",
                        WORDS.get("state.in-conductors.about"),
                        row -> row.watts(EnergyBalance::conductorsWatts)),
                Column.number(
                        WORDS.term("state.in-devices"),
                        "W",
                        WORDS.get("state.in-devices.about"),
                        row -> row.watts(EnergyBalance::devicesWatts)),
                Column.number(
                        WORDS.term("state.unaccounted"),
                        "W",
                        WORDS.get("state.unaccounted.about"),
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
