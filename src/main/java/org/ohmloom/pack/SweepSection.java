package org.ohmloom.pack;

import java.util.ArrayList;
import java.util.List;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.analysis.Cancel;
import org.ohmloom.analysis.DutyStep;
import org.ohmloom.analysis.DutySweep;
import org.ohmloom.pack.page.Block;
import org.ohmloom.pack.page.Cell;
import org.ohmloom.pack.page.Column;
import org.ohmloom.pack.page.Row;
import org.ohmloom.units.Unit;

/** Loads run at a duty, at 25, 50, 75 and 100 %: what each of their wires carries, how warm it gets and what it needs. */
final class SweepSection {

    private static final List<Column> COLUMNS = List.of(
            Column.code("Load"),
            Column.number("Duty", Unit.PERCENT, 0),
            Column.number("Load drop", Unit.VOLT, 3),
            Column.number("Limit", Unit.VOLT, 3),
            Column.code("Wire"),
            Column.code("Size"),
            Column.number("RMS", Unit.AMP, 2),
            Column.number("Mean", Unit.AMP, 2),
            Column.number("On", Unit.AMP, 2),
            Column.number("Drop", Unit.VOLT, 3),
            Column.number("Runs at", Unit.DEGREE_CELSIUS, 0),
            Column.code("Needs"),
            Column.code("Governed by"));

    private final Analysis analysis;

    SweepSection(Analysis analysis) {
        this.analysis = analysis;
    }

    List<Block> blocks() {
        List<Row> rows = new ArrayList<>();
        for (DutyStep step : DutySweep.of(analysis, Cancel.NEVER)) {
            step.wires().forEach(wire -> rows.add(row(step, wire)));
        }
        if (rows.isEmpty()) {
            return List.of();
        }
        return List.of(
                new Block.Heading("Loads over the range of their duty"),
                new Block.Prose(
                        "All else as in the state that runs the load hardest; wires from its protective device on."
                                + left()),
                new Block.Table("duty-range", COLUMNS, rows, ""));
    }

    private String left() {
        int left = DutySweep.leftOut(analysis).size();
        return left == 0 ? "" : " " + left + " more loads run at a duty are left out to keep the calculation quick.";
    }

    private static Row row(DutyStep step, DutyStep.OnWire wire) {
        return Row.of(
                Cell.text(step.load().value()).toned(Cell.Tone.STRONG),
                Cell.number(100 * step.dutyFraction()),
                Cell.number(step.dropVolts()),
                Cell.number(step.limitVolts()),
                Cell.text(wire.wire().value()),
                Cell.text(Wording.size(wire.gauge())),
                Cell.number(wire.rmsAmps()),
                Cell.number(wire.meanAmps()),
                Cell.number(wire.onAmps()),
                Cell.number(wire.dropVolts()),
                Cell.number(wire.celsius()),
                wire.choice()
                        .flatMap(choice -> choice.gauge())
                        .map(gauge -> Cell.text(Wording.size(gauge)))
                        .orElse(Cell.empty()),
                wire.choice()
                        .map(choice -> Cell.text(choice.governing().governor().words()))
                        .orElse(Cell.empty()));
    }
}
